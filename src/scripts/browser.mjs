/** Finds a browser for the tests; on a Debian machine as root without one it installs Chromium, once. */
import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync, readFileSync } from "node:fs";
import path from "node:path";

const names = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "chrome",
  "microsoft-edge",
  "microsoft-edge-stable",
];

const elsewhere = {
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: ["ProgramFiles", "ProgramFiles(x86)", "LocalAppData"]
    .map((variable) => process.env[variable])
    .filter((folder) => folder !== undefined)
    .flatMap((folder) => [
      path.join(folder, "Google/Chrome/Application/chrome.exe"),
      path.join(folder, "Chromium/Application/chrome.exe"),
      path.join(folder, "Microsoft/Edge/Application/msedge.exe"),
    ]),
};

/** The path of an installed browser (GREYBODY_BROWSER goes first), or undefined. */
export function findBrowser() {
  const onPath = (process.env.PATH ?? "")
    .split(path.delimiter)
    .flatMap((folder) => names.map((name) => path.join(folder, name)));
  const candidates = [process.env.GREYBODY_BROWSER, ...onPath, ...(elsewhere[process.platform] ?? [])];
  return candidates.find((file) => file !== undefined && file !== "" && isExecutable(file));
}

/** As findBrowser, after an installation where that can be done unasked. */
export function ensureBrowser() {
  const found = findBrowser();
  if (found !== undefined || !isDebianAsRoot()) return found;
  console.log("No browser here: installing Chromium with apt-get, once; usually a minute or two …");
  for (const args of [["update"], ["install", "-y", "--no-install-recommends", "chromium"]]) {
    const { status } = spawnSync("apt-get", args, {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
    if (status !== 0) console.error(`apt-get ${args.join(" ")} did not succeed.`);
  }
  return findBrowser();
}

function isDebianAsRoot() {
  return (
    process.getuid?.() === 0 &&
    existsSync("/etc/os-release") &&
    /^ID=debian$/m.test(readFileSync("/etc/os-release", "utf8"))
  );
}

function isExecutable(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
