/** What a first look over a text says of it as JSON, before anything is built from it. */
export interface Scan {
  /** Brackets and braces open at once, at most. */
  readonly depth: number;
  /** Where the depth first went beyond the limit (character, from 0); -1 if it never did. */
  readonly tooDeepAt: number;
  /** True if a string, a list or an object is still open at the end: the file was cut short. */
  readonly cutShort: boolean;
}

/**
 * Looks over a text once for its depth of nesting, without building anything, so that a file made to exhaust the
 * machine is refused before it is parsed.
 *
 * @param text - any text.
 * @param limit - the depth at which the look stops.
 * @example
 * scan('{"a":[1', 64); // { depth: 2, tooDeepAt: -1, cutShort: true }
 */
export function scan(text: string, limit: number): Scan {
  let depth = 0;
  let deepest = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (quoted) {
      if (code === 0x5c) i++;
      else if (code === 0x22) quoted = false;
    } else if (code === 0x22) quoted = true;
    else if (code === 0x7b || code === 0x5b) {
      depth++;
      if (depth > deepest) deepest = depth;
      if (depth > limit) return { depth, tooDeepAt: i, cutShort: false };
    } else if (code === 0x7d || code === 0x5d) depth--;
  }
  return { depth: deepest, tooDeepAt: -1, cutShort: quoted || depth > 0 };
}
