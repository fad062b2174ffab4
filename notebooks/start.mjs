import { spawn } from "node:child_process";
import { resolve } from "node:path";
import { buildSite } from "./build.mjs";
import { installMissing } from "./installMissing.mjs";
import { serve } from "./serve.mjs";

const usualPort = 4173;
const portsToTry = 50;

/** The port the person asked for, or undefined when PORT is not set. */
function portAsked(text) {
  if (text === undefined || text.trim() === "") return undefined;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port;
  console.error(`invalid PORT: ${text}; a whole number from 0 to 65535 is allowed (0 takes any free one)`);
  process.exit(1);
}

/** Serves on the port asked for, or on the first free one from the usual port up. */
async function serveSomewhere(folder, asked) {
  const last = asked ?? usualPort + portsToTry;
  for (let port = asked ?? usualPort; ; port += 1) {
    try {
      return await serve(folder, port);
    } catch (problem) {
      if (problem.code === "EADDRINUSE" && port < last) continue;
      const why = { EADDRINUSE: "is taken", EACCES: "needs more rights than this account has" }[problem.code];
      if (!why) throw problem;
      console.error(`Port ${port} ${why}. Set PORT to another one, for instance PORT=${usualPort + 1000} npm start`);
      process.exit(1);
    }
  }
}

/** Opens the address in the desktop's browser; where there is no desktop, does nothing. */
function openOnDesktop(address) {
  if (process.env.CI) return;
  const noScreen = process.platform === "linux" && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY;
  if (noScreen) return;
  const [command, ...words] = { darwin: ["open", address], win32: ["cmd", "/c", "start", "", address] }[
    process.platform
  ] ?? ["xdg-open", address];
  spawn(command, words, { stdio: "ignore", detached: true })
    .on("error", () => {})
    .unref();
}

installMissing();
const asked = portAsked(process.env.PORT);
const folder = await buildSite(process.argv[2] && resolve(process.argv[2]));
const site = await serveSomewhere(folder, asked);
const address = `http://localhost:${site.port}/`;
console.log(address);
openOnDesktop(address);
for (const signal of ["SIGINT", "SIGTERM"]) {
  process.on(signal, () => {
    site.close();
    process.exit(0);
  });
}
