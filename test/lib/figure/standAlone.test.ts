import { expect, test } from "vitest";
import { holdReplayed } from "../../../lib/figure/holdReplayed.ts";
import { dark, light } from "../../../lib/figure/palette.ts";
import { meaningOfSpread, type StandAloneOptions, standAlone } from "../../../lib/figure/standAlone.ts";
import { xmlText } from "../../../lib/figure/svgText.ts";
import { clipped, inventedHold, overlaps, page } from "./figureSupport.ts";

const title = "The tank boiled off 4.6 ±0.3 fl oz a minute.";
const picture = (options: Partial<StandAloneOptions> = {}, hold = inventedHold()): string =>
  standAlone(holdReplayed(hold, { document: page(), width: 1200, system: "US" }), { title, ...options });

const parsed = (text: string): Element => {
  const holder = page().createElement("div");
  holder.innerHTML = text;
  const root = holder.querySelector("svg");
  if (!root) throw new Error("no picture");
  return root;
};

test("standAlone leaves no custom property, and every colour is the palette's", () => {
  for (const [name, palette] of [
    ["light", light],
    ["dark", dark],
  ] as const) {
    const text = picture({ palette: name });
    expect(text).not.toContain("var(");
    const used = new Set(text.match(/#[0-9a-f]{6}/g));
    const known = new Set(Object.values(palette).map((one) => one.hex));
    expect([...used].filter((hex) => !known.has(hex))).toEqual([]);
    expect(used.has(palette.strip.hex)).toBe(true);
  }
});

test("standAlone is one svg with its size, name space, answer, foot and the meaning of ±", () => {
  const text = picture({ foot: ["Long tank, one burner. 33 readings, one struck out."] });
  const [tag = ""] = text.match(/^<svg [^>]*>/) ?? [];
  expect(tag).toContain('xmlns="http://www.w3.org/2000/svg"');
  expect(tag).toMatch(/ width="1200"/);
  expect(tag).toMatch(/ height="\d+"/);
  expect(text).toContain("33 readings, one struck out.");
  expect(text).toContain(meaningOfSpread);
  expect(parsed(text).textContent).toContain("The tank boiled off 4.6 ±0.3 fl oz a minute.");
});

test("standAlone boxes the words Invented data only where they are true", () => {
  expect(picture({ invented: true })).toContain(">Invented data<");
  expect(picture()).not.toMatch(/Invented data|invented data/);
});

test("standAlone takes fonts as data URLs and nothing else", () => {
  const text = picture({
    fonts: { besley: "data:font/woff2;base64,AAAA", nationalPark: "data:font/woff2;base64,BBBB" },
  });
  expect(text).toContain("url(data:font/woff2;base64,AAAA)");
  expect(text).not.toMatch(/url\((?!data:)/);
  expect(() => picture({ fonts: { besley: "https://fonts.invalid/a.woff2" } })).toThrow(
    "invalid font of Besley Variable: https://fonts.invalid/a.woff2; a data: URL",
  );
});

test("standAlone writes a stranger's words as text", () => {
  const hold = inventedHold();
  const text = picture(
    { title: '<script>alert("1")</script> & more' },
    { ...hold, events: [{ time: 0, text: '</text><script x="' }] },
  );
  expect(text).not.toContain("<script");
  expect(text).toContain("&lt;script&gt;");
});

test("standAlone wraps a long answer and a long foot inside the picture", () => {
  const long =
    "It stood inside 286–292 °F for 36 of the 40 minutes, while its salt went from 10.3 to 10.6 lb to the gallon. ";
  const root = parsed(picture({ title: long.repeat(2), foot: [long.repeat(3)], invented: true }));
  const own = [...root.children].filter((one) => one.tagName.toLowerCase() === "text");
  expect(own.length).toBeGreaterThan(6);
  for (const one of root.querySelectorAll("svg")) one.remove();
  expect(clipped(root)).toEqual([]);
  expect(overlaps(root)).toEqual([]);
});

test("xmlText drops what XML cannot hold and escapes what it reads", () => {
  expect(xmlText('a\u0000b\u0008<c>&"d\ud800')).toBe("ab&lt;c&gt;&amp;&quot;d");
});
