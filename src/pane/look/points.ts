/** What the picture shows: each exception with what it was graded by; similar, air and limit never on one axis, nor are views. */
import type { RowRecord, TableContent } from "../../host/port.js";
import { foundGrade, isFilled, nameOf, numberOf, words } from "../route.js";
import { gradeOf } from "../../host/tones.js";

export const axes = ["similar", "air", "limit", "indirect", "baseline"] as const;
export type Axis = (typeof axes)[number];

export interface Point {
  readonly axis: Axis;
  /** Row of the sheet as the sheet counts, which no two share. */
  readonly sheetRow: number;
  /** From 0, in the table's body. */
  readonly row: number;
  readonly asset: string;
  readonly name: string;
  readonly hottest: string;
  /** Rise in the sheet's unit, or share of the limit. */
  readonly value: number;
  /** Expanded uncertainty, where the sheet knows it. */
  readonly u: number | undefined;
  /** At least: the reading stood at the camera's limit. */
  readonly atLeast: boolean;
  readonly grade: number;
  readonly words: string;
  /** This reference gave the governing grade. */
  readonly governs: boolean;
}

interface Keys {
  readonly value: string;
  readonly u: string;
  readonly grade: string;
  /** What the sheet calls it where it governs. */
  readonly judgedBy: readonly string[];
}

const keys: Readonly<Record<Axis, Keys>> = {
  similar: { value: "similar", u: "u_similar", grade: "grade_similar", judgedBy: ["over similar", "over like"] },
  air: { value: "rise_air", u: "u_air", grade: "grade_air", judgedBy: ["over air"] },
  limit: { value: "share", u: "u_limit", grade: "grade_limit", judgedBy: ["share of limit"] },
  baseline: { value: "baseline", u: "u_baseline", grade: "grade_baseline", judgedBy: ["over baseline"] },
  indirect: { value: "similar", u: "u_similar", grade: "grade_similar", judgedBy: ["over similar", "over like"] },
};

export interface Looked {
  readonly points: readonly Point[];
  /** Exceptions without any grade: told beside the picture, for none is left out silently. */
  readonly ungraded: readonly { readonly row: number; readonly name: string; readonly why: string }[];
  readonly exceptions: number;
}

/** An exception is what was marked as one, or graded 1 or more. */
export function look({ table, rows }: TableContent): Looked {
  const exceptions = rows
    .map((record, row) => ({ record, row }))
    .filter(({ record }) => isFilled(record, table) && isException(record));
  const points = exceptions.flatMap(({ record, row }) =>
    axes.flatMap((axis) => pointOf(axis, record, row, table.firstRow)),
  );
  const ungraded = exceptions
    .filter(({ row }) => !points.some((point) => point.row === row))
    .map(({ record, row }) => ({
      row,
      name: nameOf(record),
      why: words(record.remarks) || words(record.grade_found) || "no grade",
    }));
  points.sort((one, other) => other.grade - one.grade || other.value - one.value || one.row - other.row);
  return { points, ungraded, exceptions: exceptions.length };
}

function isException(record: RowRecord): boolean {
  return words(record.status) === "exception" || (foundGrade(record) ?? 0) >= 1;
}

function pointOf(axis: Axis, record: RowRecord, row: number, firstRow: number): Point[] {
  const key = keys[axis];
  // What is seen indirectly is graded by a table of its own.
  const direct = words(record.view) === "direct";
  if ((axis === "indirect" && direct) || (axis === "similar" && !direct)) return [];
  const value = numberOf(record[key.value]);
  const grade = gradeOf(record[key.grade]);
  if (value === undefined || grade === undefined) return [];
  return [
    {
      axis,
      sheetRow: firstRow + row + 1,
      row,
      asset: words(record.asset_id) || `Row ${String(firstRow + row + 1)}`,
      name: nameOf(record),
      hottest: words(record.hottest),
      value,
      u: uncertaintyOf(words(record[key.u])),
      atLeast: words(record.limit_reading) !== "",
      grade,
      words: words(record[key.grade]),
      governs: key.judgedBy.includes(words(record.governs)),
    },
  ];
}

/** "more than ± 3.9 K, edge 21 K inside" and "± 12 points", of a share, as the sheet writes it. */
function uncertaintyOf(text: string): number | undefined {
  const [, digits, share] = /± ([\d.]+) ?(%|points)?/.exec(text) ?? [];
  if (digits === undefined) return undefined;
  return share === undefined ? Number(digits) : Number(digits) / 100;
}

export function perCent(share: number): string {
  return `${String(Math.round(share * 100))} %`;
}

export function valueInWords({ axis, value }: Pick<Point, "axis" | "value">): string {
  return axis === "limit" ? perCent(value) : value.toFixed(1);
}
