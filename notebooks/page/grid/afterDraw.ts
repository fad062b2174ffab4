import { pageWidth } from "../pageWidth.ts";
import { firstCase, handOf } from "./hand.ts";
import { showMarks } from "./marked.ts";
import { cellAt, isStop, makeStop, rowsIn } from "./spots.ts";
import type { GridProps } from "./types.ts";

const enterable = "input, textarea, select, button, a[href], [tabindex='0']";

/** Puts tab stop, marks and focus where they belong once the page is drawn. */
export function afterDraw(root: Element | undefined, props: GridProps): void {
  if (root) queueMicrotask(() => settleFocus(root, props));
}

function settleFocus(root: Element, props: GridProps): void {
  const hand = handOf(props.open);
  const closed = hand.opened !== undefined && props.inHand === undefined;
  const opened = hand.opened;
  hand.opened = props.inHand;
  // What hides places is the case that a phone shows; asking each of them for its style would work all styles out now.
  const seenBy = `${props.shownCase}\n${pageWidth()}`;
  const stays = hand.seenBy === seenBy && hand.wants === undefined && !closed && isStop(root, hand.at);
  hand.seenBy = seenBy;
  if (stays) {
    if (hand.from) showMarks(root, props);
    return;
  }
  const first = rowsIn(root, false)[0];
  if (!hand.at && first) hand.at = { line: first.dataset.name ?? "", column: firstCase };
  const gone = hand.at && hand.at.line !== "" && !rowsIn(root).some((row) => row.dataset.name === hand.at?.line);
  if (gone && first) hand.at = { line: first.dataset.name ?? "", column: hand.at?.column ?? firstCase };
  const cell = cellAt(root, hand.at);
  makeStop(root, cell);
  if (hand.from) showMarks(root, props);
  const wants = hand.wants;
  hand.wants = undefined;
  if (wants === "blank") {
    const blank = root.querySelector<HTMLInputElement | HTMLSelectElement>("[data-blank]");
    blank?.focus();
    if (blank instanceof HTMLInputElement) {
      const { length } = blank.value;
      // One typed sign goes on; a whole text is there to be typed over.
      blank.setSelectionRange(length === 1 && hand.edit?.was !== blank.value ? 1 : 0, length);
    }
  } else if (wants === "panel") {
    const panel = root.querySelector(".panel");
    if (panel && !panel.contains(document.activeElement)) panel.querySelector<HTMLElement>(enterable)?.focus();
  } else if (wants === "place") cell?.focus();
  // The panel that had the focus is gone: the hand goes back to the line that it belonged to.
  else if (closed && opened && (document.activeElement === null || document.activeElement === document.body))
    cell?.focus();
}
