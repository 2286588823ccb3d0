/** Two small books that both hosts make; the numbers are invented, the results plain arithmetic. */
import type { BookDescription, TableSheet } from "../../src/templates/contract.js";

const readings: TableSheet = {
  kind: "table",
  name: "Route",
  heading: ["A small route", '="Exponent "&job_exponent'],
  tableName: "Readings",
  frozenColumns: 1,
  columns: [
    { key: "item", header: "item", group: "Where", width: 120 },
    { key: "state", header: "state", group: "Where", width: 90, choices: ["fine", "exception"] },
    { key: "air", header: "air", unit: "°C", group: "As read", width: 70, format: "0.0" },
    { key: "rise", header: "rise", unit: "K", group: "As read", width: 70, format: "0.0" },
    { key: "load", header: "load", unit: "A", group: "As read", width: 70, format: "0" },
    { key: "full_load", header: "full_load", unit: "A", group: "As read", width: 70, format: "0" },
    { key: "remark", header: "remark", group: "More", width: 120, folded: true },
  ],
  rows: [
    ["panel A", "exception", 21, 12, 50, 100, null],
    ["panel B", "fine", 21.5, 10, 100, 100, "3-5"],
    ["panel C", null, 22, 8, 80, null, null],
  ],
  computed: [
    {
      key: "at_full",
      header: "rise at full load",
      unit: "K",
      group: "Worked out",
      width: 90,
      format: "0.0",
      formula: "=GREY.RISE_AT_LOAD([rise],[load],[full_load],job_exponent)",
    },
  ],
};

export const metric: BookDescription = {
  title: "A small route",
  sheets: [
    readings,
    {
      kind: "form",
      name: "Job",
      heading: ["Job"],
      fields: [
        { label: "Load" },
        { definedName: "job_exponent", label: "Exponent", value: 2, format: "0.0" },
        { definedName: "job_band", label: "Band", unit: "µm", value: "7.5-14" },
        { definedName: "job_client", label: "Client" },
      ],
    },
    { kind: "notes", name: "Cautions", heading: ["Cautions"], lines: ["A qualified person decides."] },
  ],
};

/** Beside the first in one workbook: no sheet, table or name in common. */
export const fahrenheit: BookDescription = {
  title: "Another route",
  sheets: [
    {
      ...readings,
      name: "Second route",
      heading: ["Another route"],
      tableName: "OtherReadings",
      columns: readings.columns.map((column) => (column.key === "air" ? { ...column, unit: "°F" } : column)),
      rows: [["panel D", null, 70, 5, 50, 100, null]],
      computed: [{ ...readings.computed[0]!, formula: "=GREY.RISE_AT_LOAD([rise],[load],[full_load],2)" }],
    },
  ],
};

/** Cells that stand where they are put: single ones, one over several columns, a block to paste into, one worked out. */
export const loose: BookDescription = {
  title: "Loose",
  sheets: [
    {
      kind: "free",
      name: "Findings",
      heading: ["Findings", '="Air "&findings_air'],
      widths: [120, 80, 80, 80],
      cells: [
        { row: 0, column: 0, value: "Air", look: "label" },
        {
          row: 0,
          column: 1,
          value: 21.5,
          look: "typed",
          name: "findings_air",
          label: "Air",
          unit: "°C",
          format: "0.0",
        },
        { row: 1, column: 0, value: "All of it", look: "words", name: "findings_words", across: 3 },
        { row: 3, column: 0, size: { rows: 2, columns: 2 }, look: "typed", name: "findings_block", label: "Block" },
        {
          row: 6,
          column: 1,
          value: "=GREY.RISE_AT_LOAD(12,50,findings_air,2)",
          look: "computed",
          name: "findings_rise",
          label: "Rise",
        },
      ],
      pictures: [{ key: "a", row: 8, column: 0, rows: 4, columns: 2, numberAt: { row: 0, column: 1 }, kind: "photo" }],
    },
  ],
};

/** Its formula names a column that is not there. */
export const broken: BookDescription = {
  title: "Broken",
  sheets: [
    {
      ...readings,
      name: "Broken",
      tableName: "BrokenReadings",
      heading: ["Broken"],
      computed: [{ ...readings.computed[0]!, formula: "=[nowhere]*2" }],
    },
  ],
};
