/** What every host port does, run against each: the page in a browser, and Excel as far as a fake can be Excel. */
import type { CellAt, HostPort, Result } from "../../src/host/port.js";
import { broken, fahrenheit } from "./books.js";

/** A port with the book `metric` open in it, and what a person can do beside it. */
export interface Subject {
  readonly port: Operations;
  /** Selects a cell of a sheet, as a person does. */
  select(at: CellAt): Promise<void>;
  type(at: CellAt, text: string): Promise<void>;
  /** Until nothing is being calculated. */
  settled(): Promise<void>;
  /** How often a subscription was told since the subject was made. */
  heard(event: "selection" | "recalculated"): Promise<number>;
  close(): Promise<void>;
}

export type Operations = Pick<
  HostPort,
  | "host"
  | "newBookIs"
  | "canUndo"
  | "sheets"
  | "tables"
  | "readTable"
  | "fields"
  | "read"
  | "selected"
  | "units"
  | "folded"
  | "goTo"
  | "makeBook"
  | "insertFormula"
  | "fold"
  | "enterAgain"
  | "undo"
>;

async function value<T>(result: Promise<Result<T>>): Promise<T> {
  const answer = await result;
  if (!answer.ok) throw new Error(`${answer.reason}: ${answer.message}`);
  return answer.value;
}

const refusal = (reason: string) => ({ ok: false, reason, message: expect.stringMatching(/^\S[\s\S]*\.$/) });

export function holdsThePort(name: string, make: () => Promise<Subject>): void {
  describe(name, () => {
    let subject: Subject;
    let port: Operations;
    /** Where a column's cell in the n-th row of the table is; rows differ between hosts. */
    const cellOf = async (key: string, row: number): Promise<CellAt> => {
      const table = (await value(port.tables())).find((one) => one.name === "Readings")!;
      return {
        sheet: table.sheet,
        row: table.firstRow + row,
        column: table.columns.find((column) => column.key === key)!.column,
      };
    };
    const free: CellAt = { sheet: "Route", row: 30, column: 12 };

    beforeEach(async () => {
      subject = await make();
      port = subject.port;
    });
    afterEach(() => subject.close());

    test("tells sheets, tables, columns and units", async () => {
      expect(await value(port.sheets())).toEqual([
        { name: "Route", active: true, tables: ["Readings"] },
        { name: "Job", active: false, tables: [] },
        { name: "Cautions", active: false, tables: [] },
      ]);
      const [table] = await value(port.tables());
      expect(table).toMatchObject({ name: "Readings", sheet: "Route", units: "C" });
      expect(table!.lastRow - table!.firstRow).toBe(2);
      expect(table!.columns.map(({ key, header, unit, computed }) => [key, header, unit, computed])).toEqual([
        ["item", "item", undefined, false],
        ["state", "state", undefined, false],
        ["air", "air", "°C", false],
        ["rise", "rise", "K", false],
        ["load", "load", "A", false],
        ["full_load", "full_load", "A", false],
        ["remark", "remark", undefined, false],
        ["at_full", "rise at full load", "K", true],
      ]);
      expect(table!.columns[1]).toMatchObject({ choices: ["fine", "exception"], group: "Where" });
      expect(table!.columns[6]).toMatchObject({ folded: true });
      expect(await value(port.units())).toBe("C");
    });

    test("reads a table as records, with what is worked out and why it is not", async () => {
      const { table, rows } = await value(port.readTable("readings"));
      expect(table.name).toBe("Readings");
      expect(rows.slice(0, 2)).toEqual([
        {
          item: "panel A",
          state: "exception",
          air: 21,
          rise: 12,
          load: 50,
          full_load: 100,
          remark: null,
          at_full: expect.closeTo(48, 9),
        },
        {
          item: "panel B",
          state: "fine",
          air: 21.5,
          rise: 10,
          load: 100,
          full_load: 100,
          remark: "3-5",
          at_full: expect.closeTo(10, 9),
        },
      ]);
      expect(rows[2]).toMatchObject({ state: null, full_load: null });
      expect(rows[2]!.at_full).toEqual({
        error: "#VALUE!",
        message: expect.stringContaining("reference_load is not given"),
      });
      expect(await port.readTable("Nothing")).toEqual(refusal("missing"));
    });

    test("tells the named values of forms", async () => {
      const fields = await value(port.fields());
      expect(fields.map((field) => [field.name, field.label, field.value])).toEqual([
        ["job_exponent", "Exponent", 2],
        ["job_band", "Band", "7.5-14"],
        ["job_client", "Client", null],
      ]);
      await subject.select(fields[1]!.at);
      expect(await value(port.selected())).toMatchObject({
        header: "Band",
        unit: "µm",
        value: "7.5-14",
        row: undefined,
      });
    });

    test("reads cells, ranges and columns by reference", async () => {
      const { row } = await cellOf("rise", 0);
      expect(await value(port.read(`D${row + 1}`))).toEqual([[12]]);
      expect(await value(port.read(`Route!$D$${row + 1}:E${row + 2}`))).toEqual([
        [12, 50],
        [10, 100],
      ]);
      expect(await value(port.read("Readings[full_load]"))).toEqual([[100], [100], [null]]);
      expect((await value(port.read("Readings[at_full]")))[1]).toEqual([expect.closeTo(10, 9)]);
      expect(await port.read("Nowhere!B3")).toEqual(refusal("missing"));
      expect(await port.read("Readings[nowhere]")).toEqual(refusal("missing"));
      expect(await port.read("A:A")).toEqual(refusal("invalid"));
    });

    test("tells the selected cell with its row", async () => {
      await subject.select(await cellOf("air", 1));
      expect(await value(port.selected())).toMatchObject({
        at: await cellOf("air", 1),
        address: `C${(await cellOf("air", 1)).row + 1}`,
        header: "air",
        unit: "°C",
        value: 21.5,
        shown: "21.5",
        formula: undefined,
        message: undefined,
        row: { table: "Readings", index: 1, record: { item: "panel B", at_full: expect.closeTo(10, 9) } },
      });
    });

    test("tells why the selected cell shows an error, also within a spill", async () => {
      await subject.select(await cellOf("at_full", 2));
      expect(await value(port.selected())).toMatchObject({
        header: "rise at full load",
        shown: "#VALUE!",
        message: expect.stringContaining("reference_load is not given"),
        row: { index: 2 },
      });
    });

    test("tells nothing of a cell beside everything", async () => {
      await subject.select(free);
      expect(await value(port.selected())).toEqual({
        at: free,
        address: "M31",
        header: undefined,
        unit: undefined,
        value: null,
        shown: "",
        formula: undefined,
        message: undefined,
        row: undefined,
      });
    });

    test("is heard of when a cell is selected and when values change", async () => {
      const selections = await subject.heard("selection");
      await subject.select(await cellOf("rise", 2));
      expect(await subject.heard("selection")).toBeGreaterThan(selections);
      const calculations = await subject.heard("recalculated");
      await subject.type(await cellOf("full_load", 2), "160");
      await subject.settled();
      expect(await subject.heard("recalculated")).toBeGreaterThan(calculations);
      expect((await value(port.readTable("Readings"))).rows[2]!.at_full).toEqual(expect.closeTo(32, 9));
    });

    test("goes to a cell on its sheet, and to none that is not there", async () => {
      const { at } = (await value(port.fields()))[0]!;
      await value(port.goTo(at));
      expect((await value(port.selected())).at).toEqual(at);
      expect((await value(port.sheets())).find(({ active }) => active)?.name).toBe("Job");
      expect(await port.goTo({ ...at, sheet: "Nowhere" })).toEqual(refusal("missing"));
    });

    test("inserts a formula into the selected cell, over nothing unless told", async () => {
      await subject.select(free);
      expect(await value(port.insertFormula("=GREY.RISE_AT_LOAD(12,50,100,2)"))).toEqual(free);
      await subject.settled();
      expect(await value(port.selected())).toMatchObject({
        value: expect.closeTo(48, 9),
        formula: "=GREY.RISE_AT_LOAD(12,50,100,2)",
      });
      await subject.select(free);
      expect(await port.insertFormula("=GREY.RISE_AT_LOAD(12,50,100,1)")).toEqual(refusal("occupied"));
      await value(port.insertFormula("=GREY.RISE_AT_LOAD(12,50,100,1)", { overwrite: true }));
      await subject.settled();
      expect((await value(port.selected())).value).toEqual(expect.closeTo(24, 9));
    });

    test("inserts nothing that is no formula, and nothing where the sheet works it out", async () => {
      await subject.select(free);
      expect(await port.insertFormula("12")).toEqual(refusal("invalid"));
      expect(await port.insertFormula("=GREY.RISE_AT_LOAD((12,50")).toEqual(refusal("invalid"));
      await subject.select(await cellOf("at_full", 1));
      expect(await port.insertFormula("=GREY.RISE_AT_LOAD(1,1,1)", { overwrite: true })).toEqual(refusal("locked"));
      expect((await value(port.readTable("Readings"))).rows[1]!.at_full).toEqual(expect.closeTo(10, 9));
    });

    test("takes an inserted formula back in one step, or says that it cannot", async () => {
      await subject.select(free);
      await value(port.insertFormula("=GREY.RISE_AT_LOAD(12,50,100,2)"));
      await subject.settled();
      const undone = await port.undo();
      await subject.settled();
      if (!port.canUndo) {
        expect(undone).toEqual(refusal("unable"));
        return;
      }
      expect(undone.ok).toBe(true);
      expect(await value(port.read("M31"))).toEqual([[null]]);
    });

    test("shows and hides the folded columns", async () => {
      expect(await value(port.folded())).toEqual({ sheet: "Route", headers: ["remark"], hidden: true });
      await value(port.fold(false));
      expect((await value(port.folded())).hidden).toBe(false);
      await value(port.fold(true));
      expect((await value(port.folded())).hidden).toBe(true);
      await value(port.goTo({ sheet: "Job", row: 0, column: 0 }));
      expect(await value(port.folded())).toEqual({ sheet: "Job", headers: [], hidden: false });
      expect(await port.fold(true)).toEqual(refusal("missing"));
    });

    test("enters the formulas again, ours alone, and nothing changes by it", async () => {
      const before = await value(port.readTable("Readings"));
      expect(await value(port.enterAgain())).toBe(1);
      await subject.settled();
      expect(await value(port.readTable("Readings"))).toEqual(before);
    });

    test("makes a book from its description", async () => {
      const made = await value(port.makeBook(fahrenheit));
      await subject.settled();
      expect(made.sheets).toEqual(["Second route"]);
      const sheets = await value(port.sheets());
      expect(sheets.find(({ active }) => active)).toEqual({
        name: "Second route",
        active: true,
        tables: ["OtherReadings"],
      });
      expect(sheets.some((sheet) => sheet.name === "Route")).toBe(port.newBookIs === "added");
      expect(await value(port.units())).toBe("F");
      const { rows, table } = await value(port.readTable("OtherReadings"));
      expect(rows).toEqual([expect.objectContaining({ item: "panel D", air: 70, at_full: expect.closeTo(20, 9) })]);
      await subject.type({ sheet: "Second route", row: table.firstRow, column: 3 }, "6");
      await subject.settled();
      expect((await value(port.readTable("OtherReadings"))).rows[0]!.at_full).toEqual(expect.closeTo(24, 9));
    });

    test("makes nothing of a description with a hole in it", async () => {
      expect(await port.makeBook(broken)).toEqual(refusal("invalid"));
      expect((await value(port.sheets())).map((sheet) => sheet.name)).toEqual(["Route", "Job", "Cautions"]);
      expect((await value(port.readTable("Readings"))).rows[1]!.at_full).toEqual(expect.closeTo(10, 9));
    });
  });
}
