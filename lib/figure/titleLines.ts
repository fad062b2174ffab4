import { wrapped } from "./wrapped.ts";

export interface TitlePart {
  readonly kind: "words" | "number" | "spread";
  readonly text: string;
}

// Besley runs about a sixth wider than National Park, by the advance widths of the two files.
const besleyStretch = 1.17;

/**
 * A title as lines of parts: words, numbers (set heavier) and spreads (set smaller), to fit `width` px at `size` px.
 * @example titleLines("It boiled off 4.6 ±0.3 fl oz", 31, 900)[0]?.[1]?.text // "4.6"
 */
export function titleLines(title: string, size: number, width: number): readonly (readonly TitlePart[])[] {
  return wrapped(title, size, width, besleyStretch).map((line) =>
    line
      .split(/(±\d[\d.,]*|[+\u2212]\d[\d.,]*\/[+\u2212]\d[\d.,]*|\u2212?\d[\d.,:–]*\d|\d)/)
      .filter((text) => text !== "")
      .map((text): TitlePart => {
        if (/^±|^[+\u2212].*\//.test(text)) return { kind: "spread", text };
        return { kind: /^\u2212?\d/.test(text) ? "number" : "words", text };
      }),
  );
}
