import { afterEach, beforeEach, vi } from "vitest";

const ways = ["log", "info", "warn", "error", "debug"] as const;
let said: string[] = [];

beforeEach(() => {
  said = [];
  for (const way of ways) {
    vi.spyOn(console, way).mockImplementation((...words: unknown[]) => {
      said.push(`console.${way}: ${words.map(String).join(" ")}`);
    });
  }
});

afterEach(() => {
  const heard = said;
  said = [];
  for (const way of ways) vi.mocked(console[way]).mockRestore?.();
  if (heard.length > 0) throw new Error(`The library wrote to the console; it may not.\n${heard.join("\n")}`);
});
