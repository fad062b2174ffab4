import { type Given, readGiven } from "../../../lib/lines/index.ts";
import { clockUnit, interval95, inUnit } from "../../../lib/measure/index.ts";
import { valueIn } from "../showValue.ts";
import { amountShown, unitShown } from "./amounts.ts";
import { givenShown } from "./givenShown.ts";
import { handOf } from "./hand.ts";
import { placeAt } from "./keys.ts";
import { blockOf } from "./marked.ts";
import { type PasteTarget, pasted } from "./pasted.ts";
import { pasteWords } from "./pasteWords.ts";
import { columnsOf } from "./rows.ts";
import { lineOf, rowsIn } from "./spots.ts";
import { type CopiedLine, tsvOf } from "./tsv.ts";
import type { GridProps, Place } from "./types.ts";

const unitAt = ({ open, system }: GridProps, { line, inCase }: Place): string =>
  unitShown(open.line(line), open.result(line, inCase), system);

/** A value as it is shown in its line's unit: a given as it was written where that is its unit. */
function copiedAt(props: GridProps, place: Place, unit: string): CopiedLine["values"][number] {
  const { open, system } = props;
  const line = open.line(place.line);
  const result = open.result(place.line, place.inCase);
  const value = valueIn(result);
  const text = line.kind === "given" ? open.text(place.line, place.inCase) : "";
  if (!value) {
    const words = result.state === "settled" && typeof result.value === "string" ? result.value : text;
    return { number: words, spread: "", words: true };
  }
  const { number, spread, exactly } = amountShown(value, unit, system);
  if (line.kind !== "given") {
    // A clock is text to other programs: minutes are a number.
    if (unit === clockUnit) return { number: String(Math.round(value.value / 0.6) / 100), spread: clockSpread(value) };
    return { number, spread };
  }
  const shown = givenShown(line, text, result, unit);
  const asWritten = shown.inItsUnit && text !== "" && !text.includes("±") && /^[\d.,\s/-]+$/u.test(shown.text);
  if (asWritten) return { number: shown.text, spread };
  return {
    number: exactly ? String(Number(inUnit(value.value, value.dimension, unit).toPrecision(12))) : number,
    spread,
  };
}

function clockSpread(value: NonNullable<ReturnType<typeof valueIn>>): string {
  const [low, high] = interval95(value);
  return low === high ? "" : `±${Math.round(Math.max(high - value.value, value.value - low) / 0.6) / 100}`;
}

/** The marked block, or the place of the hand, as tab-separated text. */
export function copiedText(root: Element, props: GridProps): string | undefined {
  const block = blockOf(root, props);
  if (!block) return undefined;
  const lines = block.lines.map((name): CopiedLine => {
    const results = block.cases.map((inCase) => ({ line: name, inCase }));
    const unit = results.map((place) => unitAt(props, place)).find((one) => one !== "") ?? "";
    const values = results.map((place) => copiedAt(props, place, unit));
    return { name, unit: unit === clockUnit ? "min" : unit, values };
  });
  return tsvOf(lines, block.cases);
}

const isText = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest("input, textarea, select, .panel, [contenteditable]") !== null;

/** Copying takes the block, unless text is marked. */
export function onCopy(event: ClipboardEvent, props: GridProps): void {
  const { currentTarget: root, clipboardData } = event;
  if (!(root instanceof Element) || isText(event.target) || window.getSelection()?.isCollapsed === false) return;
  const text = copiedText(root, props);
  if (text === undefined || !clipboardData) return;
  clipboardData.setData("text/plain", text);
  event.preventDefault();
  const block = blockOf(root, props);
  props.says(`copied: ${block?.lines.length ?? 0} by ${block?.cases.length ?? 0}`);
}

function targetOf(root: Element, props: GridProps, from: Place): PasteTarget {
  const { open } = props;
  return {
    lines: rowsIn(root, false).map(lineOf),
    cases: columnsOf(open).map(({ name }) => name),
    from,
    line: (name) => open.line(name),
    text: ({ line, inCase }) => open.text(line, inCase),
    unit: (place) => unitAt(props, place),
    shown: (place) => copiedAt(props, place, unitAt(props, place)),
    read: (name: string, line: Given, text: string) => readGiven(name, { ...line, text }),
  };
}

/** Pasting a block onto givens: what fits is taken as one step to undo, what does not is said with its reason. */
export function onPaste(event: ClipboardEvent, props: GridProps): void {
  const { currentTarget: root, clipboardData } = event;
  if (!(root instanceof Element) || isText(event.target)) return;
  const { open } = props;
  const at = handOf(open).at;
  const from = at && placeAt(props, at);
  const text = clipboardData?.getData("text/plain") ?? "";
  if (!from || text.trim() === "") return;
  // The page takes a pasted log elsewhere: this text is for the grid.
  event.preventDefault();
  event.stopPropagation();
  const outcome = pasted(text, targetOf(root, props, from));
  if (outcome.takes.length > 0)
    open.together(
      `${outcome.takes.length === 1 ? "a value was" : `${outcome.takes.length} values were`} pasted`,
      () => {
        for (const { line, inCase, text: next } of outcome.takes) {
          const given = open.line(line);
          const known = open.own(line, inCase)?.known ?? (given.kind === "given" ? given.known : undefined);
          open.set(line, { given: next, ...(known !== undefined && { known }) }, inCase);
        }
      },
    );
  props.says(pasteWords(outcome));
  props.redraw();
}
