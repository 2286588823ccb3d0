import { GreybodyError } from "../core/errors.js";
import { BUILT_IN_LIMITS, findLimit, limitFigure, ownLimits } from "../core/severity/part-limit.js";
import type { OwnLimitRow, PartLimit } from "../core/severity/part-limit.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { defineCells, guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { numberOf, readOwnTable, singleCell, textOf, wordsOf } from "./own-table.js";
import { provenanceInWords } from "./provenance.js";
import { isBlank, isNoWord, readSingle, readTexts } from "./read.js";
import { searchArgument, searchTable } from "./search-table.js";
import { fromSI, toSI, unitOf } from "./units.js";
import type { Units } from "./units.js";

const LIMITS_ARGUMENT: ArgumentSpec = {
  name: "limits",
  quantity: "table",
  help: "the workbook's own limits, a range part | standard | temp | rise | source; those of GREY.LIMITS where left out",
  optional: true,
  whole: true,
};
const TEMP = 2;
const RISE = 3;
const SHOWS = ["temp", "rise", "source"] as const;
const FROM_MEMORY = /\bfrom memory\b/i;

/** An empty figure: also 0, which no limit is and Excel hands over for an empty cell. */
const isNoFigure = (cell: Cell | undefined): boolean => cell === undefined || isBlank(cell) || numberOf(cell) === 0;
const isWrongFigure = (cell: Cell | undefined): boolean => !isNoFigure(cell) && Number.isNaN(numberOf(cell));

function readRow(row: readonly Cell[], number: number, units: Units): OwnLimitRow {
  const [part, standard, temp, rise, source] = row;
  if ([temp, rise].some(isWrongFigure)) {
    const hint = { key: "limits-number", values: { row: number } };
    throw new GreybodyError({ code: "INVALID", argument: "limits", hint });
  }
  return {
    part: wordsOf(part),
    standard: wordsOf(standard),
    temp: isNoFigure(temp) ? NaN : toSI(numberOf(temp), unitOf("temperature", units)),
    rise: isNoFigure(rise) ? NaN : toSI(numberOf(rise), unitOf("difference", units)),
    source: wordsOf(source),
    // Also where the range is what LIMITS gave: a figure does not get surer by passing through a sheet.
    fromMemory: FROM_MEMORY.test(wordsOf(source)),
  };
}

/** The words "temp" and "rise" themselves, or others above both columns of figures. */
const isHeading = (row: readonly Cell[]): boolean => isWrongFigure(row[TEMP]) && isWrongFigure(row[RISE]);

function readLimits(input: Input, units: Units): readonly PartLimit[] | CellError {
  const single = singleCell(input);
  if (isCellError(single)) return single;
  if (single !== undefined) {
    if (isNoWord(single)) return BUILT_IN_LIMITS;
    const hint = { key: "limits-empty" };
    throw new GreybodyError({ code: "INVALID", argument: "limits", given: textOf(single), hint });
  }
  return readOwnTable(LIMITS_ARGUMENT, input, {
    isHeading,
    build: (rows) => ownLimits(rows.map((row, i) => readRow(row, i + 1, units))),
    about: (key, row) => {
      const column = key === "limits-rise" || (key === "limits-number" && !isWrongFigure(row[TEMP])) ? RISE : TEMP;
      if (key === "limits-part" || key === "limits-twice") return { column: 0, unit: unitOf("text", units) };
      return { column, unit: unitOf(column === RISE ? "difference" : "temperature", units) };
    },
  });
}

/** A figure of a table, free of what floating point adds. */
const tidy = (value: number): number => Number(value.toFixed(6));

function sourceOf({ row, source }: PartLimit): string {
  if (row) return [provenanceInWords(row), ...(row.note === undefined ? [] : [row.note])].join("; ");
  return source === undefined || source === "" ? "the workbook's own limits" : source;
}

const LIMIT = defineCells({
  name: "LIMIT",
  topic: "Severity",
  summary:
    "Highest temperature or rise that a standard permits a part; what is known from memory only is told, not given.",
  returns: "limit, or what show names",
  args: [
    { name: "part", quantity: "text", help: "part by its name in GREY.LIMITS or in the limits given, in any case" },
    {
      name: "standard",
      quantity: "text",
      help: "the standard, or a part of its name; needed where several have the part",
      optional: true,
    },
    {
      name: "show",
      quantity: "text",
      help: "highest temperature, highest rise, or where they are from",
      optional: true,
      default: "temp",
      choices: SHOWS,
    },
    LIMITS_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "number",
  whole: (inputs: readonly Input[], units) => readLimits(inputs[3], units),
  cell: (values, whole) => {
    const limit = findLimit(whole as readonly PartLimit[], values.text("part"), values.text("standard"));
    const show = values.text("show");
    if (show === "source") return sourceOf(limit);
    const figure = show === "rise" ? "rise" : "temp";
    const quantity = figure === "rise" ? "difference" : "temperature";
    return tidy(fromSI(limitFigure(limit, figure), unitOf(quantity, values.units)));
  },
  example: { formula: '=GREY.LIMIT("bolted joint, tin coated, in air")', shows: "105" },
  sources: ["iec-60694-1996", "nema-mg-1"],
});

const SEARCH = searchArgument("a part, its standard, medium or note");
const HEADER = ["part", "standard", "temp", "rise", "source", "air", "medium", "note"];

function rowOf(limit: PartLimit, units: Units): Cell[] {
  const temperature = (celsius: number | undefined): Cell =>
    celsius === undefined ? "" : tidy(fromSI(toSI(celsius, unitOf("temperature", "C")), unitOf("temperature", units)));
  const { row, part, standard, rise } = limit;
  return [
    part,
    standard,
    temperature(row?.temp),
    rise === undefined ? "" : tidy(fromSI(rise, unitOf("difference", units))),
    row ? provenanceInWords(row) : "",
    temperature(row?.air),
    row?.medium ?? "",
    row?.note ?? "",
  ];
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(LIMITS, inputs);
  if (excess) return [[excess]];
  const given = readSingle(UNITS_ARGUMENT, inputs[1]);
  if (isCellError(given)) return [[given]];
  const named = readTexts(UNITS_ARGUMENT, given, unitOf("text", "C"));
  const [fault] = named.faults?.values() ?? [];
  if (fault) return [[fault]];
  const units: Units = named.values[0] === "F" ? "F" : "C";
  const rows = BUILT_IN_LIMITS.map((limit) => ({
    name: limit.part,
    found: [limit.standard, limit.row?.medium ?? "", limit.row?.note ?? ""].join(" "),
    cells: rowOf(limit, units),
  }));
  const table = searchTable(SEARCH, inputs[0], HEADER, rows);
  return isCellError(table) ? [[table]] : table;
}

const LIMITS: FunctionSpec = {
  name: "LIMITS",
  topic: "Severity",
  summary:
    "Temperatures and rises that standards permit parts, with the air they are meant for, in the columns that LIMIT takes.",
  returns: "a table",
  args: [SEARCH, UNITS_ARGUMENT],
  shape: "table",
  example: { formula: '=GREY.LIMITS("bolted bare SF6")', shows: "part, standard, temp, rise, …" },
  sources: ["iec-60694-1996", "nema-mg-1", "iec-60076-2"],
  evaluate: guarded(evaluate),
};

export const limitFunctions: readonly FunctionSpec[] = [LIMIT, LIMITS];
