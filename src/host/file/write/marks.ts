/** Hidden names by which a workbook tells what made it, and from what it can be made again. */
import { CATALOGUE_NUMBER } from "../../../functions/catalogue-number.js";
import type { BookDescription } from "../../../templates/contract.js";

/** The one that a workbook of one of our templates bears. */
export const TEMPLATE_MARK = "GREYBODY_TEMPLATE";

export function marksOf({ template }: BookDescription, version: string): Readonly<Record<string, string | number>> {
  return {
    GREYBODY_CATALOGUE: CATALOGUE_NUMBER,
    GREYBODY_VERSION: version,
    ...(template === undefined ? {} : { [TEMPLATE_MARK]: template.name, GREYBODY_UNITS: template.units }),
  };
}
