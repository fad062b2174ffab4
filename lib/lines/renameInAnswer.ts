import { foldName } from "./foldName.ts";
import type { Clause, Notebook } from "./types.ts";

/**
 * What a notebook says beside its lines, with one line called by another name wherever it stands in braces.
 * @param about The notebook without its lines.
 * @param name The line's name.
 * @param next Its new name.
 * @returns The same with the new name.
 * @example renameInAnswer({ asks: "?", answer: "It took {time}" }, "time", "hold") // { asks: "?", answer: "It took {hold}" }
 */
export function renameInAnswer(about: Omit<Notebook, "lines">, name: string, next: string): Omit<Notebook, "lines"> {
  const text = (says: string) =>
    says.replace(/\{([^{}]*)\}/gu, (braces, inner: string) =>
      foldName(inner) === foldName(name) ? `{${next}}` : braces,
    );
  const clause = (one: string | Clause): string | Clause => {
    if (typeof one === "string") return text(one);
    const { says, otherwise, caution } = one;
    return {
      ...one,
      says: text(says),
      ...(otherwise !== undefined && { otherwise: clause(otherwise) }),
      ...(caution !== undefined && { caution: typeof caution === "string" ? text(caution) : caution.map(text) }),
    };
  };
  const { answer, notes } = about;
  return {
    ...about,
    ...(answer !== undefined && { answer: typeof answer === "string" ? text(answer) : answer.map(clause) }),
    ...(notes !== undefined && { notes: notes.map(text) }),
  };
}
