import { foldName } from "./foldName.ts";
import type { Clause, Notebook, OwnFigure } from "./types.ts";

/**
 * What a notebook says beside its lines, with one line called by another name wherever it stands in braces.
 * @param about The notebook without its lines.
 * @param name The line's name.
 * @param next Its new name.
 * @returns The same with the new name.
 * @example renameInRest({ asks: "?", answer: "It took {time}" }, "time", "hold") // { asks: "?", answer: "It took {hold}" }
 */
export function renameInRest<T extends Pick<Notebook, "answer" | "notes" | "figures">>(
  about: T,
  name: string,
  next: string,
): T {
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
  const called = (line: string) => (foldName(line) === foldName(name) ? next : line);
  const figure = (one: string | OwnFigure): string | OwnFigure => {
    if (typeof one === "string") return one;
    if (one.draws === "a sweep") return { ...one, line: called(one.line), by: called(one.by) };
    if (one.draws === "a line against another") return { ...one, line: called(one.line), against: called(one.against) };
    return { ...one, line: called(one.line) };
  };
  const { answer, notes, figures } = about;
  return {
    ...about,
    ...(answer !== undefined && { answer: typeof answer === "string" ? text(answer) : answer.map(clause) }),
    ...(notes !== undefined && { notes: notes.map(text) }),
    ...(figures !== undefined && { figures: figures.map(figure) }),
  };
}
