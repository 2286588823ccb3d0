/** Hidden names by which a workbook tells what made it, and from what it can be made again. */
import { CATALOGUE_NUMBER } from "../../../functions/catalogue-number.js";
import type { BookDescription } from "../../../templates/contract.js";

export function marksOf({ template }: BookDescription, version: string): Readonly<Record<string, string | number>> {
  return {
    GREYBODY_CATALOGUE: CATALOGUE_NUMBER,
    GREYBODY_VERSION: version,
    ...(template === undefined ? {} : { GREYBODY_TEMPLATE: template.name, GREYBODY_UNITS: template.units }),
  };
}
