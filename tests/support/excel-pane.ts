import { readFileSync } from "node:fs";
import path from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import ts from "typescript";
import { serve, type Serving } from "../../src/cli/serve.js";
import { launchBrowser } from "./browser.js";
import type { FakeSheet, FakeWorkbook } from "./fake-workbook.js";
import { root } from "./run.js";

interface StandIn {
  readonly book: FakeWorkbook;
  readonly functions: Map<string, (...args: unknown[]) => unknown>;
  readonly actions: Map<string, (event: { completed: () => void }) => void>;
  /** How often the ribbon was told that its command is done. */
  completed: number;
  /** Ground of Office's panes, "none" where it does not tell; by the system's where absent. */
  ground?: string;
}

declare global {
  // What plays Office, as it stands in the browser.
  var standIn: StandIn;
}

/** Plays Office in the page: as much of it as the pane asks for, over the fake workbook. */
function playOffice(book: FakeWorkbook): void {
  const standIn: StandIn = { book, functions: new Map(), actions: new Map(), completed: 0 };
  class ExcelError extends Error {
    constructor(
      readonly code: string,
      message: string,
    ) {
      super(message);
    }
  }
  Object.assign(globalThis, {
    standIn,
    Excel: book.excel,
    CustomFunctions: {
      associate: (id: string, run: (...args: unknown[]) => unknown) => standIn.functions.set(id, run),
      Error: ExcelError,
    },
    Office: {
      HostType: { Excel: "Excel" },
      context: {
        // Office's own dark ground where the system is dark, as most Excels have it, unless a test sets another.
        get officeTheme() {
          if (standIn.ground === "none") return undefined;
          const dark = matchMedia("(prefers-color-scheme: dark)").matches;
          return { bodyBackgroundColor: standIn.ground ?? (dark ? "#1f1f1f" : "#ffffff") };
        },
      },
      onReady: () => Promise.resolve({ host: "Excel" }),
      addin: { showAsTaskpane: () => Promise.resolve() },
      actions: {
        associate: (name: string, run: (event: { completed: () => void }) => void) => standIn.actions.set(name, run),
      },
    },
  });
}

/** The built pane in a browser, served as any host would, with what went wrong in it. */
export class ExcelPane {
  private constructor(
    readonly page: Page,
    /** Requests to another origin than the pane's and Office's, violations of the policy, uncaught errors. */
    readonly faults: readonly string[],
    private readonly browser: Browser,
    private readonly serving: Serving,
  ) {}

  /** @param sheet played in front; without one there is no Office, as in a plain browser without a network */
  static async open(
    sheet: FakeSheet | undefined,
    options: BrowserContextOptions = {},
    file = "pane.html",
    folder = path.join(root, "dist/excel"),
  ): Promise<ExcelPane> {
    const serving = await serve({ port: 0, root: folder, headers: {} });
    const browser = await launchBrowser();
    const page = await (await browser.newContext({ viewport: { width: 350, height: 800 }, ...options })).newPage();
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(`error: ${error.message}`));
    page.on("request", (request) => {
      if (!request.url().startsWith(serving.address)) faults.push(`request: ${request.url()}`);
    });
    await page.exposeFunction("reportFault", (fault: string) => faults.push(fault));
    await page.addInitScript(() => {
      document.addEventListener("securitypolicyviolation", (event) => {
        globalThis.reportFault(`policy: ${event.violatedDirective} ${event.blockedURI}`);
      });
    });
    await page.route("https://appsforoffice.microsoft.com/**", (route) =>
      sheet === undefined ? route.abort() : route.fulfill({ contentType: "text/javascript", body: standInFor(sheet) }),
    );
    await page.goto(serving.address + file);
    return new ExcelPane(page, faults, browser, serving);
  }

  /** Goes to one of the pane's ways by its tab. */
  async way(name: string): Promise<void> {
    await this.page.getByRole("tab", { name }).click();
  }

  /** Calls a function as Excel does from a cell; what it throws is the cell's. */
  async call(address: string, name: string, ...args: unknown[]): Promise<void> {
    await this.page.evaluate(
      ([at, id, given]) => {
        try {
          globalThis.standIn.functions.get(id)?.(...given, { address: at, functionName: id });
        } catch {
          // Excel shows it.
        }
      },
      [address, name, args] as const,
    );
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.serving.close();
  }
}

/** A script for the browser: the fake workbook with this sheet, and what plays Office over it. */
function standInFor(sheet: FakeSheet): string {
  const { outputText } = ts.transpileModule(readFileSync(path.join(__dirname, "fake-workbook.ts"), "utf8"), {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ES2022 },
  });
  const active = { sheet: sheet.name, row: sheet.row ?? 0, column: sheet.column ?? 0 };
  return `(() => { ${outputText.replaceAll(/^export /gm, "")}
    (${playOffice.toString()})(new FakeWorkbook([${JSON.stringify(sheet)}], ${JSON.stringify(active)}));
  })();`;
}
