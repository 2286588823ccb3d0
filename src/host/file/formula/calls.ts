/** Calls that the engine reads otherwise than a worksheet, written so that it does not, or doubted. */
import { COPY, DOUBT, FORMATTED, NO_PATTERN, ONLY_NUMBER, SOUGHT } from "../worksheet/helpers.js";
import { WHOLE } from "../worksheet/helpers.js";
import type { Area } from "./areas.js";
import type { Context } from "./context.js";
import { isWhole } from "./places.js";
import type { Places } from "./places.js";
import { NAMESPACE } from "../../../functions/describe.js";
import { spillMark } from "./spills.js";
import { onlyItem, significant, tokenOf } from "./tree.js";
import type { Call, Expression } from "./tree.js";
import { argumentsOf } from "./trusted.js";

/** Stands for a value that is doubted, where the formula uses it. */
const doubted = (reason: string): string => `${DOUBT}("${reason.replaceAll('"', '""')}")`;

/** Whose result depends on the day that a number stands for, and which are not ours. */
const BY_DAY = new Set([
  "DATEVALUE",
  "VALUE",
  "DAYS360",
  "WEEKNUM",
  "ISOWEEKNUM",
  "YEARFRAC",
  "DATEDIF",
  "NETWORKDAYS",
  "WORKDAY",
]);
const DATE_FORMAT = /[ymdhs]/i;

/** They step: a last digit that the engine rounds in a sum or difference, and a worksheet does not, moves them by one. */
const STEPS = new Set(["INT", "TRUNC", "FLOOR", "CEILING", "ROUNDDOWN", "ROUNDUP", "MOD", "QUOTIENT", "EVEN", "ODD"]);

/** What writes the formula around a call. */
export interface CallWriter {
  readonly places: Places;
  readonly is1904: boolean;
  readonly doubt: (reason: string) => void;
  /** Areas whose values must be rising numbers for the result to be trusted. */
  readonly rising: Area[];
  /** Areas in which a value is looked for; undefined for what is no plain range. */
  readonly searched: (Area | undefined)[];
  readonly argument: (call: Call, place: number, context: Context) => string;
}

/** Two values or more with + or − between them, also in parentheses; a sign in front is none. */
function isSum(arg: Expression): boolean {
  return significant(arg).some((item, i) => {
    if (item.kind === "group") return item.inside.some(isSum);
    return i > 0 && item.kind === "other" && (item.text === "+" || item.text === "-");
  });
}

export function writeCall(writer: CallWriter, call: Call, context: Context): string {
  const name = call.name.toUpperCase();
  const args = call.args.map((_, i) => writer.argument(call, i, context));
  const write = (called = call.name): string => `${called}(${args.join(",")})`;
  if (!name.startsWith(`${NAMESPACE}.`) && argumentsOf(name) === undefined) {
    return doubted(`${name} is not among the functions that are trusted`);
  }
  if (STEPS.has(name) && call.args.some(isSum)) return doubted(`${name} of a sum or difference`);
  if (writer.is1904 && BY_DAY.has(name)) return doubted(`${name} in a workbook whose days count from 1904`);
  switch (name) {
    case "SUMIF":
    case "AVERAGEIF": {
      const sums = call.args[2] && sumsOf(writer, call);
      if (sums !== undefined) args[2] = sums;
      return write();
    }
    case "COUNTIF":
    case "COUNTIFS":
      return write(call.args.some((_, i) => i % 2 === 0 && isWholeAt(writer, call, i)) ? WHOLE + name : name);
    case "COUNTBLANK":
    case "ROWS":
    case "COLUMNS":
      return isWholeAt(writer, call, 0) ? doubted(`${name} of a whole column or row`) : write();
    case "ROW":
    case "COLUMN":
      return firstPlace(writer, call, context) ?? write();
    case "VLOOKUP":
    case "HLOOKUP":
    case "MATCH":
    case "LOOKUP":
    case "XLOOKUP":
    case "XMATCH": {
      const found = lookup(writer, call, name, args[0] ?? "");
      args[0] = found.sought;
      return found.doubt === undefined ? write() : doubted(found.doubt);
    }
    case "TEXT": {
      const [shown = "", format = ""] = args;
      const isLiteral = tokenOf(onlyItem(call.args[1])) === "text";
      if (!isLiteral) return doubted("TEXT with a format that is not written out");
      if (format === '""' || /General|[@?[\]_*]|[#0]\//i.test(format)) return doubted(`TEXT with the format ${format}`);
      const isDate = DATE_FORMAT.test(format.replaceAll(/\\.|"[^"]*"/g, (part) => (part === format ? part : "")));
      const text = writer.is1904 && isDate ? `TEXT(${shown}+1462,${format})` : write();
      return isDate ? text : `${FORMATTED}(${text},${shown})`;
    }
    case "ANCHORARRAY": {
      const area = areaAt(writer, call, 0);
      if (!area || context.mode === "V") return doubted("a spill where one value is wanted");
      return spillMark(area);
    }
    case "IFS":
      if (args.length % 2 !== 0) return doubted("IFS with a test that has no value");
      return pairwise(args, (test, value, rest) => `IF(${test},${value},${rest})`, "NA()");
    case "SWITCH": {
      const [value = "", ...cases] = args;
      const rest = cases.length % 2 === 1 ? cases.pop()! : "NA()";
      return pairwise(cases, (one, result, other) => `IF(${value}=${one},${result},${other})`, rest);
    }
    case "SORT":
    case "SORTBY":
    case "IFERROR":
    case "IFNA":
      // The engine works in its own memory of the range.
      if (context.mode !== "V" || name.startsWith("SORT")) args[0] = `${COPY}(${args[0] ?? ""})`;
      return write();
    case "MODE":
    case "MODE.SNGL": {
      const area = args.length === 1 ? areaAt(writer, call, 0) : undefined;
      const isRange = area && (area.startRow !== area.endRow || area.startColumn !== area.endColumn);
      return isRange ? write() : doubted(`${name} of what is no plain range`);
    }
    case "SEARCH":
      args[0] = `${NO_PATTERN}(${args[0] ?? ""})`;
      return write();
    case "ADDRESS":
      return args.length > 4 ? doubted("ADDRESS with a sheet") : write();
    default:
      return write();
  }
}

/** Pairs of arguments, each in the place of the rest of the one before. */
function pairwise(
  args: readonly string[],
  join: (first: string, second: string, rest: string) => string,
  last: string,
): string {
  let written = last;
  for (let i = args.length - 2; i >= 0; i -= 2) written = join(args[i]!, args[i + 1]!, written);
  return written;
}

function areaAt(writer: CallWriter, call: Call, place: number): Area | undefined {
  const item = onlyItem(call.args[place]);
  return item?.kind === "reference" ? writer.places.areaOf(item.reference) : undefined;
}

const isWholeAt = (writer: CallWriter, call: Call, place: number): boolean => {
  const area = areaAt(writer, call, place);
  return area !== undefined && isWhole(area);
};

/** What is summed begins where the third argument does and has the size of the first. */
function sumsOf(writer: CallWriter, call: Call): string | undefined {
  const [range, sums] = [areaAt(writer, call, 0), areaAt(writer, call, 2)];
  if (!range || !sums) {
    writer.doubt(`${call.name} over what is no plain range`);
    return undefined;
  }
  if (isWhole(range) || isWhole(sums)) {
    if (isWhole(range) !== isWhole(sums) || sums.startRow !== range.startRow) {
      writer.doubt(`${call.name} over whole columns and parts of some`);
    }
  }
  const endRow = sums.startRow + range.endRow - range.startRow;
  const endColumn = sums.startColumn + range.endColumn - range.startColumn;
  return writer.places.read({ ...sums, endRow, endColumn });
}

/** ROW and COLUMN of a range in a place for one value mean its first cell. */
function firstPlace(writer: CallWriter, call: Call, context: Context): string | undefined {
  const area = areaAt(writer, call, 0);
  if (!area || context.mode === "A" || context.operand === "A") return undefined;
  const isOne = area.startRow === area.endRow && area.startColumn === area.endColumn;
  if (isOne) return undefined;
  if (context.mode === "R") writer.doubt(`${call.name} of a range where an array may be meant`);
  return String((call.name.toUpperCase() === "ROW" ? area.startRow : area.startColumn) + 1);
}

/** Which argument of a lookup says how it matches, and which holds what is searched. */
const LOOKUPS: Readonly<Record<string, { readonly mode: number; readonly exact: readonly string[] }>> = {
  VLOOKUP: { mode: 3, exact: ["0", "FALSE"] },
  HLOOKUP: { mode: 3, exact: ["0", "FALSE"] },
  MATCH: { mode: 2, exact: ["0", "FALSE"] },
  LOOKUP: { mode: 9, exact: [] },
  XLOOKUP: { mode: 4, exact: ["0"] },
  XMATCH: { mode: 2, exact: ["0"] },
};

interface Lookup {
  readonly sought: string;
  readonly doubt?: string;
}

/** The first argument, watched: an exact match of plain values is trusted, a nearest one only among rising numbers. */
function lookup(writer: CallWriter, call: Call, name: string, sought: string): Lookup {
  const { mode, exact } = LOOKUPS[name]!;
  const isNew = name.startsWith("X");
  const given = call.args[mode];
  const item = onlyItem(given);
  const written = item?.kind === "other" ? item.text.toUpperCase() : undefined;
  const last = onlyItem(call.args[mode + 1]);
  if (isNew && call.args[mode + 1] && !(last?.kind === "other" && last.text === "1")) {
    return { sought, doubt: `${name} that does not search from the first on` };
  }
  const isLeftOut = given?.length === 0;
  const area = areaAt(writer, call, 1);
  const isExact = isLeftOut || (isNew && given === undefined) || (written !== undefined && exact.includes(written));
  const isWide = area !== undefined && area.endColumn - area.startColumn > area.endRow - area.startRow;
  const isAlongRow = name === "HLOOKUP" || (name !== "VLOOKUP" && isWide);
  const line = area && (isAlongRow ? { ...area, endRow: area.startRow } : { ...area, endColumn: area.startColumn });
  if (isExact) {
    writer.searched.push(line);
    return { sought: `${SOUGHT}(${sought})` };
  }
  const isRising = given === undefined || (!isNew && (written === "1" || written === "TRUE"));
  if (!isRising || !line) return { sought, doubt: `${name} that looks for the nearest value` };
  writer.rising.push(line);
  return { sought: `${ONLY_NUMBER}(${sought})` };
}
