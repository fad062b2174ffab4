import { beginEdit, dropEdit, givenAt, keepEdit, mend, takeAsAll } from "./edits.ts";
import { firstCase, handOf } from "./hand.ts";
import { focusSpot, placeAt } from "./keys.ts";
import { markTo, sayMarked, unmark } from "./marked.ts";
import { columnsOf } from "./rows.ts";
import { makeStop, rowOf, spotOf } from "./spots.ts";
import type { GridProps } from "./types.ts";

const blankIn = (root: Element): HTMLInputElement | HTMLSelectElement | undefined =>
  root.querySelector<HTMLInputElement | HTMLSelectElement>("[data-blank]") ?? undefined;

/** A word beside a blank is pressed without taking the hand out of the blank. */
export function onPointerDown(event: PointerEvent): void {
  if (event.target instanceof Element && event.target.closest(".edit button")) event.preventDefault();
}

/** What a word of the grid does; false for anything else. */
function pressed(word: Element, root: HTMLElement, props: GridProps): boolean {
  if (!(word instanceof HTMLElement)) return false;
  const { dataset } = word;
  const row = word.closest("[data-name]")?.getAttribute("data-name") ?? "";
  const { edit } = handOf(props.open);
  if (dataset.show !== undefined) props.showCase(dataset.show);
  else if (dataset.keep !== undefined) keepEdit(props, blankIn(root)?.value ?? "", false);
  else if (dataset.keepAll !== undefined) keepEdit(props, blankIn(root)?.value ?? "", true);
  else if (dataset.putBack !== undefined) dropEdit(props);
  else if (dataset.asAll !== undefined && edit) takeAsAll(props, edit);
  else if (dataset.mend !== undefined) mend(props, { line: row, inCase: dataset.inCase ?? "" }, dataset.mend);
  else if (dataset.goTo !== undefined) goTo(root, props, dataset.goTo, dataset.inCase ?? "");
  else if (dataset.stop !== undefined) forEachIn(props, row, "working", (one) => props.open.stop(row, one));
  else if (dataset.again !== undefined) forEachIn(props, row, "stopped", (one) => props.open.again(row, one));
  else return false;
  return true;
}

function forEachIn(props: GridProps, line: string, state: string, act: (inCase: string) => void): void {
  for (const { name } of columnsOf(props.open)) if (props.open.result(line, name).state === state) act(name);
  props.redraw();
}

/** Goes to a line in a case; one that the grid does not list is named. */
function goTo(root: HTMLElement, props: GridProps, line: string, inCase: string): void {
  const column =
    firstCase +
    Math.max(
      0,
      columnsOf(props.open).findIndex(({ name }) => name === inCase),
    );
  if (rowOf(root, line)) focusSpot(root, props, { line, column });
  else props.says(`${line} is not among these lines`);
}

/** A click: a word does what it says, a given is taken in hand, a line's name or number opens it. */
export function onClick(event: MouseEvent, props: GridProps): void {
  const { target, currentTarget: root } = event;
  if (!(target instanceof Element) || !(root instanceof HTMLElement) || target.closest(".panel")) return;
  const word = target.closest("button");
  if (word) {
    pressed(word, root, props);
    return;
  }
  if (target.closest("input, select, a")) return;
  const spot = spotOf(target);
  if (!spot || spot.line === "") return;
  const hand = handOf(props.open);
  if (event.shiftKey && hand.at) {
    markTo(root, props, hand.at, spot);
    focusSpot(root, props, spot);
    sayMarked(root, props);
    return;
  }
  unmark(root, props);
  focusSpot(root, props, spot);
  const inCase = spot.column >= firstCase ? columnsOf(props.open)[spot.column - firstCase] : undefined;
  if (inCase && givenAt(props, spot.line) && beginEdit(props, { line: spot.line, inCase: inCase.name })) return;
  const place = placeAt(props, spot);
  // Text that was marked with the mouse is there to be read, not to open a line.
  const reading = window.getSelection()?.isCollapsed === false;
  if (place && !reading && (inCase || spot.column === 2)) props.take(sameLine(props, place.line) ? undefined : place);
}

const sameLine = ({ inHand }: GridProps, line: string): boolean => inHand?.line === line;

/** The hand has come to a place. */
export function onFocusIn({ target, currentTarget: root }: FocusEvent, props: GridProps): void {
  if (!(target instanceof HTMLElement) || !(root instanceof HTMLElement) || target.closest(".panel")) return;
  const spot = spotOf(target);
  if (!spot) return;
  handOf(props.open).at = spot;
  makeStop(root, target.closest<HTMLElement>("[data-at]") ?? undefined);
}

/** The hand has left a blank: what stands in it is kept, as in any other blank. */
export function onFocusOut({ target, relatedTarget }: FocusEvent, props: GridProps): void {
  if (
    !(target instanceof HTMLInputElement || target instanceof HTMLSelectElement) ||
    !target.hasAttribute("data-blank")
  )
    return;
  if (!handOf(props.open).edit) return;
  if (relatedTarget instanceof Element && relatedTarget.closest(".edit")) return;
  keepEdit(props, target.value, false, false);
}
