export interface IntervalBar {
  /** px along, the lower limit first; px across. */
  readonly from: number;
  readonly to: number;
  readonly across: number;
  /** px that an end tick reaches to either side. */
  readonly tick: number;
  readonly upright?: boolean;
  /** Limits without an end get an arrow in place of their tick. */
  readonly openFrom?: boolean;
  readonly openTo?: boolean;
}

const px = (value: number): string => String(Math.round(value * 100) / 100);

/**
 * Path data of a 95 % interval: a bar with a tick at each end.
 * @example intervalBar({ from: 10, to: 30, across: 5, tick: 3 }) // "M10,5L30,5M10,2L10,8M30,2L30,8"
 */
export function intervalBar({ from, to, across, tick, upright, openFrom, openTo }: IntervalBar): string {
  const point = (along: number, aside: number) =>
    upright ? `${px(across + aside)},${px(along)}` : `${px(along)},${px(across + aside)}`;
  const way = Math.sign(to - from) || 1;
  const end = (along: number, back: number, open: boolean | undefined) =>
    open
      ? `M${point(along + back, -tick)}L${point(along, 0)}L${point(along + back, tick)}`
      : `M${point(along, -tick)}L${point(along, tick)}`;
  return `M${point(from, 0)}L${point(to, 0)}${end(from, way * 5, openFrom)}${end(to, way * -5, openTo)}`;
}
