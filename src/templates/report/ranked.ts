/** Rows of a table put in order: a rank beside each, and spills of any columns in the order of the ranks. */

/**
 * The rank of each row that is `included`, 1 for the largest key; of equals the upper row comes first.
 * Two sorts, since a search for each row would take the square of their number.
 */
export function rank(key: string, included: string): string {
  return (
    `=LET(included,${included},n,SEQUENCE(ROWS(included)),` +
    // The row's number takes the ties away: far below any rise or day that counts.
    `sorted,SORT(HSTACK(IF(included>0,${key},-1000000000)-n/1000000000,n),1,-1),` +
    `place,CHOOSECOLS(SORT(HSTACK(CHOOSECOLS(sorted,2),n),1,1),2),IF(included>0,place,""))`
  );
}

export interface Ranked {
  readonly table: string;
  readonly rankKey: string;
  /** Ranks up to this; all where absent. */
  readonly upTo?: number;
  /** What stands there where there is nothing, as a formula has it. */
  readonly none?: string;
}

/**
 * One spill, a row a ranked row, a column an expression; an expression names columns of the table as [key] and is worked
 * out for the ranked rows only.
 */
export function inOrder(expressions: readonly string[], { table, rankKey, upTo, none = '""' }: Ranked): string {
  const keys = [...new Set(expressions.flatMap(keysIn))];
  const of = `${table}[${rankKey}]`;
  // An empty cell would come out as 0.
  const cells = keys.map((key) => `IF(${table}[${key}]="","",${table}[${key}])`);
  const wanted = upTo === undefined ? `ISNUMBER(${of})` : `IF(ISNUMBER(${of}),${of}<=${upTo},FALSE)`;
  const names = keys.map((key, at) => `x_${key},CHOOSECOLS(d,${at + 2})`);
  const shown = expressions.map((one) => one.replaceAll(COLUMN, "x_$1"));
  return (
    `=IF(SUM(ISNUMBER(${of})*1)=0,${none},LET(d,SORT(FILTER(HSTACK(${[of, ...cells].join(",")}),${wanted}),1,1),` +
    `${names.join(",")},${shown.length === 1 ? shown[0] : `HSTACK(${shown.join(",")})`}))`
  );
}

/** A bare column; one of another table has a name before it. */
const COLUMN = /(?<!\w)\[(\w+)\]/g;

const keysIn = (expression: string): string[] =>
  [...expression.matchAll(COLUMN)].flatMap(([, key]) => (key === undefined ? [] : [key]));
