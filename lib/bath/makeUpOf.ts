import { brineHeatCapacity, evaporationHeat, steamEnthalpy, waterEnthalpy } from "../physics/index.ts";
import type { Brine } from "../physics/types.ts";
import { answerOf } from "./answer.ts";
import type { FittedLine } from "./fitLine.ts";
import type { Prepared } from "./prepare.ts";
import type { Answer } from "./types.ts";

/**
 * Cold water that would have held the ratio, from the heat that the log shows. The fire's heat into the brine is what
 * left as steam (b λ), what warmed and thinned the poured water (h - λ for each kg, h from cold water to steam) and
 * what warmed the bath (C dT/dt) and the parts. A steady feed at an even ratio takes h for each kg.
 */
export function makeUpOf(
  boilOff: Answer,
  pouredRate: Answer,
  fitted: FittedLine,
  { pressure, salts, line }: Prepared,
): Answer {
  const { z } = fitted;
  const from = fitted.line.lnRatioAt(z, line.start).value;
  const to = fitted.line.lnRatioAt(z, line.end).value;
  const highest = salts.curve.end.lnRatio;
  const middle = Math.min(highest, (from + to) / 2);
  const brine = Object.fromEntries(
    Object.entries(salts.masses).map(([salt, kg]) => [salt, (kg / salts.total) * Math.exp(middle)]),
  ) as Brine;
  const T = salts.curve.boils(middle);
  const lambda = evaporationHeat(brine, pressure);
  const whole = steamEnthalpy(T, pressure) - waterEnthalpy(288.15);
  const water = fitted.line.bathAt(z, line.end).water;
  const capacity = brineHeatCapacity(brine, T) * (water + line.saltAt(line.end));
  const duration = Math.max(60, line.end - line.start);
  const warming = salts.curve.boils(Math.min(highest, to)) - salts.curve.boils(Math.min(highest, from));
  const share = lambda / whole;
  const parts = line.parts.reduce((sum, part) => sum + part.steam, 0);
  const value =
    boilOff.value * share +
    pouredRate.value * (1 - share) +
    (capacity * warming) / duration / whole +
    (parts * share) / duration;
  const components = new Map([...boilOff.measured.components].map(([source, u]) => [source, u * share]));
  components.set("cup", (components.get("cup") ?? 0) + (pouredRate.measured.components.get("cup") ?? 0) * (1 - share));
  components.set("heats of the brine", 0.02 * boilOff.value);
  const partsDoubt = Math.hypot(...line.parts.map(({ u }) => u), 0);
  components.set("parts", (components.get("parts") ?? 0) + (partsDoubt * share) / duration);
  components.set("warming of the bath", (capacity * 0.4) / duration / whole);
  let variance = 0;
  for (const u of components.values()) variance += u * u;
  const widen = Math.sqrt(variance) / Math.max(1e-12, boilOff.standardUncertainty);
  return answerOf(
    Math.max(1e-9, value),
    [
      Math.max(0, value - (boilOff.value - boilOff.interval95[0]) * widen),
      Math.max(1e-9, value) + (boilOff.interval95[1] - boilOff.value) * widen,
    ],
    { mass: 1, time: -1 },
    components,
  );
}
