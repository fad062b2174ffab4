import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, inject, test } from "vitest";

type Answer = { code: number; headers: Record<string, string | string[] | undefined>; body: string };

/** Asks for a path exactly as written: fetch would tidy "/../" away before it is sent. */
function ask(path: string, method = "GET"): Promise<Answer> {
  const { port } = new URL(inject("siteAddress"));
  return new Promise((done, failed) => {
    const sent = request({ host: "127.0.0.1", port, path, method }, (response) => {
      let body = "";
      response.setEncoding("utf8").on("data", (piece: string) => {
        body += piece;
      });
      response.on("end", () => done({ code: response.statusCode ?? 0, headers: response.headers, body }));
    });
    sent.on("error", failed).end();
  });
}

test("the site answers with the page, its kind and its policy", async () => {
  const { code, headers, body } = await ask("/");
  expect(code).toBe(200);
  expect(headers["content-type"]).toBe("text/html; charset=utf-8");
  expect(headers["cache-control"]).toBe("no-store");
  expect(headers["x-content-type-options"]).toBe("nosniff");
  expect(headers["content-security-policy"]).toMatch(/^default-src 'none'; script-src 'self';/);
  expect(body).toContain("<title>");
});

test("the site gives scripts and style sheets their kinds", async () => {
  const { body } = await ask("/");
  const script = /src="\.(\/assets\/[^"]+\.js)"/.exec(body)?.[1] ?? "";
  expect((await ask(script)).headers["content-type"]).toBe("text/javascript; charset=utf-8");
});

test("the site answers HEAD without a body", async () => {
  expect(await ask("/", "HEAD")).toMatchObject({ code: 200, body: "" });
});

test.each([
  "/../package.json",
  "/..%2f..%2fpackage.json",
  "/assets/../../package.json",
  "/%2e%2e/%2e%2e/etc/passwd",
  "/..\\package.json",
  "//etc/passwd",
  "/%00",
  "/%",
  "/nothing-here",
  "/assets",
])("the site gives nothing for %s", async (path) => {
  expect((await ask(path)).code).toBe(404);
});

test("the site refuses to be written to", async () => {
  expect((await ask("/", "POST")).code).toBe(405);
});

/** Runs the start script to its end and gives its code and all that it printed. */
async function start(port: string): Promise<{ code: number | null; printed: string }> {
  const folder = await mkdtemp(join(tmpdir(), "steady-boil-start-"));
  const script = fileURLToPath(new URL("../../notebooks/start.mjs", import.meta.url));
  const child = spawn(process.execPath, [script, folder], { env: { ...process.env, CI: "true", PORT: port } });
  let printed = "";
  for (const stream of [child.stdout, child.stderr]) {
    stream.on("data", (piece: Buffer) => {
      printed += piece.toString();
    });
  }
  const code = await new Promise<number | null>((done) => child.on("exit", done));
  await rm(folder, { recursive: true, force: true });
  return { code, printed };
}

test("start says so when PORT is taken", async () => {
  const other = createServer().listen(0, "127.0.0.1");
  await new Promise((ready) => other.on("listening", ready));
  const { port } = other.address() as AddressInfo;
  const { code, printed } = await start(String(port));
  other.close();
  expect(code).toBe(1);
  expect(printed).toContain(`Port ${port} is taken`);
});

test.each(["eighty", "-1", "70000", "80.5"])("start refuses PORT=%s", async (port) => {
  const { code, printed } = await start(port);
  expect(code).toBe(1);
  expect(printed).toContain(`invalid PORT: ${port}; a whole number from 0 to 65535 is allowed`);
});
