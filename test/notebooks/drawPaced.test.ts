import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { drawPaced } from "../../notebooks/page/drawPaced.ts";

let frames: (() => void)[] = [];
const frame = (): void => {
  const now = frames;
  frames = [];
  for (const one of now) one();
};
const turn = (): Promise<void> => Promise.resolve();

beforeEach(() => {
  vi.useFakeTimers();
  frames = [];
  vi.stubGlobal("requestAnimationFrame", (then: () => void) => frames.push(then));
  vi.stubGlobal("cancelAnimationFrame", () => {});
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

test("the first change is drawn at the end of its turn, all that follow once at the next frame", async () => {
  const draw = vi.fn();
  const redraw = drawPaced(draw);
  redraw();
  redraw();
  expect(draw).toHaveBeenCalledTimes(0);
  await turn();
  expect(draw).toHaveBeenCalledTimes(1);
  for (let times = 0; times < 5; times += 1) {
    redraw();
    await turn();
  }
  expect(draw).toHaveBeenCalledTimes(1);
  frame();
  expect(draw).toHaveBeenCalledTimes(2);
  frame();
  expect(draw).toHaveBeenCalledTimes(2);
  redraw();
  await turn();
  expect(draw).toHaveBeenCalledTimes(3);
});

test("a hidden tab, which has no frames, is drawn all the same", async () => {
  const draw = vi.fn();
  const redraw = drawPaced(draw);
  redraw();
  await turn();
  redraw();
  vi.advanceTimersByTime(1000);
  expect(draw).toHaveBeenCalledTimes(2);
});
