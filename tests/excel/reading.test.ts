import type { Cell } from "../../src/functions/contract.js";
import { KeptMessages } from "../../src/host/excel/messages.js";
import { goTo, onSelection, Reading } from "../../src/host/excel/reading.js";
import { FakeWorkbook, type FakeSheet } from "../support/fake-workbook.js";

const error = (message: string): Cell => ({ error: "#VALUE!", message });
const spill = "=GREY.CORRECTED(A3:A5,0.9,22)";

/** A3:A5 readings, B3 a spill over three rows, C3 a foreign formula over it, D3 one of ours that Excel does not know. */
const route: FakeSheet = {
  name: "My route",
  row: 2,
  column: 0,
  formulas: [
    [58, spill, "=B4*2", "=_xldufd_GREY_X(1)"],
    ["", 61.4, "=GREY.RISE_AT_LOAD(12,35,100)", "=_xldudf_GREY_GRADE(1)"],
    [70, "#VALUE!", "=GREY.RADIANCE(B9)", ""],
  ],
  values: [
    [58, 61.4, "#VALUE!", "#NAME?"],
    ["", "#VALUE!", "#N/A", "#NAME?"],
    [70, "#VALUE!", "#DIV/0!", ""],
  ],
};

function open(
  row: number,
  column: number,
  sheet = route,
  blankErrors = false,
): { kept: KeptMessages; book: FakeWorkbook; reading: Reading } {
  const kept = new KeptMessages();
  kept.keep("'My route'!B3", "CORRECTED", [[61.4], [error("apparent is not given.")], [error("third row")]]);
  kept.keep("'My route'!C4", "RISE_AT_LOAD", [[{ error: "#N/A", message: "35 % load" }]]);
  const book = new FakeWorkbook([sheet, { name: "Empty", formulas: [], values: [] }], {
    sheet: sheet.name,
    row,
    column,
  });
  (globalThis as unknown as { Excel: unknown }).Excel = book.excel;
  return { kept, book, reading: new Reading(kept, blankErrors) };
}

afterAll(() => {
  delete (globalThis as { Excel?: unknown }).Excel;
});

describe("the selected cell", () => {
  test("is told with what it shows, in one wait", async () => {
    const { book, reading } = open(2, 0);
    expect(await reading.selected()).toEqual({ address: "A3", text: "58", message: undefined });
    expect(book.syncs).toBe(1);
  });

  test("is told with its message within a spill whose formula still stands, in two waits", async () => {
    const { book, reading } = open(3, 1);
    expect(await reading.selected()).toEqual({ address: "B4", text: "#VALUE!", message: "apparent is not given." });
    expect(book.syncs).toBe(2);
  });

  test("is not told what a replaced formula said", async () => {
    const formulas = route.formulas.map((row) => row.map((cell) => (cell === spill ? "=A3" : cell)));
    const { reading } = open(3, 1, { ...route, formulas });
    expect((await reading.selected()).message).toBeUndefined();
  });

  test.each([
    ["of ours without a kept message", 4, 2, /No message is kept/],
    ["of ours that Excel does not know", 3, 3, /enter the formula again/],
    ["of somebody else's", 2, 2, undefined],
  ])("with an error %s", async (_, row, column, expected) => {
    const { message } = await open(row, column).reading.selected();
    if (expected === undefined) expect(message).toBeUndefined();
    else expect(message).toMatch(expected);
  });

  test("that shows an empty text for an error has its message in a build with blank errors, else none", async () => {
    const values = route.values.map((row) => row.map((cell) => (cell === "#VALUE!" ? "" : cell)));
    const message = async (blank: boolean): Promise<string | undefined> =>
      (await open(3, 1, { ...route, values }, blank).reading.selected()).message;
    expect([await message(true), await message(false)]).toEqual(["apparent is not given.", undefined]);
  });
});

describe("the check of the sheet", () => {
  test("lists every cell in which a function of ours fails, with the reason, in two waits", async () => {
    const { book, reading } = open(2, 0);
    const { sheet, formulas, findings } = await reading.check();
    expect([sheet, formulas]).toEqual(["My route", 4]);
    expect(findings.map(({ address, error: shown, message }) => [address, shown, message])).toEqual([
      ["B4", "#VALUE!", "apparent is not given."],
      ["C4", "#N/A", "35 % load"],
      ["D4", "#NAME?", expect.stringContaining("does not know")],
      ["B5", "#VALUE!", "third row"],
      ["C5", "#DIV/0!", expect.stringContaining("No message is kept")],
    ]);
    expect(book.syncs).toBe(2);
  });

  test("reads a long sheet in parts, none larger than a web call takes", async () => {
    const rows = 10_000;
    const cells = Array.from({ length: rows }, () => [1, 2, 3, 4, 5, 6]);
    cells[rows - 1]![5] = "#VALUE!" as unknown as number;
    const formulas: unknown[][] = cells.map((row) => [...row]);
    formulas[rows - 1]![5] = "=GREY.RADIANCE(-300)";
    const { book, reading } = open(0, 0, { name: "Long", formulas, values: cells });
    const { findings } = await reading.check();
    expect(findings.map(({ address }) => address)).toEqual([`F${rows}`]);
    expect(book.syncs).toBe(1 + Math.ceil(rows / Math.floor(20_000 / 6)));
  });

  test("of an empty sheet finds nothing", async () => {
    const { reading } = open(0, 0, { name: "Empty", formulas: [], values: [] });
    expect(await reading.check()).toEqual({ sheet: "Empty", formulas: 0, findings: [] });
  });
});

test("going to a cell selects it on its sheet; a selection is heard of", async () => {
  const { book } = open(2, 0);
  await goTo({ sheet: "My route", row: 3, column: 1 });
  expect(book.selected).toBe("'My route'!B4");
  const listener = jest.fn();
  await onSelection(listener);
  book.select(3, 1);
  expect(listener).toHaveBeenCalledTimes(1);
});
