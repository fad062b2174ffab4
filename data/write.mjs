// Writes the demo shop again from its seeds: node data/write.mjs
import { mkdir, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const { module } = await runnerImport(here("./generate.ts"), { configFile: false, logLevel: "error" });
await mkdir(here("./demoLogs"), { recursive: true });
await writeFile(here("./demoShop.json"), module.demoShopText());
for (const [name, text] of module.demoLogs()) await writeFile(here(`./demoLogs/${name}`), text);
