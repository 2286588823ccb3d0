import { chromium, type Browser } from "playwright-core";

const executablePath = process.env.GREYBODY_BROWSER;

/**
 * `describe` for tests in a real browser. Without a browser they are skipped, or fail where one is required
 * (GREYBODY_REQUIRE_BROWSER=1, as .ci/run sets it).
 */
export const describeInBrowser =
  executablePath === undefined && process.env.GREYBODY_REQUIRE_BROWSER !== "1" ? describe.skip : describe;

/** A browser of its own that asks nobody for anything; close it when done. */
export function launchBrowser(): Promise<Browser> {
  if (executablePath === undefined)
    throw new Error("No browser was found, and GREYBODY_REQUIRE_BROWSER=1 asks for one.");
  const quiet = ["no-first-run", "disable-background-networking", "disable-component-update", "disable-sync"];
  const args = ["no-sandbox", "disable-gpu", "disable-quic", ...quiet].map((flag) => `--${flag}`);
  return chromium.launch({ executablePath, args });
}
