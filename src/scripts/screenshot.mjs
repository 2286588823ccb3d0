/**
 * `node src/scripts/screenshot.mjs FOLDER [--only phone-320] [--readme]`: pictures of the built page in every look, or in
 * those whose name begins so, for a person to judge; with --readme the README's picture (workbooks/page.png) as well. Needs `npm run build` and a browser.
 */
import { spawn } from "node:child_process";
import { mkdirSync } from "node:fs";
import path from "node:path";
import { chromium } from "playwright-core";
import { findBrowser } from "./browser.mjs";
import { inRoot } from "./paths.mjs";

const folder = process.argv[2];
const executablePath = findBrowser();
if (folder === undefined || folder.startsWith("--")) fail("say the folder for the pictures.");
if (executablePath === undefined) fail("no browser was found.");
mkdirSync(folder, { recursive: true });

const at = process.argv.indexOf("--only");
const only = at < 0 ? "" : (process.argv[at + 1] ?? "");
const desk = { width: 1440, height: 900 };
const sizes = { desk, "phone-420": { width: 420, height: 860 }, "phone-320": { width: 320, height: 640 } };
const colours = { light: {}, dark: { colorScheme: "dark" }, forced: { forcedColors: "active" } };
const looks = Object.entries(sizes).flatMap(([size, viewport]) =>
  Object.entries(colours).map(([colour, options]) => [`${size}-${colour}`, { viewport, ...options }]),
);
looks.push(["tablet-light", { viewport: { width: 820, height: 1180 } }]);

const { server, address } = await serve();
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
try {
  for (const [name, options] of looks) if (name.startsWith(only)) await pictures(name, options);
  if (process.argv.includes("--readme")) await readmePicture();
} finally {
  await browser.close();
  server.kill();
}

/** The page as it opens, the results, the panel, a list of choices, a message and the other sheets. */
async function pictures(name, options) {
  const page = await openPage(options);
  const shot = (what) => page.screenshot({ path: path.join(folder, `${name}-${what}.png`) });
  await shot("1-open");
  const narrow = options.viewport.width < 900;
  for (const way of ["Start", "Check", "Look", "Functions", "Sources"]) await paneShot(page, shot, way, narrow);
  if (narrow) await page.keyboard.press("Escape");
  else await widePane(page, shot);
  await page.evaluate(() => globalThis.greybody.select("Route", "B12"));
  await page.locator(".gb-choice-button").click();
  await page.waitForTimeout(300);
  await shot("3-choices");
  await page.keyboard.press("Escape");
  await scrollRight(page, 2600);
  await shot("4-results");
  for (const sheet of narrow ? ["Job"] : ["Job", "Assets", "Cautions"]) {
    await page.getByRole("tab", { name: sheet }).click();
    await page.waitForTimeout(600);
    await shot(`5-${sheet.toLowerCase()}`);
  }
  await page.context().close();
}

/** One way of the pane, for a row that has something to say. */
async function paneShot(page, shot, way, narrow) {
  await page.evaluate(() => globalThis.greybody.select("Route", "G12"));
  const panel = page.getByRole("complementary", { name: "Pane", exact: true });
  if (narrow && !(await panel.isVisible())) await page.getByRole("button", { name: "Panel" }).click();
  await page.getByRole("tab", { name: way, exact: true }).click();
  await page.waitForTimeout(400);
  await shot(`2-${way.toLowerCase()}`);
}

/** Drawn as wide as it goes, its ways are a list. */
async function widePane(page, shot) {
  await page.getByRole("tab", { name: "Look", exact: true }).click();
  const edge = page.getByRole("separator", { name: "Width of the pane" });
  await edge.press("End");
  await page.waitForTimeout(500);
  await shot("2-wide");
  await edge.dblclick();
}

/** What the route works out, from the rises over similar to the grade as found with its U, with the panel beside it. */
async function readmePicture() {
  const page = await openPage({ viewport: { width: 1624, height: 880 } });
  for (let step = 0; step < 2; step++) await page.getByRole("button", { name: "Zoom out" }).click();
  await page.waitForTimeout(300);
  const by = await page.evaluate(() => {
    const { box, cell, columns } = globalThis.greybody;
    const letters = (index) =>
      (index < 26 ? "" : letters(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26));
    // The headers stand below lines whose number changes with what a sheet has to say.
    const rows = Array.from({ length: 12 }, (_, row) => row + 1);
    const titles = Array.from({ length: columns("Route") }, (_, index) => rows.map((row) => `${letters(index)}${row}`));
    const first = titles.flat().find((at) => /^= rise\s+over\s+similar/.test(cell("Route", at).shown));
    return box(first).x - box("A1").x - box("A1").width;
  });
  await scrollRight(page, by);
  await page.screenshot({ path: inRoot("workbooks/page.png") });
  await page.context().close();
}

async function openPage(options) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForFunction(() => globalThis.greybody?.calculating() === false);
  await page.waitForTimeout(1500);
  return page;
}

async function scrollRight(page, by) {
  const grid = await page.locator("canvas[id*=sheet-main]").boundingBox();
  await page.mouse.move(grid.x + grid.width / 2, grid.y + grid.height / 2);
  await page.mouse.wheel(by, 0);
  await page.waitForTimeout(500);
}

/** The built server on a port of its own choice. */
function serve() {
  return new Promise((resolve, reject) => {
    const started = spawn(process.execPath, [inRoot("dist/cli.js"), "serve", "--port", "0"]);
    started.on("exit", (code) => reject(new Error(`greybody serve ended with ${code}: is dist/ built?`)));
    started.stdout.setEncoding("utf8").on("data", (text) => {
      const found = /http:\/\/\S+/.exec(text);
      if (found) resolve({ server: started, address: found[0] });
    });
  });
}

function fail(message) {
  console.error(`screenshot: ${message}`);
  process.exit(2);
}
