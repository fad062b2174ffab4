import type { Line } from "../../lib/lines/index.ts";
import type { Knowing } from "../../lib/measure/types.ts";
import {
  changeBath,
  changeRun,
  changeSetup,
  type Facts,
  itemOf,
  type Moment,
  type ShopRecord,
  withFact,
  withoutFact,
} from "../../lib/record/index.ts";

/** Sets a given of a run, and of the setup or bath that it belongs to, for the next run. Empty text: not known. */
export function withRunFact(
  record: ShopRecord,
  moment: Moment,
  id: string,
  name: string,
  { text, known }: { readonly text: string; readonly known: Knowing | undefined },
  line: Line | undefined,
): ShopRecord {
  const change = ({ facts }: { readonly facts: Facts }) => ({
    facts:
      text === "" && !line ? withoutFact(facts, name) : withFact(facts, name, { text, ...(known ? { known } : {}) }),
  });
  const run = itemOf(record, "runs", id);
  const changed = changeRun(record, id, change, moment.now);
  const thing = line?.kind === "given" ? line.keptWith : undefined;
  const setup = thing === "setup" && run?.setup ? itemOf(record, "setups", run.setup) : undefined;
  const bath = thing === "bath" && run?.bath ? itemOf(record, "baths", run.bath) : undefined;
  if (setup && !setup.invented) return changeSetup(changed, setup.id, change, moment.now);
  if (bath && !bath.invented) return changeBath(changed, bath.id, change, moment.now);
  return changed;
}
