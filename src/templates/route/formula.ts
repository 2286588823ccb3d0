/**
 * Pieces of formulas that several columns share. All of them go row by row over whole columns, so that one formula
 * spills beside the table; they keep to what Excel and the embedded engine both do:
 * - an empty cell is turned into "" before it goes anywhere, since Excel hands it over as 0;
 * - a number is compared only beside ISNUMBER, since Excel puts text above every number and the engine does not;
 * - * and + stand for AND and OR, which would make one value of a column.
 */
export const PHASES = ["left", "middle", "right"] as const;
export type Phase = (typeof PHASES)[number];

/** 1 where a row holds a reading. */
export const MEASURED = '([left]&[middle]&[right]<>"")';

/** True where a row holds a reading that is no temperature. */
export const UNREADABLE = is("[unreadable]", ">0");

/** A column or a job field whose empty cells stay empty. */
export function given(reference: string): string {
  return `IF(${reference}="","",${reference})`;
}

/** A column's numbers; whatever else stands there is left out (and told among what cannot be). */
export function number(reference: string): string {
  return `IF(ISNUMBER(${reference}),${reference},"")`;
}

/** 1 where all these cells are numbers and the comparison of them holds; text among them is no error then. */
export function ofNumbers(references: readonly string[], comparison: string): string {
  return `IF(${references.map((one) => `ISNUMBER(${one})`).join("*")},${comparison},FALSE)*1`;
}

/** True where a cell is a number that the comparison holds for: `is("[wind]", ">7")`. */
export function is(reference: string, comparison: string): string {
  return `(ISNUMBER(${reference})*(${reference}${comparison}))`;
}

/** The row's entry in the asset list: "" where the row names no asset, `otherwise` where the list does not hold it. */
export function fromAssets(column: string, empty = '""', otherwise = '""'): string {
  const cells = `IF(AssetList[${column}]="",${empty},AssetList[${column}])`;
  return `IF([asset_id]="","",XLOOKUP([asset_id],AssetList[asset_id],${cells},${otherwise}))`;
}

/** The same of the window that the row's asset is seen through. */
export function fromWindows(column: string): string {
  const cells = given(`WindowList[${column}]`);
  return `XLOOKUP([window],WindowList[window_id],${cells},"")`;
}

/** The same side by side, empty cells as "". */
export function sideBySide(prefix: string): string {
  return `HSTACK(${columnsOf(prefix).map(given).join(",")})`;
}

/**
 * The highest or lowest number of three columns, row by row, "" where none of them is a number. BYROW with MAX says it
 * more shortly, but calls its LAMBDA for every row: the engine then takes ten times as long over a sheet.
 */
export function extreme(which: "highest" | "lowest", columns: readonly string[]): string {
  const [better, none, isNone] =
    which === "highest" ? [">=", "-1000000000", "<-99999999"] : ["<=", "1000000000", ">99999999"];
  const [first, second, third] = columns.map((one) => `IF(ISNUMBER(${one}),${one},${none})`);
  return (
    `LET(first,${first},second,${second},third,${third},` +
    `best,IF(first${better}second,IF(first${better}third,first,third),IF(second${better}third,second,third)),IF(best${isNone},"",best))`
  );
}

/** The columns of the three phases: `columnsOf("t_")` is t_left, t_middle, t_right; "" before a reading's own. */
export function columnsOf(prefix: string): string[] {
  return PHASES.map((phase) => `[${prefix}${phase}]`);
}

/** Of three columns the one of the phase that is named in `phase`. */
export function ofPhase(phase: string, columns: (phase: Phase) => string): string {
  const [left, middle, right] = PHASES.map(columns);
  return `IF(${phase}="left",${left},IF(${phase}="middle",${middle},IF(${phase}="right",${right},"")))`;
}

/** The word of the phase whose column equals `value`; of equals the first. */
export function phaseOf(value: string, prefix: string): string {
  return `IF([${prefix}left]=${value},"left",IF([${prefix}middle]=${value},"middle","right"))`;
}

/** Words where a condition holds, with what separates them from the next. */
export function clause(condition: string, words: string, separator = "; "): string {
  return `IF(${condition},${words}&"${separator}","")`;
}

/** Clauses in one text without the last separator; `names` are LET's: each a name and what it stands for. */
export function joined(
  clauses: readonly string[],
  separator = "; ",
  names: readonly (readonly [string, string])[] = [],
): string {
  const { length } = separator;
  return `=LET(${[...names.flat(), "all", clauses.join("&")].join(",")},IF(all="","",LEFT(all,LEN(all)-${length})))`;
}
