import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";
import { oneFile, policyOfSite } from "./oneFile.ts";

export default defineConfig(({ mode }) => {
  const single = mode === "one-file";
  return {
    root: fileURLToPath(new URL(".", import.meta.url)),
    base: "./",
    publicDir: false,
    envDir: false,
    plugins: [single ? oneFile() : policyOfSite()],
    worker: { format: "iife" },
    build: {
      outDir: fileURLToPath(new URL("../dist", import.meta.url)),
      target: "es2022",
      modulePreload: { polyfill: false },
      reportCompressedSize: false,
      chunkSizeWarningLimit: 2000,
      cssCodeSplit: !single,
      assetsInlineLimit: single ? Number.POSITIVE_INFINITY : 0,
      rolldownOptions: single ? { output: { codeSplitting: false } } : {},
    },
  };
});
