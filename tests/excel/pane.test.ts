import AxeBuilder from "@axe-core/playwright";
import type { BrowserContextOptions, Locator } from "playwright-core";
import { catalogue } from "../../src/functions/catalogue.js";
import { cautions } from "../../src/functions/cautions.js";
import { describeInBrowser } from "../support/browser.js";
import { ExcelPane } from "../support/excel-pane.js";
import type { FakeSheet } from "../support/fake-workbook.js";

const route: FakeSheet = {
  name: "Route",
  formulas: [[58, "=GREY.CORRECTED(A1,95,22)", "=GREY.RISE_AT_LOAD(12,35,100)", "=GREY.RADIANCE(25)"]],
  values: [[58, "#VALUE!", "#N/A", 57.61]],
};
const office = "request: https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

/** The pane over that sheet, with what its two failing formulas said. */
async function open(options: BrowserContextOptions = {}): Promise<ExcelPane> {
  const pane = await ExcelPane.open(route, options);
  await pane.way("Check");
  await pane.call("Route!B1", "CORRECTED", [[58]], [[95]], [[22]], ...Array<null>(9).fill(null));
  await pane.call("Route!C1", "RISE_AT_LOAD", [[12]], [[35]], [[100]], null, null);
  return pane;
}

/** Nothing for axe to find, and nothing wider than the pane. */
async function expectClean({ page }: ExcelPane): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.html)])).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
}

describeInBrowser("The pane in Excel", () => {
  let pane: ExcelPane;

  beforeAll(async () => {
    pane = await open();
  });

  afterAll(async () => {
    // Its own files and Office's script, nothing else; nothing that the policy forbids.
    expect(pane.faults).toEqual([office]);
    await pane.close();
  });

  const message = (): Locator => pane.page.getByRole("region", { name: "Message of the selected cell" });
  const select = (row: number, column: number): Promise<void> =>
    pane.page.evaluate(
      ([r, c]) => {
        globalThis.standIn.book.select(r, c);
      },
      [row, column] as const,
    );

  test("ties every function of the catalogue to its name", async () => {
    const names = await pane.page.evaluate(() => [...globalThis.standIn.functions.keys()]);
    expect(names).toEqual(catalogue.map(({ name }) => name));
  });

  test("tells what the selected cell shows and why, and hears of a recalculation", async () => {
    await select(0, 1);
    await message().waitFor();
    expect(await message().innerText()).toMatch(/^B1 shows #VALUE!\s+emissivity: 95 cannot be.*0\.95/s);
    await pane.call("Route!B1", "CORRECTED", [[58]], [[85]], [[22]], ...Array<null>(9).fill(null));
    await message().getByText("emissivity: 85").waitFor();
    // A cell without an error has nothing said of it.
    await select(0, 3);
    await message().waitFor({ state: "detached" });
    expect(await pane.page.locator(".gp-sentence").innerText()).toContain("D1");
  });

  test.each([
    ["newRoute", "Start", "Make the sheets"],
    ["checkSheet", "Check", "Look through the sheet"],
  ])("the ribbon's command %s opens %s, and is told when it is done", async (command, way, next) => {
    await pane.way("Sources");
    const done = await pane.page.evaluate(() => globalThis.standIn.completed);
    await pane.page.evaluate((name) => {
      globalThis.standIn.actions.get(name)?.({ completed: () => globalThis.standIn.completed++ });
    }, command);
    await pane.page.getByRole("tab", { name: way, selected: true }).waitFor();
    await pane.page.getByRole("button", { name: next }).waitFor();
    await pane.page.waitForFunction((before) => globalThis.standIn.completed === before + 1, done);
  });

  test("looks through the sheet and goes to a cell, all by keyboard", async () => {
    await pane.page.getByRole("button", { name: "Look through the sheet" }).focus();
    await pane.page.keyboard.press("Enter");
    await pane.page.getByText("Route: 3 formulas with GREY functions, 2 cells with an error.").waitFor();
    const errors = pane.page.getByRole("region", { name: "Errors of the sheet" });
    expect(await errors.locator(".gp-line-what").allInnerTexts()).toEqual(["B1: #VALUE!", "C1: #N/A"]);
    await pane.page.keyboard.press("Tab");
    await pane.page.keyboard.press("Tab");
    await pane.page.keyboard.press("Enter");
    await pane.page.waitForFunction(() => globalThis.standIn.book.selected === "Route!C1");
  });

  test("enters the formulas of ours again, as they are typed", async () => {
    await pane.page.getByRole("button", { name: "Enter the formulas again" }).click();
    await pane.page.getByText("3 formulas with GREY functions entered again.").waitFor();
    expect(await pane.page.evaluate(() => globalThis.standIn.book.entered)).toEqual([
      'Route!B1 formulas [["=GREY.CORRECTED(A1,95,22)"]]',
      'Route!C1 formulas [["=GREY.RISE_AT_LOAD(12,35,100)"]]',
      'Route!D1 formulas [["=GREY.RADIANCE(25)"]]',
    ]);
  });

  test("finds a function by its words, and has all cautions", async () => {
    await pane.way("Functions");
    const names = pane.page.locator(".gp-line-what");
    expect(await names.count()).toBe(catalogue.length);
    await pane.page.getByLabel("Search functions and arguments").fill("relative");
    await pane.page.getByText(` of ${catalogue.length}`).waitFor();
    expect(await names.allInnerTexts()).toContain("GREY.RELATIVE_RISE");
    expect(await names.count()).toBeLessThan(catalogue.length);
    await pane.way("Sources");
    const shown = await pane.page.locator(".gp-cautions li").allInnerTexts();
    expect(shown).toEqual(cautions.map(({ title, text }) => `${title}. ${text}`));
  });
});

describeInBrowser("The pane's looks", () => {
  const looks: [string, BrowserContextOptions][] = [
    ["light, 320 px", { viewport: { width: 320, height: 640 } }],
    ["dark", { colorScheme: "dark" }],
    ["forced colours", { forcedColors: "active" }],
  ];
  test.each(looks)("axe finds nothing: %s", async (_, options) => {
    const pane = await open(options);
    try {
      await pane.page.evaluate(() => {
        globalThis.standIn.book.select(0, 1);
      });
      await pane.page.getByText("B1 shows #VALUE!").waitFor();
      await pane.page.getByRole("button", { name: "Look through the sheet" }).click();
      await pane.page.getByText("C1: #N/A").waitFor();
      await expectClean(pane);
      await pane.way("Functions");
      await pane.page.getByRole("button", { name: "GREY.CORRECTED" }).first().click();
      await expectClean(pane);
      // Excel's own button stands in the top right corner, 34 px wide.
      const title = await pane.page.getByRole("heading", { level: 1 }).boundingBox();
      expect(pane.page.viewportSize()!.width - title!.x - title!.width).toBeGreaterThanOrEqual(34);
      for (const way of ["Start", "Look", "Sources"]) {
        await pane.way(way);
        await expectClean(pane);
      }
    } finally {
      await pane.close();
    }
  });

  test("outside Excel and without Office's script it says so, and offers nothing to press", async () => {
    const pane = await ExcelPane.open(undefined);
    try {
      await pane.page.getByText("opened outside Excel").waitFor();
      expect(await pane.page.locator("button, input, [role=tab]").count()).toBe(0);
      expect(pane.faults).toEqual([office]);
    } finally {
      await pane.close();
    }
  });

  test.each([320, 1000])("the help page has every function, and axe finds nothing, at %i px", async (width) => {
    const pane = await ExcelPane.open(undefined, { viewport: { width, height: 800 } }, "help.html#GRADE");
    try {
      expect(await pane.page.locator(".gb-call").count()).toBe(catalogue.length);
      expect(await pane.page.locator("#GRADE").evaluate((heading) => heading.getBoundingClientRect().top)).toBeLessThan(
        100,
      );
      await expectClean(pane);
      expect(pane.faults).toEqual([]);
    } finally {
      await pane.close();
    }
  });
});
