import type { Cell, Grid } from "../../src/functions/contract.js";
import { localAddress, parseAddress } from "../../src/host/excel/address.js";
import { KeptMessages } from "../../src/host/excel/messages.js";

const error = (message: string): Cell => ({ error: "#VALUE!", message });
const bad = (message: string): Grid => [[error(message)]];
const good: Grid = [[1]];
/** The next recalculation: Excel calls its functions in a task of its own. */
const later = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

const at = (kept: KeptMessages, address: string): string | undefined => kept.at(parseAddress(address)!)?.message;

test.each([
  ["Route!B14", "Route", 13, 1],
  ["'My sheet'!AA1", "My sheet", 0, 26],
  ["'It''s'!XFD1048576", "It's", 1_048_575, 16_383],
  ["'[Book 1.xlsx]Route'!$C$3", "Route", 2, 2],
  ["Route!B2:D9", "Route", 1, 1],
  ["C5", "", 4, 2],
])("%s is a cell", (address, sheet, row, column) => {
  expect(parseAddress(address)).toEqual({ sheet, row, column });
});

test("what is no cell is none, and every column is written as it is read", () => {
  expect(["", "Route", "Route!", "B0B", "1"].map(parseAddress)).toEqual(Array(5).fill(undefined));
  for (const column of [0, 25, 26, 51, 701, 702, 16_383]) {
    const written = localAddress({ row: 6, column });
    expect([written, parseAddress(written)?.column]).toEqual([written, column]);
  }
});

test("a message is kept for its cell, the sheet's name in any case, until the function speaks again", async () => {
  const kept = new KeptMessages();
  kept.keep("Route!B2", "CORRECTED", bad("emissivity"));
  expect([at(kept, "route!B2"), at(kept, "Route!B3"), at(kept, "Job!B2")]).toEqual([
    "emissivity",
    undefined,
    undefined,
  ]);
  await later();
  kept.keep("Route!B2", "CORRECTED", bad("apparent"));
  expect(at(kept, "Route!B2")).toBe("apparent");
  await later();
  kept.keep("Route!B2", "CORRECTED", good);
  expect(at(kept, "Route!B2")).toBeUndefined();
});

test("within a spill each error cell has its own, and none is left when the spill is worked out anew", async () => {
  const kept = new KeptMessages();
  kept.keep("Route!C3", "CORRECTED", [[1], [error("second")], [error("third")]]);
  expect(["Route!C4", "Route!C5"].map((cell) => at(kept, cell))).toEqual(["second", "third"]);
  expect(kept.at(parseAddress("Route!C5")!)).toMatchObject({
    formulaAt: { sheet: "Route", row: 2, column: 2 },
    functionName: "CORRECTED",
  });
  await later();
  kept.keep("Route!C3", "CORRECTED", [[1], [2], [error("still third")]]);
  expect(["Route!C4", "Route!C5"].map((cell) => at(kept, cell))).toEqual([undefined, "still third"]);
});

test("a formula that keeps the error and not its place tells the first", () => {
  const kept = new KeptMessages();
  kept.keep("Route!A1", "CORRECTED", [[1], [error("second")], [error("third")]]);
  expect(at(kept, "Route!A1")).toBe("second");
});

test("a function that stands twice in a formula does not silence itself", () => {
  const kept = new KeptMessages();
  kept.keep("Route!A1", "CORRECTED", bad("the first"));
  kept.keep("Route!A1", "CORRECTED", good);
  expect(at(kept, "Route!A1")).toBe("the first");
});

test("an error that only passes through leaves the inner function's message", async () => {
  const kept = new KeptMessages();
  kept.keep("Route!A1", "APPARENT", bad("why"));
  await later();
  kept.keep("Route!A1", "CORRECTED", [[{ error: "#VALUE!", message: "" }]]);
  expect(kept.at(parseAddress("Route!A1")!)).toMatchObject({ message: "why", functionName: "APPARENT" });
});

test("past the limit the oldest go, and the newest stays whatever its size", async () => {
  const kept = new KeptMessages(3);
  kept.keep("Route!A1", "CORRECTED", bad("one"));
  kept.keep("Route!B1", "CORRECTED", [[error("two")], [error("three")]]);
  kept.keep("Route!C1", "CORRECTED", bad("four"));
  expect(["A1", "B1", "B2", "C1"].map((cell) => at(kept, `Route!${cell}`))).toEqual([
    undefined,
    "two",
    "three",
    "four",
  ]);
  await later();
  kept.keep("Route!D1", "CORRECTED", [[error("a")], [error("b")], [error("c")], [error("d")]]);
  expect(["B1", "C1", "D4"].map((cell) => at(kept, `Route!${cell}`))).toEqual([undefined, undefined, "d"]);
});

test("listeners hear once of a recalculation", async () => {
  const kept = new KeptMessages();
  const listener = jest.fn();
  kept.onChange(listener);
  for (let row = 1; row < 100; row++) kept.keep(`Route!A${row}`, "CORRECTED", bad("no"));
  expect(listener).not.toHaveBeenCalled();
  await later();
  expect(listener).toHaveBeenCalledTimes(1);
});
