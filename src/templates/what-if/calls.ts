/** Calls of our functions with a row's settings, or with one of them running over the span. */
import { given } from "../route/formula.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { SETTINGS, VARIED } from "./settings.js";

export const STEPS = 11;

/** True where what is varied is one of the settings: `whatif_varied` is a single cell, so this is one value. */
export const KNOWN = `(${VARIED.map((key) => `(whatif_varied="${key}")`).join("+")}>0)`;
/** True where Settings hold a span. */
export const SPANNED = `(${KNOWN}*ISNUMBER(whatif_from)*ISNUMBER(whatif_to)=1)`;

/** The varied setting's values, side by side. */
export const SPAN = `whatif_from+(whatif_to-whatif_from)*SEQUENCE(1,${STEPS},0,1)/${STEPS - 1}`;

/** The row's own settings in CORRECTED's order; a varied one is `varied` instead where that is given. */
export function settings(varied?: string): string[] {
  return SETTINGS.map(({ key }) => replaced(key, `[${key}_used]`, varied));
}

function replaced(key: string, own: string, varied: string | undefined): string {
  return varied === undefined ? own : `IF(whatif_varied="${key}",${varied},${own})`;
}

export function corrected(reading: string, units: SheetUnits, varied?: string): string {
  return `GREY.CORRECTED(${[reading, ...settings(varied)].join(",")},whatif_band,${units.argument})`;
}

/** The part's temperature; its reading itself may be what is varied. */
export function hot(units: SheetUnits, varied?: string): string {
  return corrected(replaced("apparent", "[apparent]", varied), units, varied);
}

/** What the rise is over: the similar component under the same settings, or the air. */
export function reference(units: SheetUnits, varied?: string): string {
  return `IF([over_used]="similar",${corrected("[reference_apparent]", units, varied)},[air_used])`;
}

export function grade(rise: string, show: string, units: SheetUnits): string {
  return `GREY.GRADE(${rise},[over_used],whatif_criteria,"direct","${show}",,${units.argument})`;
}

/** Of a block of STEPS columns the lowest or highest number of each row, "" where none is one. */
export function extremeOf(block: string, which: "lowest" | "highest"): string {
  const [none, better] = which === "lowest" ? ["1000000000", "<"] : ["-1000000000", ">"];
  const folds = Array.from({ length: STEPS - 1 }, (_, at) => {
    const [own, before] = [`CHOOSECOLS(block,${at + 2})`, `best${at + 1}`];
    return `best${at + 2},IF(${own}${better}${before},${own},${before})`;
  });
  return (
    `LET(block,IFERROR(${block},${none}),best1,CHOOSECOLS(block,1),${folds.join(",")},` +
    `IF(best${STEPS}=${none},"",best${STEPS}))`
  );
}

/** Expanded uncertainty of the rise at the given settings, by what Settings say of their half-widths. */
export function riseUncertainty(relation: string, units: SheetUnits): string {
  const row = (reading: string): string => `HSTACK(${[reading, ...settings()].join(",")})`;
  const half = (name: string): string => `whatif_${name}/SQRT(3)`;
  const each = (one: string): string => `IF([apparent]="","",${one})`;
  const camera = `GREY.CAMERA_UNCERTAINTY([apparent],${given("whatif_accuracy")},${given("whatif_accuracy_percent")},${units.argument})`;
  const u = `HSTACK(${[camera, each(half("emissivity_half")), each(half("reflected_half"))].join(",")})`;
  const call = (second: string, how: string): string =>
    `GREY.RISE_UNCERTAINTY(${row("[apparent]")},${second},${u},${how},,whatif_band,${units.argument})`;
  return `IF([over_used]="similar",${call(row("[reference_apparent]"), relation)},${call(given("[air_used]"), '"air by thermometer"')})`;
}
