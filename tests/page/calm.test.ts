/**
 * The page stays calm while a long route calculates: `npm run bench -- page` measures it against 100 ms, this watches
 * that it does not go wrong tenfold.
 */
import { describeInBrowser } from "../support/browser.js";
import { fullRoute } from "../support/full-route.js";
import { watchTasks } from "../support/long-tasks.js";
import { OpenPage } from "../support/page.js";

const ROWS = 500;
const WATCHDOG = 1000;

describeInBrowser(`A route of ${String(ROWS)} rows`, () => {
  let page: OpenPage;
  beforeAll(async () => {
    page = await (await OpenPage.open("small")).ready();
    await page.page.evaluate((book) => globalThis.greybody!.port.makeBook(book), fullRoute(ROWS));
    await page.settled();
  }, 120_000);
  afterAll(() => page.close());

  test.each([
    ["of one row", "Route", "left", "61.5"],
    ["that every row is corrected with", "Job", "Reflected, indoors", "27"],
  ])("recalculates after a value %s: no task takes a second, and a line says so", async (_, sheet, header, text) => {
    const cell = await page.page.evaluate(
      async ([name, wanted]) => {
        const { port } = globalThis.greybody!;
        const [tables, fields] = await Promise.all([port.tables(), port.fields()]);
        const column = tables.ok ? tables.value[0]!.columns.find((one) => one.header === wanted)?.column : undefined;
        const field = fields.ok ? fields.value.find(({ label }) => label === wanted)?.at : undefined;
        return name === "Route"
          ? `${String.fromCharCode(65 + column!)}20`
          : `${String.fromCharCode(65 + field!.column)}${field!.row + 1}`;
      },
      [sheet, header],
    );
    await page.select(cell, sheet);
    const { tasks, said } = await watchTasks(page.page, async () => {
      await page.page.keyboard.type(text);
      await page.page.keyboard.press("Enter");
    });
    expect((await page.cell(cell, sheet)).value).toBe(Number(text));
    expect(tasks.filter((task) => task > WATCHDOG)).toEqual([]);
    expect(said).toEqual(["Calculating…"]);
  });
});
