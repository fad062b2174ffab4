import { expect, test } from "vitest";
import { given, openLines, worked } from "../../../lib/lines/index.ts";
import { measuredValue, siUnit } from "../../../lib/measure/index.ts";

/** With the blanks that no line breaks at. */
const texted = (text: string) => ({ text: text.replaceAll(" ", "\u00a0") });

const answer = (formula: string) =>
  openLines({
    asks: "?",
    lines: {
      salt: given("5 lb"),
      target: given("292 °F"),
      rise: worked("target - 280 °F"),
      made: worked(formula),
    },
  }).value("made");

// By hand: 3 lb / 1 ft = 1.3607771 kg / 0.3048 m; 2.2679618 kg squared is 5.1437, its width twice that of 5 lb ± 2 u.
test("an amount of no usual unit is written in SI units, with its spread", async () => {
  expect(await answer("3 lb / 1 ft")).toMatchObject(texted("4.464 kg/m exactly"));
  expect(await answer("salt ^ 2")).toMatchObject(texted("5.1 ±0.4 kg²"));
  expect(await answer("salt ^ 0.5")).toMatchObject(texted("1.51 ±0.03 kg^0.5"));
  expect(siUnit({ length: -1, time: -2 }).symbol).toBe("1/(m s²)");
  expect(siUnit({}).symbol).toBe("");
});

test("a given without a text waits for itself, and what uses it waits for it", async () => {
  const lines = openLines({ asks: "?", lines: { "gas price": given(""), cost: worked("gas price * 2 lb") } });
  expect(await lines.value("gas price")).toEqual({ waitsFor: "gas price", notGiven: true });
  expect(await lines.value("cost")).toEqual({ waitsFor: "gas price" });
});

test.each([
  ["max(salt, 3)", '"salt" is a weight and "3" is a plain number: both must be of one kind', 10],
  ["min(salt, target)", '"salt" is a weight and "target" is a temperature: both must be of one kind', 10],
  ["min()", "min takes 1 to 12 amounts: 0 written here", 0],
  ["2 * (salt - 5 lb)^-1", '"(salt - 5 lb)" is zero: nothing can be divided by it', 4],
  ["-target", '"target" is a temperature on the scale: take another temperature from it first', 1],
  ["target^2", '"target" is a temperature on the scale: take another temperature from it first', 0],
  ["sqrt(salt - 5 lb)", "its width can't be told: at this very number it rises without end", 0],
  ["exp(1000)", "this comes to no number", 0],
])("%s is stopped in words for the maker, at the character", async (formula, says, at) => {
  expect(await answer(formula)).toEqual({ stopped: says, at });
});

test("a written temperature is a step where min and max compare steps", async () => {
  expect(await answer("max(rise, 15 °F)")).toMatchObject(texted("15 °F exactly"));
  expect(await answer("max(target, 300 °F)")).toMatchObject(texted("300 °F exactly"));
});

test("a line is set to an amount of lib/measure, in every case or in one", async () => {
  const lines = openLines({
    asks: "?",
    lines: { salt: given("5 lb"), twice: worked("salt * 2") },
    cases: { short: {}, long: {} },
  });
  lines.set("salt", { given: measuredValue(10, 0.1, { mass: 1 }, "scale") });
  expect(await lines.value("twice", "long")).toMatchObject({ value: 20, widthFrom: [{ source: "scale", share: 1 }] });
  lines.set("salt", { given: measuredValue(7, 0.1, { mass: 1 }, "scale") }, "long");
  expect(await lines.value("twice", "long")).toMatchObject({ value: 14 });
  expect(await lines.value("twice", "short")).toMatchObject({ value: 20 });
  lines.undo();
  lines.undo();
  expect(await lines.value("twice", "long")).toMatchObject(texted("10.0 ±0.4 lb"));
  expect(openLines(lines.notebook()).text("salt")).toBe("5 lb");
});

test.each([{}, null, { given: 5 }, { worked: undefined }, "5 lb"])(
  "set refuses %j in words, and changes nothing",
  async (edit) => {
    const lines = openLines({ asks: "?", lines: { salt: given("5 lb") } });
    // @ts-expect-error What a program without types may hand over.
    expect(() => lines.set("salt", edit)).toThrow(/^invalid edit: /);
    expect(lines.text("salt")).toBe("5 lb");
    expect(lines.undoName()).toBeUndefined();
  },
);

test("who waits for a line hears that it or its case was removed, or the notebook closed", async () => {
  const never = { name: "never ends", takes: [{ name: "amount" }], says: "?", work: () => new Promise(() => {}) };
  const book = { asks: "?", lines: { salt: given("5 lb"), made: worked("never ends(salt)") }, cases: { a: {}, b: {} } };
  const [one, two, three] = [0, 1, 2].map(() => openLines(book, { vocabulary: { functions: [never] } }));
  const answers = [one?.value("made"), two?.value("made"), three?.value("made", "b")];
  one?.remove("made");
  two?.close();
  three?.removeCase("b");
  expect(await Promise.all(answers)).toEqual([
    { stopped: "this line was removed" },
    { stopped: "the notebook was closed" },
    { stopped: "this case was removed" },
  ]);
});
