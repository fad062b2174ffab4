import { expect, test } from "vitest";
import { kindsOfPage } from "./harness.ts";
import { number, openOneRun, type Row, typeRows, write } from "./oneRun.ts";

/** Scraps written by hand for these tests, as three makers would leave them; nothing in them was generated. */
interface Scrap {
  readonly says: string;
  readonly givens: readonly (readonly [line: string, text: string])[];
  readonly rows: readonly Row[];
  /** fl oz a minute between which anybody who adds the pours up and looks at the drift would put the boil-off. */
  readonly between: readonly [number, number];
}

const noSalts = [
  ["sodium_hydroxide", ""],
  ["sodium_nitrate", ""],
] as const;

const scraps: readonly Scrap[] = [
  {
    says: "a ready mix of known weight",
    givens: [...noSalts, ["ready_mixed_salt", "15"], ["water_start", "1 3/4"], ["altitude", "1800"], ["target", "290"]],
    rows: [
      { time: "602", temperature: "262" },
      { time: "614", temperature: "284", remark: "boils" },
      { time: "620", temperature: "287" },
      { time: "626", temperature: "289", remark: "parts in" },
      { time: "633", temperature: "290" },
      { time: "634", water: "1", unit: "cups" },
      { time: "638", temperature: "289" },
      { time: "644", temperature: "291" },
      { time: "645", water: "1", unit: "cups" },
      { time: "650", temperature: "290" },
      { time: "656", temperature: "292" },
      { time: "657", water: "1 1/2", unit: "cups" },
      { time: "702", temperature: "290" },
      { time: "706", temperature: "291", remark: "parts out" },
    ],
    // 28 fl oz in 52 minutes, and the bath stronger at the end than at the boil.
    between: [0.5, 1.3],
  },
  {
    says: "no starting water",
    givens: [
      ["sodium_hydroxide", "18 lb"],
      ["sodium_nitrate", "9 lb"],
      ["water_start", ""],
      ["altitude", "900 ft"],
      ["target", "291"],
    ],
    rows: [
      { time: "0:00", temperature: "285", remark: "boiling" },
      { time: "4:30", temperature: "287" },
      { time: "9:00", temperature: "290" },
      { time: "10:15", water: "12", unit: "fl oz" },
      { time: "12:00", temperature: "288" },
      { time: "16:30", temperature: "290" },
      { time: "20:00", temperature: "292" },
      { time: "21:00", water: "16", unit: "fl oz" },
      { time: "24:00", temperature: "289" },
      { time: "29:30", temperature: "291" },
      { time: "33:00", temperature: "293" },
      { time: "35:00", remark: "end" },
    ],
    // 28 fl oz in 35 minutes and a rise of 8 °F on top.
    between: [1.2, 2.6],
  },
  {
    says: "unknown salts, a depth and a tank",
    givens: [
      ...noSalts,
      ["water_start", ""],
      ["liquid_depth", "4 in"],
      ["tank_length", "35 in"],
      ["tank_width", "8 in"],
      ["altitude", "0 ft"],
    ],
    rows: [
      { time: "0:00", temperature: "280" },
      { time: "5:00", temperature: "285" },
      { time: "10:00", temperature: "288" },
      { time: "12:00", water: "17", unit: "fl oz" },
      { time: "15:00", temperature: "286" },
      { time: "20:00", temperature: "289" },
      { time: "25:00", temperature: "291" },
      { time: "27:00", water: "24", unit: "fl oz" },
      { time: "30:00", temperature: "288" },
      { time: "35:00", temperature: "291" },
      { time: "40:00", temperature: "293" },
    ],
    // 41 fl oz in 40 minutes and a rise of 13 °F on top.
    between: [1.5, 3.5],
  },
];

const ounceAMinute = 0.0295735 / 60;

for (const kind of kindsOfPage) {
  test.each(scraps)(`${kind}: a scrap typed on a phone, $says, is answered`, async ({ givens, rows, between }) => {
    const page = await openOneRun(kind, { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    await page.getByRole("button", { name: "write one by hand" }).click();
    for (const [line, text] of givens) await write(page, line, text);
    await typeRows(page, rows);
    const boilOff = await number(page, "boil_off");
    expect(boilOff.value / ounceAMinute).toBeGreaterThan(between[0]);
    expect(boilOff.value / ounceAMinute).toBeLessThan(between[1]);
    expect(boilOff.low).toBeLessThan(boilOff.value);
    expect(boilOff.high).toBeGreaterThan(boilOff.value);
    for (const line of ["make_up", "ratio_start", "ratio_end", "minutes_in_band"]) {
      const { value, low, high } = await number(page, line);
      expect(value).toBeGreaterThanOrEqual(low);
      expect(value).toBeLessThanOrEqual(high);
    }
    expect(await page.locator("#log tbody tr").count()).toBe(rows.length);
    expect(await page.locator("figure svg").count()).toBe(4);
  });
}
