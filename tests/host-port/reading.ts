/** What every host port reads and tells. */
import { cellOf, free, near, refusal, saying, value, type Operations, type Subject } from "./subject.js";

export function readsTheBook(make: () => Promise<Subject>): void {
  let subject: Subject;
  let port: Operations;

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
        at_full: near(48),
      },
      {
        item: "panel B",
        state: "fine",
        air: 21.5,
        rise: 10,
        load: 100,
        full_load: 100,
        remark: "3-5",
        at_full: near(10),
      },
    ]);
    expect(rows[2]).toMatchObject({ state: null, full_load: null });
    expect(rows[2]!.at_full).toEqual({
      error: "#VALUE!",
      message: saying("reference_load is not given"),
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
    const { row } = await cellOf(port, "rise", 0);
    expect(await value(port.read(`D${row + 1}`))).toEqual([[12]]);
    expect(await value(port.read(`Route!$D$${row + 1}:E${row + 2}`))).toEqual([
      [12, 50],
      [10, 100],
    ]);
    expect(await value(port.read("Readings[full_load]"))).toEqual([[100], [100], [null]]);
    expect((await value(port.read("Readings[at_full]")))[1]).toEqual([near(10)]);
    expect(await port.read("Nowhere!B3")).toEqual(refusal("missing"));
    expect(await port.read("Readings[nowhere]")).toEqual(refusal("missing"));
    expect(await port.read("A:A")).toEqual(refusal("invalid"));
  });

  test("tells the selected cell with its row", async () => {
    await subject.select(await cellOf(port, "air", 1));
    expect(await value(port.selected())).toMatchObject({
      at: await cellOf(port, "air", 1),
      address: `C${(await cellOf(port, "air", 1)).row + 1}`,
      header: "air",
      unit: "°C",
      value: 21.5,
      shown: "21.5",
      formula: undefined,
      message: undefined,
      row: { table: "Readings", index: 1, record: { item: "panel B", at_full: near(10) } },
    });
  });

  test("tells why the selected cell shows an error, also within a spill", async () => {
    await subject.select(await cellOf(port, "at_full", 2));
    expect(await value(port.selected())).toMatchObject({
      header: "rise at full load",
      shown: "#VALUE!",
      message: saying("reference_load is not given"),
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
    await subject.select(await cellOf(port, "rise", 2));
    expect(await subject.heard("selection")).toBeGreaterThan(selections);
    const calculations = await subject.heard("recalculated");
    await subject.type(await cellOf(port, "full_load", 2), "160");
    await subject.settled();
    expect(await subject.heard("recalculated")).toBeGreaterThan(calculations);
    expect((await value(port.readTable("Readings"))).rows[2]!.at_full).toEqual(near(32));
  });

  test("goes to a cell on its sheet, and to none that is not there", async () => {
    const { at } = (await value(port.fields()))[0]!;
    await value(port.goTo(at));
    expect((await value(port.selected())).at).toEqual(at);
    expect((await value(port.sheets())).find(({ active }) => active)?.name).toBe("Job");
    expect(await port.goTo({ ...at, sheet: "Nowhere" })).toEqual(refusal("missing"));
  });
}
