import type { Func } from "../../lib/lines/index.ts";
import { workedHere } from "../aside/asideFunction.ts";
import { firingOfBath, firingTaken } from "../aside/firing.ts";

/** A bath fired in trial, for comparing tanks and fires. */
export const firing: readonly Func[] = [
  {
    name: "firing of bath",
    takes: firingTaken.map(([name, key, kind]) => ({ name, kind, ...(key === "feed" && { optional: true }) })),
    says: "What a bath does on a fire, worked step by step: from cold to the boil at its target, fed and left alone there, and with parts in. The feed holds the target where none is given. Each source of doubt is tried at both ends of its 95 %.",
    source: "Energy and water balance of a boiling brine, stepped; uncertainty by JCGM 100:2008, one source at a time",
    work: workedHere(firingOfBath),
  },
];
