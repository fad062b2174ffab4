/** What is wrong with a formula or with working it out, worded for the maker, and the character it is at (from 0). */
export class FormulaError extends Error {
  readonly at: number;

  /**
   * @param says What is wrong and what to do, a sentence without its full stop.
   * @param at Character of the formula, counted from 0.
   * @example new FormulaError("a name, a number or ( was expected here", 4).at // 4
   */
  constructor(says: string, at: number) {
    super(says);
    this.name = "FormulaError";
    this.at = at;
  }
}
