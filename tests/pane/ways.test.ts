import AxeBuilder from "@axe-core/playwright";
import type { BrowserContextOptions } from "playwright-core";
import { cautions } from "../../src/functions/cautions.js";
import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

const ways = ["Start", "Check", "Look", "Functions", "Sources"];

async function open(options: BrowserContextOptions = {}): Promise<OpenPage> {
  const page = await (await OpenPage.open(undefined, options)).ready();
  await page.page.locator(".gp-pane").waitFor({ state: "attached" });
  if (options.viewport && options.viewport.width < 900) await page.page.getByRole("button", { name: "Panel" }).click();
  return page;
}

const show = async (page: OpenPage, way: string): Promise<void> => {
  await page.page.getByRole("tab", { name: way, exact: true }).click();
  await page.page.waitForTimeout(250);
};

/** The row of the demo's route in which an asset stands. */
async function rowOf(page: OpenPage, asset: string): Promise<string> {
  const { first, last } = await page.table("Readings");
  const rows = Array.from({ length: last - first + 1 }, (_, index) => String(first + index));
  const assets = await page.shown(
    rows.map((row) => `A${row}`),
    "Route",
  );
  const row = rows[assets.indexOf(asset)];
  if (row === undefined) throw new Error(`The route has no ${asset}.`);
  return row;
}

describeInBrowser("The pane", () => {
  const looks: [string, BrowserContextOptions][] = [
    ["light", {}],
    ["dark", { colorScheme: "dark" }],
    ["forced colours", { forcedColors: "active" }],
    ["320 px wide", { viewport: { width: 320, height: 640 } }],
  ];
  // The page around it is looked at in tests/page/frame.test.ts.
  test.each(looks)("axe finds nothing in any way, nothing is wider than the page: %s", async (_, options) => {
    const page = await open(options);
    try {
      for (const way of ways) {
        await show(page, way);
        if (way === "Functions") await page.page.locator(".gp-line").first().click();
        if (way === "Look") await page.page.locator(".gp-figure summary").first().click();
        const { violations } = await new AxeBuilder({ page: page.page }).include(".gb-panel").analyze();
        const found = violations.map(({ id, nodes }) => [way, id, nodes.map((node) => node.html)]);
        expect(found).toEqual([]);
        const over = await page.page.evaluate(() => {
          const body = document.querySelector(".gp-body")!;
          return Math.max(body.scrollWidth - body.clientWidth, document.documentElement.scrollWidth - innerWidth);
        });
        expect([way, over]).toEqual([way, 0]);
        // Of two filled buttons neither is the next step.
        expect(await page.page.locator(".gp-next").count()).toBeLessThanOrEqual(1);
      }
      expect(page.faults).toEqual([]);
    } finally {
      await page.close();
    }
  });

  describe("on a desk", () => {
    let page: OpenPage;

    beforeAll(async () => {
      page = await open();
    });

    afterAll(() => page.close());

    test("all cautions stand at the foot of Start and in Sources", async () => {
      for (const way of ["Start", "Sources"]) {
        await show(page, way);
        const shown = await page.page.locator(".gp-cautions li").allInnerTexts();
        expect(shown).toEqual(cautions.map(({ title, text }) => `${title}. ${text}`));
      }
    });

    test("Check follows the selected row, and a line of it goes to the cell", async () => {
      await show(page, "Check");
      const row = await rowOf(page, "MCC2-M7");
      await page.select(`G${row}`, "Route");
      const line = page.page.getByRole("region", { name: "This row" }).getByRole("button");
      await line.first().waitFor();
      expect(await page.page.locator(".gp-sentence").innerText()).toMatch(
        new RegExp(`^Row ${row}: MCC2-M7, .* against this reading\\.$`),
      );
      expect(await line.first().innerText()).toContain("Needs surrounding air");
      await line.first().click();
      await page.settled();
      expect(await page.status()).toMatch(new RegExp(`^O${row} · surrounding_air`));
    });

    test("the message behind an error stands in Check", async () => {
      const free = "A60";
      await page.type(free, "=GREY.CORRECTED(58,95,22)", "Cautions");
      await page.select(free, "Cautions");
      await page.page.locator(".gp-message").waitFor();
      expect(await page.page.locator(".gp-message").innerText()).toContain("emissivity: 95 cannot be.");
    });

    test("Functions finds by words; the form previews result or message and inserts a wrapped reference", async () => {
      await show(page, "Functions");
      await page.page.getByLabel("Search functions and arguments").fill("minimum_load rise");
      const names = page.page.locator(".gp-line-what");
      expect(await names.allInnerTexts()).toContain("GREY.RISE_AT_LOAD");
      expect(await names.allInnerTexts()).not.toContain("GREY.CORRECTED");
      await page.page.getByLabel("Search functions and arguments").fill("zzqx");
      expect(await page.page.getByText("No function with these words.").count()).toBe(1);

      await page.page.getByLabel("Search functions and arguments").fill("corrected");
      await page.page.getByRole("button", { name: /^GREY\.CORRECTED/ }).click();
      const result = page.page.getByRole("status", { name: "Result" });
      const field = (name: string) => page.page.locator(".gp-call").getByLabel(name, { exact: false }).first();
      await field("apparent").fill("58");
      await field("emissivity").fill("95");
      await field("reflected").fill("22");
      await page.page.waitForFunction(() =>
        document.querySelector(".gp-outcome")?.textContent.includes("95 cannot be"),
      );
      await field("emissivity").fill("1");
      // A black surface reflects nothing and shows its own temperature.
      await page.page.waitForFunction(() =>
        /^58(\.0+)?$/.test(document.querySelector(".gp-result")?.textContent ?? ""),
      );
      expect(await result.innerText()).toMatch(/^58/);

      await page.select("A62", "Cautions");
      const reading = `Route!G${await rowOf(page, "MSB-Q3")}`;
      await field("apparent").fill(reading);
      await page.page.getByRole("button", { name: "Insert into A62" }).click();
      await page.settled();
      const { formula, value } = await page.cell("A62", "Cautions");
      expect(formula).toBe(`=GREY.CORRECTED(IF(${reading}="","",${reading}),1,22)`);
      expect(value).toBeCloseTo(38.2, 6);
      await page.page.getByRole("button", { name: "Insert into A62" }).click();
      expect(await page.page.getByRole("button", { name: "Write over what is there" }).count()).toBe(1);
    });

    test.each(["SVG", "PNG"])("a picture is saved as %s", async (kind) => {
      await show(page, "Look");
      const [saved] = await Promise.all([
        page.page.waitForEvent("download"),
        page.page
          .getByRole("button", { name: `Save as ${kind}` })
          .first()
          .click(),
      ]);
      expect(saved.suggestedFilename()).toBe(`greybody-similar.${kind.toLowerCase()}`);
      expect(page.faults).toEqual([]);
    });
  });
});
