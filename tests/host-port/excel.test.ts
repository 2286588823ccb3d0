/** The port that Excel carries, over a fake that is as strict as Excel is about loading, and counts the syncs. */
import type { HostPort } from "../../src/host/port.js";
import { excelHost } from "../../src/host/excel/host.js";
import { findingsOf } from "../../src/pane/check/findings.js";
import { look } from "../../src/pane/look/points.js";
import { newRoute } from "../../src/templates/new.js";
import { demoRoute } from "../../src/templates/route/demo/route.js";
import { KeptMessages } from "../../src/host/excel/messages.js";
import { Queue } from "../support/excel-fake/client.js";
import { BookModel } from "../support/excel-fake/model.js";
import { workbook, type Events } from "../support/excel-fake/workbook.js";
import { metric } from "./books.js";
import { holdsThePort } from "./contract.js";
import { value, type Operations, type Subject } from "./subject.js";

/** Waits that an operation may cost, over three sheets; on the web each is a way to the server and back. */
const mostSyncs: Readonly<Record<string, number>> = {
  sheets: 1,
  tables: 2,
  readTable: 3,
  fields: 3,
  read: 3,
  selected: 2,
  units: 2,
  folded: 3,
  goTo: 3,
  makeBook: 3,
  insertFormula: 3,
  fold: 4,
  // Names, used parts, one for each sheet, spills, writing.
  enterAgain: 4 + 4,
  undo: 0,
};

function open() {
  const kept = new KeptMessages();
  const model = new BookModel(kept);
  const events: Events = { selection: new Set(), activated: new Set(), calculated: new Set() };
  const tell = (name: keyof Events): void => {
    for (const listener of events[name]) listener();
  };
  let syncs = 0;
  (globalThis as unknown as { Excel: unknown }).Excel = {
    run: async (work: (context: unknown) => Promise<unknown>) => {
      const queue = new Queue();
      try {
        return await work({
          workbook: workbook(queue, model, events, () => {
            tell("calculated");
          }),
          sync: () => queue.sync(),
        });
      } finally {
        syncs = queue.syncs;
      }
    },
  };
  return { model, port: excelHost(kept, false), tell, syncs: () => syncs };
}

/** The operations, each held to its number of syncs. */
function counted(port: HostPort, syncs: () => number): Operations {
  const operations = Object.entries(mostSyncs).map(([name, most]) => {
    const operation = port[name as "sheets"] as (...given: unknown[]) => Promise<unknown>;
    return [
      name,
      async (...given: unknown[]) => {
        const result = await operation(...given);
        if (name !== "undo") expect([name, Math.max(syncs(), most)]).toEqual([name, most]);
        return result;
      },
    ] as const;
  });
  const { host, newBookIs, canUndo } = port;
  return { host, newBookIs, canUndo, ...Object.fromEntries(operations) } as unknown as Operations;
}

async function make(): Promise<Subject> {
  const { model, port, tell, syncs } = open();
  expect(await port.makeBook(metric)).toMatchObject({ ok: true });
  // The sheet that a new workbook begins with.
  model.sheets.shift();
  const heard = { selection: 0, recalculated: 0 };
  port.onSelection(() => heard.selection++);
  port.onRecalculated(() => heard.recalculated++);
  await Promise.resolve();
  return {
    port: counted(port, syncs),
    select: ({ sheet, row, column }) => {
      model.active = { sheet: model.sheet(sheet)!, row, column };
      tell("selection");
      return Promise.resolve();
    },
    type: ({ sheet, row, column }, text) => {
      model.sheet(sheet)!.enter(row, column, text);
      model.recalculate();
      tell("calculated");
      return Promise.resolve();
    },
    settled: () => Promise.resolve(),
    heard: (event) => Promise.resolve(heard[event]),
    close: () => {
      delete (globalThis as { Excel?: unknown }).Excel;
      return Promise.resolve();
    },
  };
}

holdsThePort("Excel", make);

describe("Excel alone", () => {
  test("refuses a second book of the same tables before anything is made", async () => {
    const { model, port } = open();
    await port.makeBook(metric);
    const sheets = model.sheets.map(({ name }) => name);
    expect(await port.makeBook(metric)).toMatchObject({
      ok: false,
      reason: "occupied",
      message: expect.stringMatching(
        /holds such sheets already \(its Readings\).*new workbook.*nothing was changed/,
      ) as unknown,
    });
    expect(model.sheets.map(({ name }) => name)).toEqual(sheets);
  });

  test.each([
    ["demo route", demoRoute()],
    [
      "mechanical route",
      newRoute({ kind: "mechanical", title: "Pumps", units: "F", rows: 50, criteria: "house-mechanical" }),
    ],
  ])(
    "takes the %s: every column that its formulas name is found, none is left in a description's form",
    async (_, book) => {
      const { model, port, syncs } = open();
      expect(await port.makeBook(book)).toMatchObject({ ok: true });
      expect(syncs()).toBeLessThanOrEqual(mostSyncs.makeBook!);
      const formulas = model.sheets
        .flatMap(({ inputs }) => [...inputs.values()])
        .filter((input): input is string => typeof input === "string" && input.startsWith("="));
      expect(formulas.length).toBeGreaterThan(40);
      const described = (formula: string): boolean => /(?<![\w\]])\[/.test(formula.replaceAll(/"[^"]*"/g, ""));
      expect(formulas.filter(described)).toEqual([]);
      // Where a computed column names another: the other's spill, on its own sheet.
      // The lines above a table stand beside its frozen column, which would cut them once scrolled.
      const { inputs } = model.sheet("Route")!;
      expect([0, 1, 2].map((row) => inputs.has(`${row},0`))).toEqual([false, false, false]);
      expect([0, 1, 2].map((row) => inputs.has(`${row},1`))).toEqual([true, true, true]);
      expect(formulas.some((formula) => /'Route'!\$[A-Z]+\$\d+#/.test(formula))).toBe(true);
    },
  );

  test("a new route in °F: made, filled, read for Check and Look, gone to, within its syncs", async () => {
    const { model, port: plain, syncs, tell } = open();
    const port = counted(plain, syncs);
    await port.makeBook(
      newRoute({ kind: "electrical", title: "Route", units: "F", rows: 50, criteria: "NETA-100.18" }),
    );
    model.sheets.shift();
    const [table] = await value(port.tables());
    expect([table!.name, table!.units, table!.lastRow - table!.firstRow + 1]).toEqual(["Readings", "F", 50]);
    const column = (key: string): number => table!.columns.find((one) => one.key === key)!.column;
    for (let row = 0; row < 50; row++) {
      model.sheet("Route")!.enter(table!.firstRow + row, column("asset_id"), `Q${row}`);
      model.sheet("Route")!.enter(table!.firstRow + row, column("left"), String(100 + row));
    }
    model.recalculate();
    tell("calculated");
    const route = await value(port.readTable("Readings"));
    expect(route.rows.map(({ asset_id, left }) => [asset_id, left])).toEqual(
      Array.from({ length: 50 }, (_, row) => [`Q${row}`, 100 + row]),
    );
    const fields = await value(port.fields());
    expect(fields.find(({ name }) => name === "job_criteria")?.value).toBe("NETA-100.18");
    // What Check and Look read of it; the fake works no long formula out, and says so in the place of findings.
    expect(findingsOf(route, fields).map(({ what }) => what)).toContain("Not worked out by the fake");
    expect(look(route).points).toEqual([]);
    await value(port.goTo({ sheet: "Route", row: table!.firstRow + 7, column: column("left") }));
    expect(await value(port.selected())).toMatchObject({ header: "left", unit: "°F", value: 107, row: { index: 7 } });
  });

  test("gives a sheet another name where its own is taken", async () => {
    const { port } = open();
    const renamed = { ...metric, sheets: metric.sheets.map((sheet) => ({ ...sheet, name: "Sheet1" })) };
    expect(await port.makeBook(renamed)).toEqual({
      ok: true,
      value: { sheets: ["Sheet1 2", "Sheet1 3", "Sheet1 4"] },
    });
  });

  test("enters the names of a file as they are typed, and a spill only where it begins", async () => {
    const { model, port } = open();
    await port.makeBook(metric);
    const sheet = model.sheet("Route")!;
    const [anchor] = [...sheet.inputs].find(([, input]) => String(input).startsWith("=GREY.RISE_AT_LOAD"))!;
    sheet.inputs.set(
      anchor,
      String(sheet.inputs.get(anchor)).replace("GREY.RISE_AT_LOAD", "_xldudf_GREY_RISE_AT_LOAD"),
    );
    expect(await port.enterAgain()).toEqual({ ok: true, value: 1 });
    expect(sheet.inputs.get(anchor)).toMatch(/^=GREY\.RISE_AT_LOAD\(Readings\[rise\],/);
  });

  test.each([
    ["InvalidOperationInCellEditMode", "busy"],
    ["AccessDenied", "locked"],
    ["ApiNotFound", "unable"],
    ["SomethingNew", "failed"],
  ])("makes a sentence of %s", async (code, reason) => {
    (globalThis as unknown as { Excel: unknown }).Excel = {
      run: () => Promise.reject(Object.assign(new Error("its own words"), { code })),
    };
    expect(await excelHost(new KeptMessages(), false).selected()).toMatchObject({
      ok: false,
      reason,
      message: expect.stringMatching(/^[A-Z].*\.$/) as unknown,
    });
  });
});
