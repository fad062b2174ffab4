import { expect, test } from "vitest";
import { given, notebook, openLines, worked } from "../../lib/lines/index.ts";
import { laidOverTool, ownOfTool } from "../../notebooks/page/tool/laidOverTool.ts";

const ours = notebook({
  name: "Ours",
  asks: "How much?",
  lines: {
    gas: given("3 lb", "weighed", { unit: "lb", about: "By the cylinder's weight." }),
    price: given("1 $/lb", undefined, { unit: "$/lb" }),
    cost: worked("gas * price", "$"),
  },
});
const start = { cases: { now: { gas: "4 lb" }, supposed: { gas: "5 lb" } }, base: "now", casesFrom: {} };

test("nothing kept: ours with the cases that it starts with", () => {
  const book = laidOverTool(ours, undefined, start);
  expect(Object.keys(book.cases ?? {})).toEqual(["now", "supposed"]);
  expect(ownOfTool(ours, start, openLines(book).notebook())).toEqual({ asks: "How much?", name: "Ours", lines: {} });
});

test("only what was changed is kept, and laid over ours it gives the same notebook", () => {
  const open = openLines(laidOverTool(ours, undefined, start));
  open.set("price", { given: "2 $/lb" });
  open.add("blades", given("6"));
  open.setRest("a figure", { figures: [{ draws: "a line across cases", line: "cost" }], notes: ["mind the wind"] });
  const own = ownOfTool(ours, start, open.notebook());
  expect(Object.keys(own.lines)).toEqual(["price", "blades"]);
  expect(own.cases).toBeUndefined();
  const again = openLines(laidOverTool(ours, own, start));
  expect(again.notebook()).toEqual(open.notebook());
});

test("a given of one case keeps the cases, so that they no longer follow the record", () => {
  const open = openLines(laidOverTool(ours, undefined, start));
  open.set("gas", { given: "7 lb" }, "supposed");
  const own = ownOfTool(ours, start, open.notebook());
  expect(own.cases?.["supposed"]).toMatchObject({ gas: { text: "7 lb" } });
  const later = laidOverTool(ours, own, { cases: { other: {} }, base: "other", casesFrom: {} });
  expect(Object.keys(later.cases ?? {})).toEqual(["now", "supposed"]);
});

test("what the maker left alone is ours as it is today; their text stays theirs", () => {
  const open = openLines(laidOverTool(ours, undefined, start));
  open.set("price", { given: "2 $/lb" });
  const own = ownOfTool(ours, start, open.notebook());
  const newer = notebook({
    ...ours,
    lines: {
      ...ours.lines,
      price: given("1.10 $/lb", undefined, { unit: "$/lb", about: "What the dealer asks." }),
      cost: worked("gas * price * 1.07", "$"),
    },
  });
  const { lines } = laidOverTool(newer, own, start);
  expect(lines["price"]).toMatchObject({ text: "2 $/lb", about: "What the dealer asks." });
  expect(lines["cost"]).toMatchObject({ formula: "gas * price * 1.07" });
});
