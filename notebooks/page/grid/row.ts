import { html, nothing, type TemplateResult } from "lit-html";
import { intervalsRow } from "../../../lib/figure/index.ts";
import type { Trial } from "../../../lib/lines/index.ts";
import { interval95 } from "../../../lib/measure/index.ts";
import type { Value } from "../../../lib/measure/types.ts";
import { caution } from "../caution.ts";
import { type System, valueIn } from "../showValue.ts";
import { shownByTrial } from "../trials/shown.ts";
import { amountShown, unitShown } from "./amounts.ts";
import { cell } from "./cell.ts";
import { drawnMark } from "./drawnMark.ts";
import { type Edit, firstCase } from "./hand.ts";
import { editWords, rowNotes } from "./note.ts";
import { kindWord, notesOf } from "./notes.ts";
import { ownWords } from "./ownWords.ts";
import type { CaseColumn, GridRow } from "./rows.ts";

export interface RowProps {
  readonly row: GridRow;
  readonly cases: readonly CaseColumn[];
  readonly system: System;
  readonly shownCase: string;
  readonly own: readonly boolean[];
  readonly texts: readonly string[];
  /** By case, where a ± will not do. */
  readonly tried: readonly (Trial | undefined)[];
  /** What it is to the line in hand. */
  readonly relation: "feeds" | "fed" | "in hand" | "";
  readonly edit: Edit | undefined;
  /** px for the intervals side by side. */
  readonly width: number;
}

/** The kind column: the state where there is no number, "feeds" or "fed", and whose a given is. */
function kindCell({ row, cases, own, relation }: RowProps): TemplateResult {
  const word = kindWord(row.line.kind, row.results);
  const whose = row.line.kind === "given" ? ownWords(own) : "";
  const marks =
    whose === "own in"
      ? cases.flatMap(({ mark, name }, index) =>
          own[index] ? [html` ${drawnMark(mark)}<span class="hidden-from-sight">${name} </span>`] : [],
        )
      : nothing;
  return html`<div role="gridcell" class="kind" tabindex="-1" aria-colindex="1" data-at="1"><span class="word-${word}">${word}</span>${
    relation === "feeds" || relation === "fed" ? html` <b class="relation">${relation}</b>` : nothing
  }${whose === "" ? nothing : html`<span class="own">${whose}${marks}</span>`}</div>`;
}

const isWide = (value: Value | undefined): boolean => {
  const [low, high] = value ? interval95(value) : [0, 0];
  return low < high;
};

/** The 95 % intervals of all cases on the row's own scale, and in words for who cannot see them. */
function beside({ row, cases, width, system, tried }: RowProps, unit: string): TemplateResult | typeof nothing {
  if (cases.length < 2) return nothing;
  const at = firstCase + cases.length;
  const values = row.results.map((result, index) => {
    const value = valueIn(result);
    return value && shownByTrial(value, tried[index]);
  });
  const worth = values.filter((value) => value !== undefined).length > 1 && values.some(isWide);
  if (!worth)
    return html`<div role="gridcell" class="beside none" tabindex="-1" aria-colindex=${at} data-at=${at}></div>`;
  const drawn = intervalsRow(
    cases.map(({ mark, base }, index) => {
      const value = values[index];
      return { mark, base, ...(value && { value }) };
    }),
    { document, width, height: Math.max(24, 12 * cases.length) },
  );
  const words = cases.flatMap(({ name }, index) => {
    const value = values[index];
    const amount = value && amountShown(value, unit, system);
    return amount ? [`${name} ${amount.low} to ${amount.high}`] : [];
  });
  return html`<div role="gridcell" class="beside" tabindex="-1" aria-colindex=${at} data-at=${at}>${drawn}<span class="hidden-from-sight">${words.join(", ")}</span></div>`;
}

function noteCell(props: RowProps): TemplateResult | typeof nothing {
  const { row, cases, edit, own, texts } = props;
  const { line } = row;
  const notes = notesOf(row.results, cases);
  const warns = line.kind !== "given" && line.caution !== undefined ? line.caution : undefined;
  if (notes.length === 0 && !edit && warns === undefined) return nothing;
  const index = (inCase: string) => cases.findIndex(({ name }) => name === inCase);
  const span = cases.length + 3 + (cases.length > 1 ? 1 : 0);
  const bare = notes.length === 1 && notes[0]?.everywhere === true && line.kind !== "given";
  return html`<div role="gridcell" class="note ${bare ? "instead" : ""}" tabindex="-1" data-at=${span + 1}>
    ${edit ? editWords(edit, own[index(edit.inCase)] ?? false) : nothing}
    ${rowNotes(row, notes, (inCase) => texts[index(inCase)] ?? "")}
    ${warns === undefined ? nothing : caution(warns)}
  </div>`;
}

/** One line of the grid: kind, name, unit, each case, the intervals side by side, and what it has to say. */
export function gridRow(props: RowProps): TemplateResult {
  const { row, cases, system, shownCase, own, texts, tried, relation, edit } = props;
  const { name, line, results } = row;
  const unit = unitShown(line, results.find(({ state }) => state === "settled") ?? { state: "not given" }, system);
  const baseAt = cases.findIndex(({ base }) => base);
  const below = line.kind !== "given" && line.below !== undefined ? line.below : undefined;
  return html`<div role="row" class="row ${relation === "in hand" ? "in-hand" : ""}" data-name=${name} data-kind=${line.kind}>
    ${kindCell(props)}
    <div role="rowheader" class="name" tabindex="-1" aria-colindex="2" data-at="2" title=${line.about ?? nothing}><span>${name}</span>${below === undefined ? nothing : html`<span class="below">below 0: ${below}</span>`}</div>
    <div role="gridcell" class="unit" tabindex="-1" aria-colindex="3" data-at="3">${unit}</div>
    ${cases.map((column, index) =>
      cell({
        name,
        line,
        unit,
        system,
        column,
        at: firstCase + index,
        result: results[index] ?? { state: "not given" },
        base: results[baseAt],
        trial: tried[index],
        text: texts[index] ?? "",
        own: own[index] ?? false,
        shown: column.name === shownCase,
        edit: edit?.inCase === column.name ? edit : undefined,
      }),
    )}
    ${beside(props, unit)}
    ${noteCell(props)}
  </div>`;
}
