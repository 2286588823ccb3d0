import AxeBuilder from "@axe-core/playwright";
import type { BrowserContextOptions } from "playwright-core";
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
  await pane.page.getByText("A1 shows 58").waitFor();
  await pane.call("Route!B1", "CORRECTED", [[58]], [[95]], [[22]], ...Array<null>(9).fill(null));
  await pane.call("Route!C1", "RISE_AT_LOAD", [[12]], [[35]], [[100]], null, null);
  return pane;
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

  const cell = (): Promise<string> => pane.page.getByRole("status").first().innerText();
  const select = async (row: number, column: number): Promise<void> => {
    await pane.page.evaluate(
      ([r, c]) => {
        globalThis.standIn.book.select(r, c);
      },
      [row, column] as const,
    );
    await pane.page.waitForTimeout(50);
  };

  test("ties every function of the catalogue to its name", async () => {
    const names = await pane.page.evaluate(() => [...globalThis.standIn.functions.keys()]);
    expect(names).toEqual(catalogue.map(({ name }) => name));
  });

  test("tells what the selected cell shows and why, and hears of a recalculation", async () => {
    await select(0, 1);
    expect(await cell()).toMatch(/^B1 shows #VALUE!\s+emissivity: 95 cannot be.*0\.95/s);
    await pane.call("Route!B1", "CORRECTED", [[58]], [[85]], [[22]], ...Array<null>(9).fill(null));
    await pane.page.getByText("emissivity: 85").waitFor();
    await select(0, 3);
    expect((await cell()).trim()).toBe("D1 shows 57.61");
  });

  test("checks the sheet by the ribbon's command, which is told when it is done", async () => {
    await pane.page.evaluate(() => {
      globalThis.standIn.actions.get("checkSheet")?.({ completed: () => globalThis.standIn.completed++ });
    });
    await pane.page.getByText("2 cells with an error").waitFor();
    await pane.page.waitForFunction(() => globalThis.standIn.completed === 1);
  });

  test("checks it by its button and goes to a cell, all by keyboard", async () => {
    await pane.page.keyboard.press("Tab");
    expect(await pane.page.evaluate(() => document.activeElement?.textContent)).toBe("Check the sheet");
    await pane.page.keyboard.press("Enter");
    await pane.page.getByText("Route: 3 formulas with GREY functions, 2 cells with an error.").waitFor();
    expect(await pane.page.locator(".gb-findings strong").allInnerTexts()).toEqual(["B1: #VALUE!", "C1: #N/A"]);
    await pane.page.keyboard.press("Tab");
    await pane.page.keyboard.press("Tab");
    await pane.page.keyboard.press("Enter");
    expect(await pane.page.evaluate(() => globalThis.standIn.book.selected)).toBe("Route!C1");
  });

  test("finds a function by its words, and has all cautions", async () => {
    await pane.page.getByLabel("Search functions and arguments").fill("relative");
    expect(await pane.page.locator(".gb-function:visible .gb-function-name").allInnerTexts()).toContain(
      "GREY.RELATIVE_RISE",
    );
    const shown = await pane.page.locator(".gb-cautions li").allInnerTexts();
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
      await pane.page.getByRole("button", { name: "Check the sheet" }).click();
      await pane.page.locator(".gb-findings button").first().waitFor();
      await pane.page.locator(".gb-function summary").first().click();
      const { violations } = await new AxeBuilder({ page: pane.page }).analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.html)])).toEqual([]);
      const { wide, title } = await pane.page.evaluate(() => ({
        wide: document.documentElement.scrollWidth - innerWidth,
        title: innerWidth - document.querySelector("h1")!.getBoundingClientRect().right,
      }));
      expect(wide).toBeLessThanOrEqual(0);
      // Excel's own button stands in the top right corner, 34 px wide.
      expect(title).toBeGreaterThanOrEqual(34);
    } finally {
      await pane.close();
    }
  });

  test("outside Excel and without Office's script it says so and still tells the functions", async () => {
    const pane = await ExcelPane.open(undefined);
    try {
      await pane.page.getByText("opened outside Excel").waitFor();
      expect(await pane.page.getByRole("button", { name: "Check the sheet" }).isVisible()).toBe(false);
      expect(await pane.page.locator(".gb-function").count()).toBe(catalogue.length);
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
      const { violations } = await new AxeBuilder({ page: pane.page }).analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.html)])).toEqual([]);
      expect(await pane.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      expect(pane.faults).toEqual([]);
    } finally {
      await pane.close();
    }
  });
});
