import { readFileSync } from "node:fs";
import path from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { serve, type Serving } from "../../src/cli/serve.js";
import type { CellReport } from "../../src/page/handle.js";
import { launchBrowser } from "./browser.js";
import { settled } from "./long-tasks.js";
import { root } from "./run.js";

declare global {
  function reportFault(fault: string): void;
}

/** The built page, served and open in a browser, with what went wrong in it. */
export class OpenPage {
  private constructor(
    readonly page: Page,
    /** Requests to another origin, violations of the content security policy, uncaught errors. */
    readonly faults: readonly string[],
    private readonly browser: Browser,
    private readonly serving: Serving,
  ) {}

  /**
   * `book`: a description in tests/page/books; without one the page opens what it opens for everybody. `before` runs in
   * the page before anything of it does.
   */
  static async open(book?: string, options: BrowserContextOptions = {}, before?: () => void): Promise<OpenPage> {
    const serving = await serve({ port: 0, root: path.join(root, "dist/page") });
    const browser = await launchBrowser();
    const context = await browser.newContext({
      viewport: { width: 1280, height: 720 },
      permissions: ["clipboard-read", "clipboard-write"],
      ...options,
    });
    const page = await context.newPage();
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(`error: ${error.message}`));
    page.on("request", (request) => {
      const url = request.url();
      if (!url.startsWith(serving.address) && !url.startsWith("data:")) faults.push(`request: ${url}`);
    });
    await page.exposeFunction("reportFault", (fault: string) => faults.push(fault));
    if (before !== undefined) await page.addInitScript(before);
    await page.addInitScript(() => {
      document.addEventListener("securitypolicyviolation", (event) => {
        globalThis.reportFault(`policy: ${event.violatedDirective} ${event.blockedURI}`);
      });
    });
    await page.route("**/books/*.json", (route) => {
      const file = path.join(root, "tests/page/books", path.basename(new URL(route.request().url()).pathname));
      return route.fulfill({ contentType: "application/json", body: readFileSync(file, "utf8") });
    });
    await page.goto(serving.address + (book === undefined ? "" : `?book=${book}`));
    return new OpenPage(page, faults, browser, serving);
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.serving.close();
  }

  /** Until the workbook is there and its first calculation is done. */
  async ready(): Promise<this> {
    await this.page.waitForFunction(() => globalThis.greybody !== undefined);
    await this.settled();
    return this;
  }

  /** Until the engine has been at rest for a moment. */
  settled(): Promise<void> {
    return settled(this.page);
  }

  cell(address: string, sheet = "Readings"): Promise<CellReport> {
    return this.page.evaluate(([name, at]) => globalThis.greybody!.cell(name!, at!), [sheet, address]);
  }

  /** What cells show, in the order asked for. */
  async shown(addresses: readonly string[], sheet = "Readings"): Promise<string[]> {
    const reports = await Promise.all(addresses.map((address) => this.cell(address, sheet)));
    return reports.map((report) => report.shown);
  }

  /** Waits for a cell to be as wanted; the assertion that follows tells what it was instead. */
  async cellOnce(address: string, wanted: (cell: CellReport) => boolean, sheet = "Readings"): Promise<CellReport> {
    const until = Date.now() + 15_000;
    for (;;) {
      const cell = await this.cell(address, sheet);
      if (Date.now() > until || wanted(cell)) return cell;
      await this.page.waitForTimeout(100);
    }
  }

  /** Waits for the status line to say this. */
  async says(words: string): Promise<void> {
    await this.page.locator(".gb-status", { hasText: words }).waitFor();
  }

  /** Waits for cells to show this; the assertion that follows tells what they showed instead. */
  async becomes(addresses: readonly string[], expected: readonly string[], sheet = "Readings"): Promise<string[]> {
    const until = Date.now() + 15_000;
    for (;;) {
      const shown = await this.shown(addresses, sheet);
      if (Date.now() > until || shown.every((text, index) => text === expected[index])) return shown;
      await this.page.waitForTimeout(100);
    }
  }

  table(name = "Readings_table"): Promise<{ first: number; last: number }> {
    return this.page.evaluate((table) => globalThis.greybody!.table(table), name);
  }

  async select(address: string, sheet = "Readings"): Promise<void> {
    await this.page.evaluate(([name, at]) => globalThis.greybody!.select(name!, at!), [sheet, address]);
    await this.page.waitForTimeout(60);
  }

  /** Types into a cell as a person does: select, type, Enter. */
  async type(address: string, text: string, sheet = "Readings"): Promise<void> {
    await this.select(address, sheet);
    await this.page.keyboard.type(text);
    await this.page.keyboard.press("Enter");
    await this.settled();
  }

  async press(...keys: string[]): Promise<void> {
    for (const key of keys) await this.page.keyboard.press(key);
    await this.settled();
  }

  async paste(address: string, text: string, sheet = "Readings"): Promise<void> {
    await this.select(address, sheet);
    await this.page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
    await this.page.keyboard.press("Control+v");
    await this.page.waitForTimeout(200);
    await this.settled();
  }

  status(): Promise<string> {
    return this.page.locator(".gb-status").innerText();
  }

  /** Where a cell of the shown sheet is in the window: its middle. */
  async middle(address: string): Promise<{ x: number; y: number }> {
    const box = await this.page.evaluate((at) => globalThis.greybody!.box(at), address);
    if (box === undefined) throw new Error(`${address} is not painted.`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  /** An entry of the menu that a row's number opens. */
  async rowMenu(row: number, entry: string): Promise<void> {
    await this.select(`A${row}`);
    const { y } = await this.middle(`A${row}`);
    const grid = await this.page.locator("canvas[id*=sheet-main]").boundingBox();
    await this.page.mouse.click((grid?.x ?? 0) + 20, y, { button: "right" });
    const item = this.page.getByText(entry).first();
    await item.waitFor();
    let box = await item.boundingBox();
    // The menu opens with a movement: a click before its end would fall beside the entry.
    for (let before = ""; before !== JSON.stringify(box); box = await item.boundingBox()) {
      before = JSON.stringify(box);
      await this.page.waitForTimeout(80);
    }
    // Its end: some entries have a number to type in their middle.
    await this.page.mouse.click((box?.x ?? 0) + (box?.width ?? 0) - 8, (box?.y ?? 0) + (box?.height ?? 0) / 2);
    await this.page.waitForTimeout(100);
    await this.page.keyboard.press("Escape");
    await this.settled();
  }
}
