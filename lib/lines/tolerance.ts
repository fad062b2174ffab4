/**
 * Half of the last digit of a standard uncertainty that is written with so many digits (JCGM 101:2008, 7.9.2).
 * @param uncertainty Above 0.
 * @param digits How many of its digits count.
 * @returns In the uncertainty's unit; 0 for none.
 * @example tolerance(0.00035, 2) // 0.000005
 */
export function tolerance(uncertainty: number, digits: number): number {
  if (!(uncertainty > 0)) return 0;
  // Written out first: 0.0996 is 0.10 by then.
  const exponent = Number(uncertainty.toExponential(digits - 1).split("e")[1]);
  return Number(`5e${exponent - digits}`);
}
