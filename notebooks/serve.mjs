import { createReadStream, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, sep } from "node:path";

const kinds = new Map([
  [".html", "text/html; charset=utf-8"],
  [".js", "text/javascript; charset=utf-8"],
  [".css", "text/css; charset=utf-8"],
  [".json", "application/json; charset=utf-8"],
  [".csv", "text/csv; charset=utf-8"],
  [".svg", "image/svg+xml"],
  [".png", "image/png"],
  [".ico", "image/x-icon"],
  [".woff2", "font/woff2"],
  [".webmanifest", "application/manifest+json"],
  [".txt", "text/plain; charset=utf-8"],
]);

/** The file a request asks for, or undefined when there is none inside the folder. */
export function fileOf(folder, address) {
  let path;
  try {
    path = decodeURIComponent(address.split(/[?#]/, 1)[0]);
  } catch {
    return undefined;
  }
  if (path.includes("\0") || path.includes("\\")) return undefined;
  const file = join(folder, path.endsWith("/") ? `${path}index.html` : path);
  if (!file.startsWith(folder + sep)) return undefined;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

/** The policy that a page states in its meta tag, so that the header never says another. */
function policyOf(file) {
  const stated = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(readFileSync(file, "utf8"));
  return `${stated ? stated[1] : "default-src 'none'"}; frame-ancestors 'none'`;
}

/** Answers GET and HEAD from the files of one folder, and nothing else. */
export function answerFrom(folder) {
  return (request, response) => {
    const refuse = (code, words) => {
      response.writeHead(code, { "Content-Type": "text/plain; charset=utf-8" });
      response.end(`${words}\n`);
    };
    if (request.method !== "GET" && request.method !== "HEAD") return refuse(405, "Only reading is answered here.");
    const file = fileOf(folder, request.url ?? "/");
    if (!file) return refuse(404, "There is no such page here.");
    const kind = kinds.get(extname(file)) ?? "application/octet-stream";
    const headers = {
      "Content-Type": kind,
      "Content-Length": statSync(file).size,
      "Cache-Control": "no-store",
      "X-Content-Type-Options": "nosniff",
      "Referrer-Policy": "no-referrer",
    };
    if (kind.startsWith("text/html")) headers["Content-Security-Policy"] = policyOf(file);
    response.writeHead(200, headers);
    if (request.method === "HEAD") return response.end();
    createReadStream(file)
      .on("error", () => response.destroy())
      .pipe(response);
  };
}

function listen(server, port, host) {
  return new Promise((done, failed) => {
    server.once("error", failed);
    server.listen({ port, host }, () => done(server.address().port));
  });
}

/**
 * Serves a folder on this machine alone. Gives the port and a way to stop; fails with code EADDRINUSE when the port is
 * taken. Port 0 takes any free one.
 */
export async function serve(folder, port) {
  const first = createServer(answerFrom(folder));
  const taken = await listen(first, port, "127.0.0.1");
  const servers = [first];
  // Some machines resolve "localhost" to ::1 first; where there is no IPv6 the first server is enough.
  const second = createServer(answerFrom(folder));
  try {
    await listen(second, taken, "::1");
    servers.push(second);
  } catch (problem) {
    if (problem.code === "EADDRINUSE") {
      first.close();
      throw problem;
    }
  }
  const close = () => {
    for (const server of servers) {
      server.close();
      server.closeAllConnections();
    }
  };
  return { port: taken, close };
}
