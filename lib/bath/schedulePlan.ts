import { plainWater } from "./bathEnthalpy.ts";
import { steelTable } from "./bathModel.ts";
import type {
  PartsIn,
  SaltIn,
  ScheduledEvent,
  SimulationOptions,
  SimulationSchedule,
  SlugIn,
} from "./simulationTypes.ts";

/** Something that runs in steadily: kg/s and the enthalpy it brings, W. */
export interface Inflow {
  readonly from: number;
  to: number;
  readonly rate: number;
  readonly heat: number;
}

/** What happens at one instant, in the order in which it is done. */
export interface Instant {
  /** kg of bath dragged out with all the parts; undefined where none come out. */
  dragOut: number | undefined;
  readonly salts: SaltIn[];
  readonly slugs: SlugIn[];
  readonly parts: PartsIn[];
  share: number | undefined;
}

/** A schedule as the steps need it. */
export interface Plan {
  /** s, rising, from 0 to the end: where a step has to end. */
  readonly breaks: readonly number[];
  readonly instants: ReadonlyMap<number, Instant>;
  readonly water: readonly Inflow[];
  readonly parts: readonly Inflow[];
}

/**
 * Turns a checked schedule into instants and steady inflows: a slug that takes time to mix and parts that take time to
 * warm are steady for that time. Parts that come out before they are warm have taken their share only.
 *
 * @param schedule checked
 * @param options of the simulation
 * @example planOf({ end: 600, events: [{ kind: "burner", time: 60, share: 0.5 }] }, {}).breaks // [0, 60, 600]
 */
export function planOf(schedule: SimulationSchedule, options: SimulationOptions): Plan {
  const { end, events = [] } = schedule;
  const { mixing = 0, partsWarming = 0 } = options;
  const instants = new Map<number, Instant>();
  const water: Inflow[] = [];
  const parts: Inflow[] = [];
  const instantAt = (time: number): Instant => {
    const there = instants.get(time) ?? { dragOut: undefined, salts: [], slugs: [], parts: [], share: undefined };
    instants.set(time, there);
    return there;
  };
  const put = (event: ScheduledEvent): void => {
    if (event.kind === "feed") {
      water.push({ ...event, heat: event.rate * plainWater(event.temperature) });
      return;
    }
    const instant = instantAt(event.time);
    if (event.kind === "burner") instant.share = event.share;
    else if (event.kind === "salt in") instant.salts.push(event);
    else if (event.kind === "parts out") instant.dragOut = (instant.dragOut ?? 0) + event.dragOut;
    else if (event.kind === "slug") {
      instant.slugs.push(event);
      if (mixing > 0) water.push(spread(event.time, mixing, event.water, plainWater(event.temperature)));
    } else {
      instant.parts.push(event);
      if (partsWarming > 0)
        parts.push(spread(event.time, partsWarming, event.mass, steelTable().at(event.temperature)));
    }
  };
  for (const event of events) put(event);
  for (const [time, { dragOut }] of instants) {
    if (dragOut === undefined) continue;
    for (const inflow of parts) if (inflow.from < time) inflow.to = Math.min(inflow.to, time);
  }
  const times = [0, end, ...instants.keys(), ...(options.record ?? [])];
  for (const { from, to } of [...water, ...parts]) times.push(from, to);
  const breaks = [...new Set(times)].filter((time) => time >= 0 && time <= end).sort((a, b) => a - b);
  return { breaks, instants, water, parts };
}

function spread(from: number, over: number, mass: number, perKilogram: number): Inflow {
  const rate = mass / over;
  return { from, to: from + over, rate, heat: rate * perKilogram };
}
