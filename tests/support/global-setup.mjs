import { findBrowser } from "../../src/scripts/browser.mjs";
import { isFresh } from "../../src/scripts/freshness.mjs";
import { ensureBuilt } from "../../src/scripts/make.mjs";

/**
 * Once before all tests. Under `npm test` dist/ is built unless it was made from the tree as it is; `npx jest FILE` is
 * for work on one part, which builds by hand what it needs.
 */
export default async function setUp() {
  if (process.env.GREYBODY_BUILD === "1") await ensureBuilt();
  else if (!isFresh()) console.log("\ndist/ is older than the sources: tests that drive it need npm run build first.");
  const browser = findBrowser();
  if (browser !== undefined) process.env.GREYBODY_BROWSER = browser;
}
