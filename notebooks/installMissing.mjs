import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder that holds package.json. */
export const projectFolder = dirname(dirname(fileURLToPath(import.meta.url)));

const oldestNode = [20, 20];

/** Ends the process with a plain message when this Node is older than the project allows. */
export function refuseOldNode(version = process.versions.node) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  if (major > oldestNode[0] || (major === oldestNode[0] && minor >= oldestNode[1])) return;
  console.error(
    `Node ${oldestNode.join(".")} or later is needed; this is Node ${version}. Get a newer one at https://nodejs.org/.`,
  );
  process.exit(1);
}

/** The packages that package-lock.json asks for and node_modules lacks or holds in another version. */
export function missingPackages(folder = projectFolder) {
  const wanted = JSON.parse(readFileSync(join(folder, "package-lock.json"), "utf8")).packages;
  const recordOfInstall = join(folder, "node_modules", ".package-lock.json");
  const installed = existsSync(recordOfInstall) ? JSON.parse(readFileSync(recordOfInstall, "utf8")).packages : {};
  return Object.keys(wanted).filter((place) => {
    if (place === "") return false;
    const there = installed[place];
    // An optional package may belong to another machine; it counts only where it is there.
    if (!there) return !(wanted[place].optional || wanted[place].devOptional);
    return there.version !== wanted[place].version || !existsSync(join(folder, place));
  });
}

/** Runs npm with these arguments in the project's folder and gives its exit code. */
function npm(...words) {
  const options = { cwd: projectFolder, stdio: ["ignore", "inherit", "inherit"] };
  const script = process.env.npm_execpath;
  const under = script && /npm-cli\.[cm]?js$/.test(script);
  const result = under
    ? spawnSync(process.execPath, [script, ...words], options)
    : spawnSync("npm", words, { ...options, shell: process.platform === "win32" });
  return result.status ?? 1;
}

/** Makes node_modules what package-lock.json says it is; does nothing when it is already so. */
export function installMissing() {
  refuseOldNode();
  const missing = missingPackages();
  if (missing.length === 0) return;
  console.log(`Installing what is missing (${missing.length} packages) ...`);
  const code = npm("ci", "--include=dev", "--no-audit", "--no-fund");
  if (code === 0 && missingPackages().length === 0) return;
  console.error("The packages could not be installed. Look at npm's message above; a network is needed this once.");
  process.exit(1);
}
