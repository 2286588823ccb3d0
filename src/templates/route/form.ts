/** A form's lines written once in metric units, as a description in the units of the book. */
import type { Cell } from "../../functions/contract.js";
import type { FormField, FormSheet } from "../contract.js";
import type { Range } from "./ranges.js";
import type { Measure, SheetUnits } from "./sheet-units.js";

/** A field whose value is given by the job, in metric units; `start` is what an empty job begins with. */
export interface Field {
  readonly name: string;
  readonly label: string;
  readonly start?: Cell;
  readonly measure?: Measure;
  readonly unit?: string;
  readonly note?: string;
  readonly choices?: readonly string[];
  readonly range?: Range;
  readonly format?: string;
}

/** A subheading or a field. */
export type Line = string | Field;

/** Values by the names of a form's fields. */
export type ValuesOf<Lines extends readonly Line[]> = Readonly<
  Partial<Record<Extract<Lines[number], { readonly name: string }>["name"], Cell>>
>;

/** @param prefix each field gets the defined name PREFIX_NAME */
export function formSheet(
  name: string,
  heading: readonly string[],
  lines: readonly Line[],
  values: Readonly<Record<string, Cell | undefined>>,
  units: SheetUnits,
  prefix = "job",
): FormSheet {
  const fields = lines.map((line) =>
    typeof line === "string" ? { label: line } : fieldOf(line, values[line.name], units, prefix),
  );
  return { kind: "form", name, heading, fields };
}

function fieldOf(
  { name, start, measure, range, ...rest }: Field,
  given: Cell | undefined,
  units: SheetUnits,
  prefix: string,
): FormField {
  const value = given ?? start ?? null;
  const unit = measure === undefined ? rest.unit : units.label(measure);
  return {
    ...rest,
    definedName: `${prefix}_${name}`,
    ...(unit === undefined ? {} : { unit }),
    ...(range === undefined ? {} : { range: units.range(range, measure) }),
    value: measure !== undefined && typeof value === "number" ? units.from(measure, value) : value,
  };
}
