import { needNumber, plain } from "../physics/needNumber.ts";
import { needBrine } from "../physics/readBrine.ts";
import type { Brine } from "../physics/types.ts";
import { salts as kinds } from "../physics/types.ts";
import type {
  ScheduledEvent,
  SimulationCharge,
  SimulationOptions,
  SimulationSchedule,
  SimulationSetup,
} from "./simulationTypes.ts";

/** Throws, in the maker's words, for whatever a simulation cannot take. */
export function checkSimulation(
  setup: SimulationSetup,
  charge: SimulationCharge,
  schedule: SimulationSchedule,
  options: SimulationOptions,
): void {
  checkSetup(setup);
  needNumber("water", charge.water, 0.05, 10_000, "kg");
  needSalts(charge.salts);
  if (charge.temperature !== "boiling") needNumber("temperature", charge.temperature, 273.15, 473.15, "K");
  if (charge.departure) {
    const { offset, scale, pivot = 417.6 } = charge.departure;
    needNumber("offset", offset, -20, 20, "K");
    needBare("scale", scale, 0.5, 2);
    needNumber("pivot", pivot, 300, 500, "K");
  }
  needNumber("end", schedule.end, 0, 1e6, "s");
  needNumber("step", options.step ?? 10, 0.01, 600, "s");
  needNumber("mixing time", options.mixing ?? 0, 0, 3600, "s");
  needNumber("warming time of parts", options.partsWarming ?? 0, 0, 3600, "s");
  let before = -1;
  for (const time of options.record ?? []) {
    needNumber("time to record", time, 0, schedule.end, "s");
    if (!(time > before)) throw new RangeError(`invalid time to record: ${plain(time)} s; rising times`);
    before = time;
  }
  for (const event of schedule.events ?? []) checkEvent(event, schedule.end, options);
}

function checkSetup({ tank, burner, losses, thermometer, air }: SimulationSetup): void {
  needNumber("tank length", tank.length, 0.05, 5, "m");
  needNumber("tank width", tank.width, 0.05, 5, "m");
  needNumber("tank depth", tank.depth, 0.05, 3, "m");
  needNumber("steel of the tank", tank.wall?.steel ?? 0, 0, 10_000, "kg");
  needNumber("thickness of the wall", tank.wall?.thickness ?? 0, 0, 0.05, "m");
  if ("heat" in burner) needNumber("heat into the bath", burner.heat, 0, 1e6, "W");
  else {
    needNumber("burner power", burner.power, 0, 1e6, "W");
    needBare("efficiency", burner.efficiency, 0, 1);
  }
  if (typeof losses === "object") {
    needNumber("wall loss", losses.wall, -1000, 1000, "W/K");
    needNumber("top loss", losses.top ?? 0, 0, 1000, "W/K");
    needNumber("evaporation", losses.evaporation ?? 0, 0, 1, "W/(m² Pa)");
  } else if (losses !== undefined && losses !== "computed" && losses !== "none") {
    throw new RangeError(`invalid losses: ${String(losses)}; "computed", "none" or fitted ones`);
  }
  needNumber("air temperature", air?.temperature ?? 293.15, 243.15, 333.15, "K");
  // The boiling curve says what it can take; this keeps the rest sane for plain water too.
  needNumber("air pressure", air?.pressure ?? 101_325, 50_000, 110_000, "Pa");
  needNumber("vapour pressure in the air", air?.vapourPressure ?? 884, 0, 20_000, "Pa");
  needNumber("offset of the thermometer", thermometer?.offset ?? 0, -50, 50, "K");
  needNumber("lag of the thermometer", thermometer?.lag ?? 0, 0, 3600, "s");
  needNumber("rounding of the thermometer", thermometer?.rounding ?? 0, 0, 50, "K");
  needNumber("rounding start of the thermometer", thermometer?.roundingFrom ?? 273.15, 0, 500, "K");
}

function needBare(what: string, value: number, low: number, high: number): void {
  if (value >= low && value <= high) return;
  throw new RangeError(`invalid ${what}: ${plain(value)}; ${plain(low)} to ${plain(high)}`);
}

function needSalts(salts: Brine): void {
  needBrine(salts);
  for (const kind of kinds) needNumber("salt", salts[kind] ?? 0, 0, 10_000, "kg");
}

function checkEvent(event: ScheduledEvent, end: number, options: SimulationOptions): void {
  if (event.kind === "feed") {
    needNumber("start of the feed", event.from, 0, end, "s");
    if (!(event.to > event.from && event.to < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`invalid end of the feed: ${plain(event.to)} s; after its start at ${plain(event.from)} s`);
    }
    needNumber("feed", event.rate, 0, 10, "kg/s");
    needNumber("temperature of the feed", event.temperature, 273.15, 373.15, "K");
    return;
  }
  needNumber("time", event.time, 0, end, "s");
  switch (event.kind) {
    case "slug":
      needNumber("water put in", event.water, 0, 10_000, "kg");
      needNumber("temperature of the water", event.temperature, 273.15, 373.15, "K");
      break;
    case "burner":
      needBare("share of full fire", event.share, 0, 10);
      break;
    case "parts in":
      needNumber("parts", event.mass, 0, 10_000, "kg");
      needNumber("temperature of the parts", event.temperature, 243.15, 513.15, "K");
      break;
    case "parts out":
      needNumber("drag-out", event.dragOut, 0, 10_000, "kg");
      break;
    case "salt in":
      needSalts(event.salts);
      needNumber("temperature of the salt", event.temperature ?? 293.15, 243.15, 333.15, "K");
      if (options.curve) {
        throw new RangeError("invalid curve: a curve handed over; none where salt goes in, which changes the mix");
      }
      break;
    default:
      throw new RangeError(
        `unknown event: ${String((event as { kind: unknown }).kind)}; slug, feed, burner, parts in, parts out, salt in`,
      );
  }
}
