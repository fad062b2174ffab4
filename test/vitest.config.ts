import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

// A zone with daylight saving that is nobody's default on a server: a test that leans on the machine's zone shows here.
process.env.TZ = "America/Denver";

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    environment: "node",
    allowOnly: false,
    passWithNoTests: false,
    watch: false,
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          include: ["test/**/*.test.ts"],
          exclude: ["test/pages/**", "**/node_modules/**"],
          setupFiles: ["test/support/consoleFails.ts", "test/support/noNetwork.ts", "test/support/oneSeed.ts"],
          testTimeout: 20_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: "pages",
          include: ["test/pages/**/*.test.ts"],
          globalSetup: ["test/pages/siteAndBrowser.ts"],
          testTimeout: 60_000,
          hookTimeout: 120_000,
          // After the unit tests, one file at a time: a page that shares its processor is slow, not wrong.
          fileParallelism: false,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
