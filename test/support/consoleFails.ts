import { afterAll, afterEach } from "vitest";

const ways = ["log", "info", "warn", "error", "debug"] as const;
const said: string[] = [];

// What draws the page says at its first import that it is not the built one; nothing is drawn here.
Object.assign(globalThis, { litIssuedWarnings: new Set(["dev-mode"]) });

for (const way of ways) {
  console[way] = (...words: unknown[]) => {
    said.push(`console.${way}: ${words.map(String).join(" ")}`);
  };
}

function refuseConsole(): void {
  const heard = said.splice(0);
  if (heard.length > 0) throw new Error(`The library wrote to the console; it may not.\n${heard.join("\n")}`);
}

afterEach(refuseConsole);
// What was said while a file was read, before or after its tests.
afterAll(refuseConsole);
