import { foldName, type Given } from "../../../lib/lines/index.ts";
import { joinField } from "../fieldText.ts";
import { isValue, unitOf } from "../showValue.ts";
import { unitShown } from "./amounts.ts";
import { givenShown } from "./givenShown.ts";
import { type Hand, handOf } from "./hand.ts";
import { steppedText } from "./stepped.ts";
import type { GridProps, Place } from "./types.ts";

type Edits = Pick<GridProps, "open" | "system" | "says" | "redraw">;

/** The line of a place if it is given; undefined for one that is worked. */
export function givenAt({ open }: Pick<GridProps, "open">, line: string): Given | undefined {
  const found = open.line(line);
  return found.kind === "given" ? found : undefined;
}

const shownAt = ({ open, system }: Edits, line: Given, place: Place) => {
  const result = open.result(place.line, place.inCase);
  const usual = unitOf(line, system) || unitShown(line, result, system);
  return givenShown(line, open.text(place.line, place.inCase), result, usual);
};

/** Takes a given in hand at its place; `typed` begins its new text. Gives back whether there is one to take. */
export function beginEdit(props: Edits, place: Place, typed?: string): boolean {
  const line = givenAt(props, place.line);
  if (!line || isThing(props, place)) return false;
  const hand = handOf(props.open);
  const { text } = shownAt(props, line, place);
  hand.edit = { ...place, was: props.open.text(place.line, place.inCase), begin: typed ?? text };
  hand.wants = "blank";
  props.redraw();
  return true;
}

/** A thing that no text can hold is not changed by typing. */
const isThing = ({ open }: Edits, { line, inCase }: Place): boolean => {
  const result = open.result(line, inCase);
  return result.state === "settled" && typeof result.value === "object" && !isValue(result.value);
};

const whose = ({ line, inCase }: Place): string => (inCase === "" ? line : `${line} of ${inCase}`);

/** Ends the edit; its blank is gone when the page is drawn. */
function endEdit(props: Edits, hand: Hand, focus: boolean): void {
  hand.edit = undefined;
  hand.wants = focus ? "place" : undefined;
  props.redraw();
}

/** Keeps what was typed: for its case alone, or in every case. */
export function keepEdit(props: Edits, typed: string, everywhere: boolean, focus = true): void {
  const hand = handOf(props.open);
  const { edit } = hand;
  const line = edit && givenAt(props, edit.line);
  if (!edit || !line) return;
  const { unit } = shownAt(props, line, edit);
  const text =
    typed === edit.begin && edit.begin === shownAt(props, line, edit).text ? edit.was : joinField(typed, unit);
  endEdit(props, hand, focus);
  if (everywhere) setEverywhere(props, edit.line, text, line);
  else if (text !== edit.was) setOne(props, edit, text, line);
  else return;
  const result = props.open.result(edit.line, edit.inCase);
  props.says(
    result.state === "stopped"
      ? `${whose(edit)} stopped: ${result.says}`
      : `kept: ${whose(edit)} is ${text || "not given"}`,
  );
}

/** Puts back what stood before. */
export function dropEdit(props: Edits): void {
  const hand = handOf(props.open);
  if (hand.edit) endEdit(props, hand, true);
}

function setOne({ open: lines }: Edits, { line, inCase }: Place, text: string, given: Given): void {
  const known = lines.own(line, inCase)?.known ?? given.known;
  lines.set(line, { given: text, ...(known !== undefined && { known }) }, inCase);
}

function setEverywhere({ open: lines }: Edits, line: string, text: string, given: Given): void {
  lines.together(`${line} was set in every case`, () => {
    for (const { name } of lines.cases()) if (name !== "" && lines.own(line, name)) lines.putBack(line, name);
    lines.set(line, { given: text, ...(given.known !== undefined && { known: given.known }) });
  });
}

/** Lets a case take a given as all have it again. */
export function takeAsAll(props: Edits, place: Place): void {
  const hand = handOf(props.open);
  endEdit(props, hand, true);
  if (place.inCase === "" || !props.open.own(place.line, place.inCase)) {
    props.says(`${whose(place)} has nothing of its own; type to change it`);
    return;
  }
  props.open.putBack(place.line, place.inCase);
  props.says(`${whose(place)} is as in all: ${props.open.text(place.line, place.inCase) || "not given"}`);
}

/** Puts a suggested word in the place of the wrong one. */
export function mend(props: Edits, place: Place, text: string): void {
  const given = givenAt(props, place.line);
  if (!given) props.open.set(place.line, { worked: text });
  else if (place.inCase !== "" && props.open.own(place.line, place.inCase)) setOne(props, place, text, given);
  else props.open.set(place.line, { given: text });
  props.says(`${place.line} is now ${text}`);
  props.redraw();
}

/**
 * Changes a given's number by one step of its last written digit. While its key is held all steps are one to undo.
 */
export function stepGiven(props: Edits, place: Place, up: boolean): void {
  const given = givenAt(props, place.line);
  const text = props.open.text(place.line, place.inCase);
  const next = given && !given.choices && given.takes !== "words" ? steppedText(text, up) : undefined;
  if (!given || next === undefined) {
    props.says(`${whose(place)} has no number to step`);
    return;
  }
  const hand = handOf(props.open);
  const key = foldName(`${place.line}\n${place.inCase}`);
  if (hand.stepping?.key === key && hand.stepping.undo === props.open.undoName()) props.open.undo();
  setOne(props, place, next, given);
  hand.stepping = { key, undo: props.open.undoName() };
  props.redraw();
}

/** The key was let go: what comes next is another step to undo. */
export function endSteps(props: Edits, place: Place): void {
  const hand = handOf(props.open);
  if (!hand.stepping) return;
  hand.stepping = undefined;
  props.says(`${whose(place)} is ${props.open.text(place.line, place.inCase)}`);
}
