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

/** A column or a job field whose empty cells stay empty. */
export function given(reference: string): string {
  return `IF(${reference}="","",${reference})`;
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

/** Three computed columns side by side: `phases("t")` is t_left, t_middle, t_right. */
export function phases(name: string): string {
  return `HSTACK(${PHASES.map((phase) => `[${name}_${phase}]`).join(",")})`;
}

/** Three typed columns side by side. */
export function typedPhases(prefix: string): string {
  return `HSTACK(${PHASES.map((phase) => given(`[${prefix}${phase}]`)).join(",")})`;
}

/** One number a row out of three, "" where fewer than `least` are numbers. `result` names them `three`. */
export function eachRow(columns: string, least: number, result: string): string {
  return `BYROW(${columns},LAMBDA(three,IF(COUNT(three)<${least},"",${result})))`;
}

/** Of three columns the one of the phase that is named in `phase`. */
export function ofPhase(phase: string, columns: (phase: Phase) => string): string {
  const [left, middle, right] = PHASES.map(columns);
  return `IF(${phase}="left",${left},IF(${phase}="middle",${middle},IF(${phase}="right",${right},"")))`;
}

/** The word of the phase whose column equals `value`; of equals the first. */
export function phaseOf(value: string, name: string): string {
  return `IF([${name}_left]=${value},"left",IF([${name}_middle]=${value},"middle","right"))`;
}

/** Words where a condition holds, with what separates them from the next. */
export function clause(condition: string, words: string, separator = "; "): string {
  return `IF(${condition},${words}&"${separator}","")`;
}

/** Clauses in one text without the last separator. */
export function joined(clauses: readonly string[], separator = "; "): string {
  const { length } = separator;
  return `=LET(all,${clauses.join("&")},IF(all="","",LEFT(all,LEN(all)-${length})))`;
}
