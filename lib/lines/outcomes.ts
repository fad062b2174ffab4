/** Stands for a line that was not given, while a formula is worked: a function may do without it. */
export class NotGiven {
  readonly line: string;

  constructor(line: string) {
    this.line = line;
  }
}

/** Thrown where a formula cannot go on before another line comes right. */
export class WaitsFor extends Error {
  readonly line: string;

  constructor(line: string) {
    super(`waits for ${line}`);
    this.line = line;
  }
}
