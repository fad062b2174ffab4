import { beginEdit, dropEdit, endSteps, givenAt, keepEdit, stepGiven, takeAsAll } from "./edits.ts";
import { firstCase, handOf, type Spot } from "./hand.ts";
import { marked, markTo, sayMarked, unmark } from "./marked.ts";
import { columnsOf } from "./rows.ts";
import { cellAt, type Move, makeStop, moved, rowsIn, spotOf } from "./spots.ts";
import type { GridProps, Place } from "./types.ts";

/** Line and case of a place; undefined in the heading row. A place beside the cases counts for the base. */
export function placeAt({ open }: Pick<GridProps, "open">, { line, column }: Spot): Place | undefined {
  if (line === "") return undefined;
  const cases = columnsOf(open);
  const one = cases[column - firstCase] ?? cases.find(({ base }) => base) ?? cases[0];
  return { line, inCase: one?.name ?? "" };
}

/** The case under a place; undefined beside the cases. */
const caseAt = (props: GridProps, { line, column }: Spot): Place | undefined => {
  const one = columnsOf(props.open)[column - firstCase];
  return line === "" || column < firstCase || !one ? undefined : { line, inCase: one.name };
};

export function focusSpot(root: HTMLElement, props: GridProps, spot: Spot): void {
  const cell = cellAt(root, spot);
  if (!cell) return;
  handOf(props.open).at = { line: spot.line, column: spot.column };
  makeStop(root, cell);
  cell.focus({ preventScroll: true });
  // A browser's own focus leaves a place that is seen in part where it is.
  cell.scrollIntoView({ block: "nearest", inline: "nearest" });
}

function moveOf({ key, ctrlKey, metaKey }: KeyboardEvent): Move | undefined {
  const far = ctrlKey || metaKey;
  switch (key) {
    case "ArrowLeft":
      return "left";
    case "ArrowRight":
      return "right";
    case "ArrowUp":
      return "up";
    case "ArrowDown":
      return "down";
    case "Home":
      return far ? "first" : "home";
    case "End":
      return far ? "last" : "end";
    case "PageUp":
      return "page up";
    case "PageDown":
      return "page down";
    default:
      return undefined;
  }
}

/** Keys while a given is changed in its place: everything else goes to its blank. */
function inBlank(event: KeyboardEvent, blank: HTMLInputElement | HTMLSelectElement, props: GridProps): void {
  if (event.isComposing) return;
  if (event.key === "Escape") dropEdit(props);
  else if (event.key === "Enter") keepEdit(props, blank.value, event.ctrlKey || event.metaKey);
  else return;
  event.preventDefault();
  event.stopPropagation();
}

function marks(event: KeyboardEvent, root: HTMLElement, props: GridProps, at: Spot): boolean {
  const far = event.ctrlKey || event.metaKey;
  const move = moveOf(event);
  if (event.shiftKey && move) {
    const to = moved(root, at, move);
    markTo(root, props, at, to.line === "" ? at : to);
    focusSpot(root, props, to.line === "" ? at : to);
  } else if (far && event.key.toLowerCase() === "a") {
    const rows = rowsIn(root, false);
    const [first, last] = [rows[0], rows.at(-1)];
    if (!first || !last) return false;
    const columns = columnsOf(props.open).length;
    markTo(
      root,
      props,
      { line: first.dataset.name ?? "", column: firstCase },
      { line: last.dataset.name ?? "", column: firstCase + columns - 1 },
      true,
    );
  } else return false;
  sayMarked(root, props);
  return true;
}

/** What Enter does at a place: a given is taken in hand, any other line opens; in the heading, what lies there. */
function enter(root: HTMLElement, props: GridProps, at: Spot): boolean {
  const cell = cellAt(root, at);
  const within = cell?.querySelector<HTMLElement>("button:not(.switch), a, select, input");
  if (at.line === "" || cell?.classList.contains("note")) {
    within?.focus();
    return within !== undefined && within !== null;
  }
  const inCase = caseAt(props, at);
  if (inCase && givenAt(props, at.line) && beginEdit(props, inCase)) return true;
  const place = placeAt(props, at);
  if (!place) return false;
  handOf(props.open).wants = "panel";
  props.take(place);
  return true;
}

function onPlace(event: KeyboardEvent, root: HTMLElement, props: GridProps, at: Spot): boolean {
  const far = event.ctrlKey || event.metaKey;
  const here = caseAt(props, at);
  if (event.altKey && (event.key === "ArrowUp" || event.key === "ArrowDown")) {
    if (here) stepGiven(props, here, event.key === "ArrowUp");
    return here !== undefined;
  }
  if (event.altKey || marks(event, root, props, at)) return !event.altKey;
  const move = moveOf(event);
  if (move) {
    unmark(root, props);
    focusSpot(root, props, moved(root, at, move));
    return true;
  }
  if (event.key === "Enter" || event.key === "F2") return enter(root, props, at);
  if (event.key === "Escape") {
    if (marked(props)) unmark(root, props);
    else if (props.inHand) props.take(undefined);
    else return false;
    return true;
  }
  if (event.key === "Delete" && here && givenAt(props, here.line)) {
    takeAsAll(props, here);
    return true;
  }
  if (far || event.key.length !== 1 || event.key === " " || !here) return false;
  return givenAt(props, here.line)?.choices ? beginEdit(props, here) : beginEdit(props, here, event.key);
}

/** The keys of the grid: arrows and leaps move, Enter and typing change, Esc puts back. */
export function onKeyDown(event: KeyboardEvent, props: GridProps): void {
  const { target, currentTarget: root } = event;
  if (!(target instanceof HTMLElement) || !(root instanceof HTMLElement) || event.defaultPrevented) return;
  if (target.closest(".panel")) {
    if (event.key !== "Escape") return;
    event.preventDefault();
    props.take(undefined);
    return;
  }
  if (target.matches("input[data-blank], select[data-blank]")) {
    if (target instanceof HTMLInputElement || target instanceof HTMLSelectElement) inBlank(event, target, props);
    return;
  }
  const at = spotOf(target);
  if (!at) return;
  const within = !target.hasAttribute("data-at");
  // A word inside a place keeps its own Enter; Esc and arrows lead back to the place.
  if (within && event.key !== "Escape" && !moveOf(event)) return;
  if (within && event.key === "Escape") {
    event.preventDefault();
    focusSpot(root, props, at);
    return;
  }
  if (within && target.matches("select, input")) return;
  if (onPlace(event, root, props, at)) event.preventDefault();
}

/** A key was let go. */
export function onKeyUp(event: KeyboardEvent, props: GridProps): void {
  if (event.key !== "Alt" && !event.key.startsWith("Arrow")) return;
  const at = handOf(props.open).at;
  const place = at && placeAt(props, at);
  if (place) endSteps(props, place);
}
