/** What every host port changes. */
import { broken, fahrenheit, loose } from "./books.js";
import { cellOf, free, near, refusal, value, type Operations, type Subject } from "./subject.js";

export function changesTheBook(make: () => Promise<Subject>): void {
  let subject: Subject;
  let port: Operations;

  beforeEach(async () => {
    subject = await make();
    port = subject.port;
  });
  afterEach(() => subject.close());

  test("inserts a formula into the selected cell, over nothing unless told", async () => {
    await subject.select(free);
    expect(await value(port.insertFormula("=GREY.RISE_AT_LOAD(12,50,100,2)"))).toEqual(free);
    await subject.settled();
    expect(await value(port.selected())).toMatchObject({
      value: near(48),
      formula: "=GREY.RISE_AT_LOAD(12,50,100,2)",
    });
    await subject.select(free);
    expect(await port.insertFormula("=GREY.RISE_AT_LOAD(12,50,100,1)")).toEqual(refusal("occupied"));
    await value(port.insertFormula("=GREY.RISE_AT_LOAD(12,50,100,1)", { overwrite: true }));
    await subject.settled();
    expect((await value(port.selected())).value).toEqual(near(24));
  });

  test("inserts nothing that is no formula, and nothing where the sheet works it out", async () => {
    await subject.select(free);
    expect(await port.insertFormula("12")).toEqual(refusal("invalid"));
    expect(await port.insertFormula("=GREY.RISE_AT_LOAD((12,50")).toEqual(refusal("invalid"));
    await subject.select(await cellOf(port, "at_full", 1));
    expect(await port.insertFormula("=GREY.RISE_AT_LOAD(1,1,1)", { overwrite: true })).toEqual(refusal("locked"));
    expect((await value(port.readTable("Readings"))).rows[1]!.at_full).toEqual(near(10));
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
    expect(rows).toEqual([expect.objectContaining({ item: "panel D", air: 70, at_full: near(20) })]);
    await subject.type({ sheet: "Second route", row: table.firstRow, column: 3 }, "6");
    await subject.settled();
    expect((await value(port.readTable("OtherReadings"))).rows[0]!.at_full).toEqual(near(24));
  });

  test("makes a free sheet: its named cells are fields, its block takes what is typed, its formula follows", async () => {
    const made = await value(port.makeBook(loose));
    await subject.settled();
    expect(made.sheets).toEqual(["Findings"]);
    const fields = (await value(port.fields())).filter(({ at }) => at.sheet === "Findings");
    // Heading: two lines and an empty one. (21.5/50)² of 12 K.
    expect(fields).toEqual([
      { name: "findings_air", label: "Air", value: 21.5, at: { sheet: "Findings", row: 3, column: 1 } },
      { name: "findings_words", label: "", value: "All of it", at: { sheet: "Findings", row: 4, column: 0 } },
      { name: "findings_rise", label: "Rise", value: near(2.2188), at: { sheet: "Findings", row: 9, column: 1 } },
    ]);
    await subject.type(fields[0]!.at, "100");
    await subject.type({ sheet: "Findings", row: 7, column: 1 }, "7");
    await subject.settled();
    expect(await value(port.read("Findings!A7:B8"))).toEqual([
      [null, null],
      [null, 7],
    ]);
    expect(await value(port.read("Findings!B10"))).toEqual([[near(48)]]);
    await value(port.goTo(fields[0]!.at));
    expect(await value(port.selected())).toMatchObject({ header: "Air", unit: "°C", value: 100 });
  });

  test("makes nothing of a description with a hole in it", async () => {
    expect(await port.makeBook(broken)).toEqual(refusal("invalid"));
    expect((await value(port.sheets())).map((sheet) => sheet.name)).toEqual(["Route", "Job", "Cautions"]);
    expect((await value(port.readTable("Readings"))).rows[1]!.at_full).toEqual(near(10));
  });
}
