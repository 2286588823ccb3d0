import AxeBuilder from "@axe-core/playwright";
import type { BrowserContextOptions } from "playwright-core";
import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

const focused = (page: OpenPage): Promise<string> =>
  page.page.evaluate(() => document.activeElement?.closest(".gb-tabs, .gb-bar, .gb-panel, .gb-stage")?.className ?? "");

describeInBrowser("The page around the grid", () => {
  const looks: [string, BrowserContextOptions][] = [
    ["light", {}],
    ["dark", { colorScheme: "dark" }],
    ["forced colours", { forcedColors: "active" }],
    ["320 px wide", { viewport: { width: 320, height: 640 } }],
  ];
  test.each(looks)("axe finds nothing: %s", async (_, options) => {
    const page = await (await OpenPage.open("small", options)).ready();
    try {
      if (options.viewport) await page.page.getByRole("button", { name: "Panel" }).click();
      await page.page.getByRole("tab", { name: "Functions" }).click();
      await page.page.waitForTimeout(200);
      const { violations } = await new AxeBuilder({ page: page.page }).analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.html)])).toEqual([]);
      const wide = await page.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      expect(page.faults).toEqual([]);
    } finally {
      await page.close();
    }
  });

  describe("on a desk", () => {
    let page: OpenPage;

    beforeAll(async () => {
      page = await (await OpenPage.open("small")).ready();
    });

    afterAll(() => page.close());

    test("F6 goes round the parts and back into the grid", async () => {
      await page.select("C5");
      const round: string[] = [];
      for (let step = 0; step < 4; step++) {
        await page.press("F6");
        round.push(await focused(page));
      }
      expect(round).toEqual(["gb-tabs", "gb-bar", "gb-panel", "gb-stage"]);
      await page.press("Shift+F6");
      expect(await focused(page)).toBe("gb-panel");
      await page.press("F6");
      await page.page.keyboard.type("44");
      await page.press("Enter");
      expect((await page.cell("C5")).value).toBe(44);
      await page.press("Control+z");
    });

    test("sheet tabs are a tab list for the keyboard", async () => {
      await page.press("F6", "ArrowRight", "Enter");
      const tab = page.page.getByRole("tab", { name: "Job" });
      expect(await tab.getAttribute("aria-selected")).toBe("true");
      await page.press("End", "Enter");
      expect(await page.page.getByRole("tab", { name: "Notes" }).getAttribute("aria-selected")).toBe("true");
      await page.page.getByRole("tab", { name: "Readings" }).click();
      await page.settled();
    });

    test("settings fold out and in", async () => {
      const button = page.page.locator(".gb-folded");
      expect(await button.innerText()).toBe("More columns (1)");
      await button.click();
      expect(await button.innerText()).toBe("Fewer columns");
      const box = await page.page.evaluate(() => globalThis.greybody!.box("E5"));
      expect(box?.width).toBeGreaterThan(60);
      await button.click();
      expect(await button.innerText()).toBe("More columns (1)");
    });

    test("the panel folds away and the grid takes its place", async () => {
      const width = (): Promise<number> => page.page.evaluate(() => document.querySelector(".gb-stage")!.clientWidth);
      const before = await width();
      await page.page.getByRole("button", { name: "Panel" }).click();
      expect(await width()).toBe(1280);
      await page.page.getByRole("button", { name: "Panel" }).click();
      expect(await width()).toBe(before);
      expect(before / 1280).toBeGreaterThanOrEqual(0.6);
    });
  });
});
