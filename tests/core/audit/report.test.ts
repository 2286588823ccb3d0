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
const told = (rows: readonly Row[], tolerance?: number): (string | number)[][] =>
  explainReport(rows, tolerance).map(({ key, explained, rows: shown }) => [key, explained, shown]);

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
  expect(told(rows, 0.5)[0]).toEqual(["corrected-twice", 2, 6]);
  expect(told([...rows, row(305, slips, 0.5)], 0.5)[0]).toEqual(["as-stated", 1, 8]);
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
