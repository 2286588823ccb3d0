/** The order of a report's slips, on rows made up for it: as stated gives 300 K, each slip what stands here. */
import type { AS_STATED, TemperatureSlipKey } from "../../../src/core/audit/explain.js";
import { judge } from "../../../src/core/audit/judge.js";
import type { Explanation } from "../../../src/core/audit/judge.js";
import { explainReport } from "../../../src/core/audit/report.js";

type Slips = Partial<Record<TemperatureSlipKey, number>>;
type Row = Explanation<TemperatureSlipKey | typeof AS_STATED>;

function row(stated: number, slips: Slips, tolerance = 0.05): Row {
  const candidates = Object.entries(slips).map(([key, gives]) => ({ key: key as TemperatureSlipKey, gives }));
  return judge<TemperatureSlipKey | typeof AS_STATED>(stated, { key: "as-stated", gives: 300 }, candidates, tolerance);
}
const times = (count: number, one: Row): Row[] => Array.from({ length: count }, () => one);
const told = (rows: readonly Row[]): (string | number)[][] =>
  explainReport(rows).map(({ key, explained, rows: shown }) => [key, explained, shown]);

test("a slip that shows in every row and explains most", () => {
  const slips = { "corrected-twice": 310, "reflected-0": 305, "emissivity-1": 296 };
  const rows = [...times(17, row(310, slips)), row(305, slips), row(296, slips), row(296, slips)];
  expect(told(rows)).toEqual([
    ["corrected-twice", 17, 20],
    ["emissivity-1", 2, 20],
    ["reflected-0", 1, 20],
    ["as-stated", 0, 20],
  ]);
});

test("rows in which a slip would not show speak neither for nor against it", () => {
  // Reflected 20 °C was stated in twelve rows; in five the settings say otherwise, three are odd.
  const rows = [
    ...times(12, row(300, { "reflected-20": 300, "start-up": 303 })),
    ...times(4, row(304, { "reflected-20": 304, "start-up": 304 })),
    row(304, { "reflected-20": 304, "start-up": 306 }),
    ...times(3, row(333, { "reflected-20": 304, "start-up": 306 })),
  ];
  expect(told(rows)).toEqual([
    ["reflected-20", 5, 8],
    // It explains four rows, but in the twelve it would show, and the settings as stated hold.
    ["as-stated", 12, 20],
    ["start-up", 4, 20],
  ]);
});

test("one row alone is no more than chance may do, unless nothing is as stated", () => {
  const hidden = row(300, { "window-left-out": 300 });
  const shows = row(310, { "window-left-out": 310, "emissivity-1": 320, "air-left-out": 330 });
  // Four lines times 0.0025, over 21 rows that it might have been: 21·0.0025·4 is above 0.05.
  const unexplained = times(20, row(340, { "window-left-out": 310 }));
  expect(told([hidden, shows, ...unexplained])).toEqual([
    ["as-stated", 1, 22],
    ["window-left-out", 1, 21],
  ]);
  expect(told([shows, ...unexplained])[0]).toEqual(["window-left-out", 1, 21]);
  // Two rows are: 210·0.0025²·4 is 0.005.
  expect(told([hidden, shows, shows, ...unexplained.slice(1)])[0]).toEqual(["window-left-out", 2, 21]);
});

test("at whole degrees chance does more: two rows of six are no wonder", () => {
  const slips = { "corrected-twice": 310, "emissivity-1": 320, "reflected-0": 290, "air-left-out": 295 };
  const rows = [row(300, {}, 0.5), ...times(2, row(310, slips, 0.5)), ...times(4, row(305, slips, 0.5))];
  // Of six rows two or more by chance 0.025: 15·0.025²·0.975⁴ + … = 0.0088, times five lines 0.044; of seven 0.06.
  expect(told(rows)[0]).toEqual(["corrected-twice", 2, 6]);
  expect(told([...rows, row(305, slips, 0.5)])[0]).toEqual(["as-stated", 1, 8]);
});

test("half and half: as stated first, the slip at once after it", () => {
  const slips = { "corrected-twice": 310, "emissivity-1": 296 };
  const rows = [...times(10, row(300, slips)), ...times(10, row(310, slips)), row(296, { "emissivity-1": 296 })];
  expect(told(rows)).toEqual([
    ["as-stated", 10, 21],
    ["corrected-twice", 10, 20],
    ["emissivity-1", 1, 21],
  ]);
});

test("of two slips that explain the same rows the one that would show in fewer others comes first", () => {
  const slips = { "air-left-out": 310, "air-and-window-left-out": 310 };
  const rows = [...times(3, row(310, slips)), ...times(2, row(333, { "air-and-window-left-out": 320 }))];
  expect(told(rows).slice(0, 2)).toEqual([
    ["air-left-out", 3, 3],
    ["air-and-window-left-out", 3, 5],
  ]);
});

test("the median of the differences, over the rows in which a line shows", () => {
  const rows = [row(310, { "corrected-twice": 310 }), row(312, { "corrected-twice": 308 }), row(313, {})];
  const medians = explainReport(rows).map(({ key, median }) => [key, median]);
  expect(medians).toEqual([
    ["corrected-twice", 2],
    ["as-stated", 12],
  ]);
});

test("no rows, no lines", () => {
  expect(explainReport([])).toEqual([]);
});

describe("digits cut off, where the last digit is known", () => {
  // As stated gives 300 K in every row; whole degrees cut off lie up to 1 K below, rounded within 0.5 K.
  const odd = { "corrected-twice": 299.3 };
  const cut = (rows: readonly Row[], step = 1): (string | number)[][] =>
    explainReport(rows, step).map(({ key, explained, rows: shown }) => [key, explained, shown]);

  test("come first where all rows fit, and count all of them", () => {
    const rows = [...times(3, row(299.3, odd, 0.5)), ...times(3, row(299.8, odd, 0.5))];
    expect(cut(rows)).toEqual([
      ["cut-off", 6, 6],
      ["as-stated", 3, 6],
      ["corrected-twice", 3, 6],
    ]);
  });

  test("are not looked for without a last digit, nor with a tolerance below half of it", () => {
    const rows = [...times(3, row(299.3, {}, 0.5)), ...times(3, row(299.8, {}, 0.5))];
    expect(told(rows)).toEqual([["as-stated", 3, 6]]);
    expect(cut(rows, 1.2)).toEqual([["as-stated", 3, 6]]);
  });

  test("are not said of rows that rounding explains, nor where rows lie above", () => {
    expect(cut(times(6, row(299.8, odd, 0.5)))).toEqual([["as-stated", 6, 6]]);
    // One below by 0.7 K, five above by 0.3 K: not cut off.
    expect(cut([row(299.3, {}, 0.5), ...times(5, row(300.3, {}, 0.5))])[0]).toEqual(["as-stated", 5, 6]);
  });

  test("stand back behind a slip that explains more", () => {
    const rows = [...times(4, row(299.3, odd, 0.5)), ...times(3, row(298.9, odd, 0.5))];
    expect(cut(rows)[0]).toEqual(["corrected-twice", 7, 7]);
  });

  test("whole steps below are not cut off", () => {
    expect(cut(times(4, row(298.9, {}, 0.5)))).toEqual([["as-stated", 0, 4]]);
  });
});

describe("by chance", () => {
  const byChance = (rows: readonly Row[]): (string | number)[][] =>
    explainReport(rows).map(({ key, byChance: chance }) => [key, Number(chance.toFixed(6))]);

  test("of a slip: any of the slips, in the rows left to explain; of as stated: itself, in all", () => {
    // Each value covers 0.1 of 40 K: three slips 0.0075 a row, in three rows that as stated does not reproduce.
    const slips = { "corrected-twice": 310, "emissivity-1": 296, "reflected-0": 305 };
    const rows = [...times(4, row(300, slips)), row(310, slips), ...times(2, row(317, slips))];
    expect(byChance(rows)).toEqual([
      ["as-stated", 0.0175],
      ["corrected-twice", 0.0225],
    ]);
  });

  test("where nothing is right the lines' tolerances are added", () => {
    const none = judge<TemperatureSlipKey | typeof AS_STATED>(
      310,
      { key: "as-stated", gives: undefined },
      [{ key: "corrected-twice", gives: 310 }],
      0.05,
    );
    expect(byChance([none])).toEqual([
      ["corrected-twice", 0.0025],
      ["as-stated", 0],
    ]);
  });
});
