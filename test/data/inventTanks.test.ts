import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { grossHeat, marched } from "../../data/generator/flameMarch.ts";
import { inventTanks } from "../../data/generator/inventTanks.ts";

const flame = { air: 1.6, glow: 0.1, clearance: 0.08, touch: 30, spill: 0.3, draws: 0.6, grows: 0.4, choke: 0.1 };
const tank = { length: 0.6, width: 0.15, burners: 1 };

test("a marched flame gives no more heat than its gas has, less to a hot bath, and more to a longer floor", () => {
  const gas = 4e-4;
  const into = (length: number, bath = 418) => marched(flame, { ...tank, length }, gas, bath);
  expect(into(0.6)).toBeGreaterThan(0);
  expect(marched({ ...flame, touch: 1e4, glow: 0.9 }, { ...tank, length: 5 }, gas, 300)).toBeLessThan(grossHeat(gas));
  expect(into(0.6, 294)).toBeGreaterThan(into(0.6));
  expect(into(1.2)).toBeGreaterThan(into(0.6));
  expect(into(1.2) - into(0.9)).toBeLessThan(into(0.6) - into(0.3));
});

test("the invented tanks share no code with the library", () => {
  for (const file of ["flameMarch", "inventTanks"]) {
    const source = readFileSync(new URL(`../../data/generator/${file}.ts`, import.meta.url), "utf8");
    expect(source).not.toMatch(/lib\//);
  }
});

test("the same seed gives the same tanks, another length keeps the world", () => {
  expect(inventTanks(5)).toEqual(inventTanks(5));
  const [short, long] = [1.5, 2.5].map((times) => inventTanks(5, { times, burners: 1 })) as [
    ReturnType<typeof inventTanks>,
    ReturnType<typeof inventTanks>,
  ];
  expect(short.from).toEqual(long.from);
  expect(short.truth.boilOff).toBeGreaterThan(0.9 * long.truth.boilOff);
});
