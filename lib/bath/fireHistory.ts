/** A change of the fire: ln of what boils off from then on against the first fire, and its doubt. */
export interface Change {
  readonly time: number;
  readonly lnFactor: number;
  readonly u: number;
  /** The log does not tell of it. */
  readonly unsaid?: boolean;
}

/** A fire that was changed a few times: how much burning time, counted in time at the first fire, is done by a time. */
export interface FireHistory {
  /** s of first fire from the first boil to `time`, for given ln factors (one for each change). */
  done(time: number, lnFactors: readonly number[]): number;
  /** ln of the told share of each change against the first fire, and its doubt. */
  readonly told: readonly Change[];
  /** Times between which the fire was out, [from, to). */
  readonly out: readonly (readonly [from: number, to: number])[];
}

/** What walls and top lose, as a share of the heat that boils at the first fire, and how well that is known (judgements). */
const lost = { value: 0.15, u: 0.12 };

/** ln: how well a maker writes down the share of full fire that a valve was turned to (a judgement). */
const written = 0.2;
/** ln of what leaves the surface of a bath below its boil over its boil-off at the first fire (a judgement). */
const surface = { lnFactor: Math.log(0.25), u: 0.7 };

/** ln of the boil-off at a share of the first fire against the boil-off at that fire: the losses stay as they are. */
function lnBoilOff(share: number, loss: number): number {
  return Math.log(Math.max(0.05, share - loss * (1 - share)));
}

/**
 * How the burner was set, from the log's burner rows. The boil-off follows the fire less the losses, which do not
 * shrink with the flame, give or take a factor (0.2 in ln of a written share, 0.5 where none was).
 *
 * @param fires burner rows in time order; share 1 is full fire, 0 out
 * @param start s, first boil
 * @param end s, last row
 * @param below times in which the bath stood below its boil: only its surface steams then
 * @example fireHistory([{ time: 60, share: 0.5 }], 0, 120).done(120, [Math.log(0.5)]) // 90
 */
export function fireHistory(
  fires: readonly { readonly time: number; readonly share: number | undefined }[],
  start: number,
  end: number,
  below: readonly (readonly [from: number, to: number])[] = [],
): FireHistory {
  let first: number | undefined = 1;
  for (const fire of fires)
    if (fire.time <= start) first = fire.share !== undefined && fire.share > 0 ? fire.share : first;
  const changes = fires.filter((fire) => fire.time > start && fire.time < end);
  const out: (readonly [number, number])[] = [];
  const burner = changes.map((fire, i) => {
    const { time, share } = fire;
    if (share === 0) {
      out.push([time, changes[i + 1]?.time ?? Infinity]);
      return { lnFactor: Math.log(0.02), u: 0.5, time };
    }
    if (share === undefined) return { lnFactor: 0, u: 0.5, time };
    const lnFactor = Math.log(Math.max(0.02, share / (first ?? 1)));
    // Going to full fire from a fire that nobody wrote down says only that it was less before.
    const vague = lnFactor === 0 && i === 0;
    if (vague) return { lnFactor: 0.2, u: 0.35, time };
    const left = Math.exp(lnFactor);
    const bySpread = (lnBoilOff(left, lost.value + 0.5 * lost.u) -
      lnBoilOff(left, lost.value - 0.5 * lost.u)) as number;
    // The losses stay as they are: what the share is off by, the boil-off is off by more.
    const byShare = (lnBoilOff(left * Math.exp(written / 2), lost.value) -
      lnBoilOff(left * Math.exp(-written / 2), lost.value)) as number;
    return { lnFactor: lnBoilOff(left, lost.value), u: Math.hypot(byShare, bySpread), time };
  });
  const within = (time: number) => below.some(([from, to]) => time >= from && time < to);
  const lastBefore = (time: number) => burner.findLast((change) => change.time <= time) ?? { lnFactor: 0, u: 0 };
  const told = [
    ...burner.filter(({ time }) => !within(time)),
    ...below.flatMap(([from, to]) => {
      const again = lastBefore(to);
      return [
        { ...surface, time: from },
        ...(to < end ? [{ lnFactor: again.lnFactor, u: Math.hypot(0.2, again.u), time: to }] : []),
      ];
    }),
  ].sort((a, b) => a.time - b.time);
  out.push(...below);
  return historyOf(told, out, start);
}

/**
 * The history of a fire whose changes are known.
 *
 * @param told in time order
 * @param out times between which it was out
 * @param start s, first boil
 * @example historyOf([{ time: 60, lnFactor: Math.log(0.5), u: 0.2 }], [], 0).done(120, [Math.log(0.5)]) // 90
 */
export function historyOf(told: readonly Change[], out: FireHistory["out"], start: number): FireHistory {
  const done = (time: number, lnFactors: readonly number[]): number => {
    let sum = 0;
    let from = start;
    let factor = 1;
    for (let i = 0; i < told.length; i++) {
      const change = told[i];
      if (!change || change.time >= time) break;
      sum += (change.time - from) * factor;
      from = change.time;
      factor = Math.exp(lnFactors[i] ?? change.lnFactor);
    }
    return sum + (time - from) * factor;
  };
  return { done, told, out };
}
