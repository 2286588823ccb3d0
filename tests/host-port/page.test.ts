/** The port that the page carries, in a browser. */
import type { CellAt, HostPort, Result } from "../../src/host/port.js";
import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";
import { metric } from "./books.js";
import { holdsThePort } from "./contract.js";
import type { Operations, Subject } from "./subject.js";

declare global {
  var heardOf: Record<"selection" | "recalculated", number> | undefined;
}

type Method = Exclude<keyof Operations, "host" | "newBookIs" | "canUndo">;

describeInBrowser("The host port in the page", () => {
  let open: OpenPage;
  beforeAll(async () => {
    open = await (await OpenPage.open("small")).ready();
  });
  afterAll(async () => {
    await open.close();
    expect(open.faults).toEqual([]);
  });

  /** Each test has its own book, opened through the port in place of the last. */
  const make = async (): Promise<Subject> => {
    await call("makeBook", metric);
    await open.settled();
    await open.page.evaluate(() => {
      const heard = { selection: 0, recalculated: 0 };
      globalThis.heardOf = heard;
      globalThis.greybody!.port.onSelection(() => heard.selection++);
      globalThis.greybody!.port.onRecalculated(() => heard.recalculated++);
    });
    return {
      port,
      select: ({ sheet, row, column }) => open.select(address(row, column), sheet),
      type: ({ sheet, row, column }, text) => open.type(address(row, column), text, sheet),
      settled: () => open.settled(),
      heard: (event) => open.page.evaluate((name) => globalThis.heardOf![name], event),
      close: () => Promise.resolve(),
    };
  };

  async function call(method: Method, ...args: unknown[]): Promise<Result<never>> {
    // What is undefined in an object does not survive the way out of the browser by itself.
    return open.page.evaluate(
      async ([name, given]) => {
        const operation = globalThis.greybody!.port[name as "sheets"] as (...all: unknown[]) => Promise<unknown>;
        return (await operation(...given)) as never;
      },
      [method, args] as [string, unknown[]],
    );
  }

  const methods = [
    "sheets",
    "tables",
    "readTable",
    "fields",
    "read",
    "selected",
    "units",
    "folded",
    "goTo",
    "makeBook",
    "insertFormula",
    "fold",
    "enterAgain",
    "undo",
  ] as const satisfies readonly Method[];
  const port = {
    host: "page",
    newBookIs: "replaced",
    canUndo: true,
    ...Object.fromEntries(methods.map((method) => [method, (...args: unknown[]) => call(method, ...args)])),
  } as unknown as Operations & Pick<HostPort, "host">;

  holdsThePort("the page", make);

  test("the page says of itself what the tests take it for", async () => {
    const said = await open.page.evaluate(() => {
      const { host, newBookIs, canUndo } = globalThis.greybody!.port;
      return { host, newBookIs, canUndo, theme: globalThis.greybody!.port.theme() };
    });
    expect(said).toEqual({ host: "page", newBookIs: "replaced", canUndo: true, theme: "light" });
  });
});

function address(row: CellAt["row"], column: number): string {
  return `${String.fromCharCode(65 + column)}${row + 1}`;
}
