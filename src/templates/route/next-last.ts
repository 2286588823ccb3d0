/** What the last survey leaves of each asset: its columns "Last time", and whether it is to be looked at again. */
import { type Cell, isCellError } from "../../functions/contract.js";
import { staysText } from "../refill/cells.js";
import type { RowRecord } from "../refill/records.js";

/** The last route, worked out: rows by key, in its own units. */
export interface LastRoute {
  readonly readings: readonly RowRecord[];
  readonly assets: readonly RowRecord[];
  readonly followUp: readonly RowRecord[];
  readonly date: number | undefined;
}

export interface LastOfAsset {
  readonly id: string;
  /** As it stands in Assets: 101 is not the text "101" to a formula, and a space at its end counts. */
  readonly cell: Cell;
  /** Rows it had on the last route. */
  readonly rows: number;
  /** The worst of its rows that were looked at. */
  readonly worst: RowRecord | undefined;
  /** 0 to 4, or undefined where there was no grade. */
  readonly grade: number | undefined;
  readonly isInspected: boolean;
  /** Why it comes first: graded and not closed, or open from before; the worse the grade, the earlier. */
  readonly repeat: { readonly why: string; readonly grade: number } | undefined;
  /** The follow-up of what was found last time. */
  readonly followUp: RowRecord | undefined;
  /** Days as a sheet counts them; undefined where there is no date. */
  readonly due: number | undefined;
  readonly isNeverSurveyed: boolean;
  /** Overdue on the day of the last survey. */
  readonly wasOverdue: boolean;
}

export const words = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || isCellError(cell) ? "" : String(cell).trim();
export const numberIn = (cell: Cell | undefined): number | undefined => (typeof cell === "number" ? cell : undefined);

/** "2026-03-11" of a day as a sheet counts it. */
export function dayInWords(day: number): string {
  return new Date(Math.round((Math.floor(day) - 25_569) * 86_400_000)).toISOString().slice(0, 10);
}

/** Of every asset of the list, in its order; a line without an asset is none, and of two of one name the first counts. */
export function lastOf({ readings, assets, followUp, date }: LastRoute): LastOfAsset[] {
  const rowsOf = grouped(readings);
  const followUpOf = grouped(followUp);
  const listed = new Set<string>();
  return assets.flatMap((asset): LastOfAsset[] => {
    const { asset_id = null } = asset;
    const cell = typeof asset_id === "string" ? staysText(asset_id) : asset_id;
    const id = words(cell);
    if (id === "" || listed.has(id.toLowerCase())) return [];
    listed.add(id.toLowerCase());
    const rows = rowsOf.get(id.toLowerCase()) ?? [];
    const worst = worstOf(rows.filter((row) => words(row.status) !== "not inspected" && isFilled(row)));
    const grade = numberIn(worst?.grade_number);
    const repairs = followUpOf.get(id.toLowerCase()) ?? [];
    const own = repairs.filter(({ found_on }) => numberIn(found_on) === date);
    const followed = own.find(({ closed_on }) => words(closed_on) === "") ?? own[0];
    const isGraded = grade !== undefined && grade >= 1;
    const open = repairs.find((one) => words(one.closed_on) === "" && (date === undefined || !own.includes(one)));
    const since = numberIn(open?.found_on);
    const why = (row: RowRecord | undefined): string => words(row?.grade_found).split(":")[0] ?? "";
    const repeat =
      isGraded && words(followed?.closed_on) === ""
        ? { why: why(worst), grade }
        : open === undefined
          ? undefined
          : {
              why: `${why(open)}, open${since === undefined ? "" : ` since ${dayInWords(since)}`}`.replace(/^, /, ""),
              grade: Number(/^[0-4](?= of 4)/.exec(words(open.grade_found))?.[0] ?? 0),
            };
    return [
      {
        id,
        cell,
        rows: rows.length,
        worst,
        grade,
        isInspected: words(asset.seen).startsWith("inspected"),
        repeat,
        followUp: followed,
        due: numberIn(asset.due),
        isNeverSurveyed: words(asset.due) === "no survey known",
        wasOverdue: numberIn(asset.overdue) !== undefined,
      },
    ];
  });
}

/** Typed into more than its asset: a row that was only prepared says nothing. */
function isFilled(row: RowRecord): boolean {
  return words(row.status) !== "" || numberIn(row.rise_judged) !== undefined || words(row.grade_found) !== "";
}

function grouped(rows: readonly RowRecord[]): Map<string, RowRecord[]> {
  const groups = new Map<string, RowRecord[]>();
  for (const row of rows) {
    const id = words(row.asset_id).toLowerCase();
    if (id === "") continue;
    const known = groups.get(id);
    if (known === undefined) groups.set(id, [row]);
    else known.push(row);
  }
  return groups;
}

function worstOf(rows: readonly RowRecord[]): RowRecord | undefined {
  const rank = (row: RowRecord): readonly [number, number] => [
    numberIn(row.grade_number) ?? -1,
    numberIn(row.rise_judged) ?? -Infinity,
  ];
  return rows.reduce<RowRecord | undefined>((worst, row) => {
    if (worst === undefined) return row;
    const [[grade, rise], [most, highest]] = [rank(row), rank(worst)];
    return grade > most || (grade === most && rise > highest) ? row : worst;
  }, undefined);
}

/** "lug replaced, 2026-04-02" */
export function repairInWords(repair: RowRecord | undefined): string {
  const day = numberIn(repair?.repair_date);
  return [words(repair?.repair_found), day === undefined ? "" : dayInWords(day)].filter((one) => one !== "").join(", ");
}
