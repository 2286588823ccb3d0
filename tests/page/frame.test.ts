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

    test("the pane is drawn wider by keyboard: its ways become a list, and the grid keeps 60 % of the page", async () => {
      const edge = page.page.getByRole("separator", { name: "Width of the pane" });
      const told = async (): Promise<number[]> =>
        Promise.all(["now", "min", "max"].map(async (one) => Number(await edge.getAttribute(`aria-value${one}`))));
      const widths = (): Promise<[number, number]> =>
        page.page.evaluate(() => {
          const width = (one: string): number => document.querySelector(one)!.getBoundingClientRect().width;
          return [width(".gb-panel"), width(".gb-stage")];
        });
      const ways = page.page.getByRole("tablist", { name: "Ways of the pane" });
      expect(await ways.getAttribute("aria-orientation")).toBe("horizontal");
      const [usual] = await widths();
      expect(await told()).toEqual([Math.round(usual), 320, 512]);
      await edge.focus();
      await page.press("ArrowLeft");
      expect((await told())[0]).toBe(Math.round(usual) + 16);
      await page.press("End", "ArrowLeft");
      expect(await told()).toEqual([512, 320, 512]);
      expect((await widths())[1] / 1280).toBeGreaterThanOrEqual(0.6);
      await page.page.locator("[role=tablist][aria-orientation=vertical][aria-label='Ways of the pane']").waitFor();
      const { violations } = await new AxeBuilder({ page: page.page }).analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.html)])).toEqual([]);
      // The grid is painted up to the pane's edge: a cell under it would take the click.
      const painted = await page.page.locator("canvas[id*=sheet-main]").boundingBox();
      expect(Math.round(painted!.x + painted!.width)).toBe(1280 - 512);
      await page.press("Home", "ArrowRight");
      expect(await told()).toEqual([320, 320, 512]);
      await page.press("Enter");
      expect((await widths())[1]).toBe(1280);
      expect(await page.page.evaluate(() => document.activeElement?.textContent)).toBe("Panel");
      await page.press("Enter");
      expect((await widths())[0]).toBe(320);
    });

    test("the pane is drawn wider by pointer, and no further than it may", async () => {
      const edge = page.page.getByRole("separator", { name: "Width of the pane" });
      const drag = async (by: number): Promise<number> => {
        const { x, y, width, height } = (await edge.boundingBox())!;
        await page.page.mouse.move(x + width / 2, y + height / 3);
        await page.page.mouse.down();
        await page.page.mouse.move(x + width / 2 + by / 2, y + height / 3);
        await page.page.mouse.move(x + width / 2 + by, y + height / 3);
        await page.page.mouse.up();
        return (await page.page.locator(".gb-panel").boundingBox())!.width;
      };
      expect(await drag(-100)).toBe(420);
      expect(await drag(-900)).toBe(512);
      expect(await drag(900)).toBe(320);
      await edge.dblclick();
      expect((await page.page.locator(".gb-panel").boundingBox())!.width).toBeCloseTo(1280 * 0.28, 0);
      // A smaller window takes its share back.
      await edge.press("End");
      await page.page.setViewportSize({ width: 1000, height: 720 });
      expect((await page.page.locator(".gb-panel").boundingBox())!.width).toBe(400);
      expect(await edge.getAttribute("aria-valuenow")).toBe("400");
      await page.page.setViewportSize({ width: 1280, height: 720 });
    });
  });

  test("on a narrow page the pane slides over the grid from below and back, and has no edge to draw", async () => {
    const page = await (await OpenPage.open("small", { viewport: { width: 820, height: 900 } })).ready();
    try {
      const panel = page.page.locator(".gb-panel");
      const stage = (): Promise<unknown> => page.page.locator(".gb-stage").boundingBox();
      const before = await stage();
      expect(await panel.isVisible()).toBe(false);
      await page.page.getByRole("button", { name: "Panel" }).press("Enter");
      await page.page.waitForTimeout(200);
      const { y, height, width } = (await panel.boundingBox())!;
      expect([Math.round(y + height), width]).toEqual([900, 820]);
      expect(y).toBeGreaterThan(200);
      expect(await stage()).toEqual(before);
      expect(await page.page.getByRole("separator").isVisible()).toBe(false);
      await page.press("Escape");
      expect(await panel.isVisible()).toBe(false);
    } finally {
      await page.close();
    }
  });
});
