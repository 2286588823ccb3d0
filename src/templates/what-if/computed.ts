/** What is worked out of each reading: at the given settings, over the span, and where the grade flips. */
import type { Computed } from "../route/columns.js";
import { clause, given, joined } from "../route/formula.js";
import { uncertaintyInWords } from "../route/grade.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { corrected, extremeOf, grade, hot, KNOWN, reference, riseUncertainty, SPAN, SPANNED } from "./calls.js";
import { flipColumns } from "./flip.js";
import { RELATION } from "./form.js";
import { loadColumns } from "./load.js";
import { type Setting, SETTINGS } from "./settings.js";

const GIVEN = "At the given settings";
const OVER_SPAN = "Over the span";
const WORKING = "Settings used";

const degrees = { measure: "temperature", format: "0.0", align: "right" } as const;
const kelvin = { measure: "difference", format: "0.0", align: "right" } as const;

/** Only where a row holds a reading, and as many rows as the table has whatever the rest is. */
const ifRead = (rest: string): string => `=IF([apparent]="","",${rest})`;
const orEmpty = (call: string): string => `IFERROR(${call},"")`;
const spanned = (rest: string): string => ifRead(`IF(${SPANNED},${rest},"")`);

export function computedColumns(units: SheetUnits): Computed[] {
  const rise = (varied?: string): string => `${hot(units, varied)}-${reference(units, varied)}`;
  const column = (key: string, group: string, header: string, width: number, rest: Partial<Computed>): Computed => ({
    key,
    group,
    header,
    width,
    formula: "",
    ...rest,
  });
  return [
    column("remarks", "Remarks", "needs, refused", 300, {
      formula: remarks(),
      note: "What a row still needs, and what has no answer.",
    }),
    column("temp", GIVEN, "corrected", 84, { ...degrees, formula: ifRead(orEmpty(hot(units))) }),
    column("rise", GIVEN, "rise", 64, { ...kelvin, formula: ifRead(orEmpty(rise())) }),
    column("u", GIVEN, "± U of the rise", 76, {
      ...kelvin,
      formula: `=IF([rise]="","",${orEmpty(riseUncertainty(RELATION, units))})`,
      note: "Expanded (95 %), by the half-widths of Settings. Window and air count as exact.",
    }),
    column("grade_given", GIVEN, "grade", 250, { grade: true, formula: gradeWords("[rise]", units) }),
    column("grade_u", GIVEN, "± U 95 %, edge inside", 190, {
      formula: uncertaintyInWords(
        { rise: "[rise]", u: "[u]", more: "0", call: (show) => grade("[rise]", show, units) },
        '([u]="")+(LEFT([grade_given],3)="no ")>0',
        units,
      ),
    }),
    column("temp_from", OVER_SPAN, "corrected, at from", 84, {
      ...degrees,
      formula: spanned(orEmpty(hot(units, "whatif_from"))),
    }),
    column("temp_to", OVER_SPAN, "corrected, at to", 84, {
      ...degrees,
      formula: spanned(orEmpty(hot(units, "whatif_to"))),
    }),
    column("temp_low", OVER_SPAN, "corrected, lowest", 84, {
      ...degrees,
      formula: spanned(extremeOf(hot(units, SPAN), "lowest")),
      note: "Of eleven steps from … to.",
    }),
    column("temp_high", OVER_SPAN, "corrected, highest", 84, {
      ...degrees,
      formula: spanned(extremeOf(hot(units, SPAN), "highest")),
    }),
    column("spread", OVER_SPAN, "spread", 64, {
      ...kelvin,
      formula: '=IF(ISNUMBER([temp_low])*ISNUMBER([temp_high]),[temp_high]-[temp_low],"")',
      note: "Highest less lowest corrected temperature.",
    }),
    column("rise_low", OVER_SPAN, "rise, lowest", 64, {
      ...kelvin,
      formula: spanned(`IF([over_used]="","",${extremeOf(rise(SPAN), "lowest")})`),
    }),
    column("rise_high", OVER_SPAN, "rise, highest", 64, {
      ...kelvin,
      formula: spanned(`IF([over_used]="","",${extremeOf(rise(SPAN), "highest")})`),
    }),
    column("grade_span", OVER_SPAN, "grade", 190, {
      formula: gradeOverSpan(units),
      note: "Of the lowest and of the highest rise: the same throughout, or what it depends on.",
    }),
    ...flipColumns(units),
    ...loadColumns(units),
    ...usedColumns(),
    column("over_used", WORKING, "over", 76, {
      folded: true,
      formula: ifRead(`IF([over]<>"",[over],${given("whatif_over")})`),
    }),
    column("air_used", WORKING, "surrounding_air", 84, {
      ...degrees,
      folded: true,
      formula: ifRead(`IF([surrounding_air]<>"",[surrounding_air],${given("whatif_surrounding_air")})`),
    }),
    column("temp_reference", WORKING, "reference, corrected", 92, {
      ...degrees,
      folded: true,
      formula: `=IF([reference_apparent]="","",${orEmpty(corrected("[reference_apparent]", units))})`,
    }),
    column("answered", WORKING, "steps answered", 76, {
      folded: true,
      format: "0",
      formula: spanned(`MMULT(ISNUMBER(${hot(units, SPAN)})*1,SEQUENCE(11,1,1,0))`),
    }),
  ];
}

function usedColumns(): Computed[] {
  return SETTINGS.map(({ key, measure, format }: Setting) => ({
    key: `${key}_used`,
    header: `${key}, used`,
    group: WORKING,
    width: 92,
    folded: true,
    format,
    align: "right",
    ...(measure === undefined ? {} : { measure }),
    formula: ifRead(`IF([${key}]<>"",[${key}],${given(`whatif_${key}`)})`),
  }));
}

/** "2 of 4: …", "no grade: colder than its reference". */
export function gradeWords(rise: string, units: SheetUnits): string {
  return (
    `=IF(ISNUMBER(${rise}),IFERROR(${grade(rise, "grade", units)}&" of 4: "&${grade(rise, "words", units)},` +
    `IF(${rise}<0,"no grade: colder than its reference","no grade: the criteria have none for "&[over_used])),"")`
  );
}

function gradeOverSpan(units: SheetUnits): string {
  const of = (rise: string): string =>
    `IFERROR(${grade(rise, "grade", units)},IF(${rise}<0,"colder than its reference","none"))`;
  return (
    "=IF(ISNUMBER([rise_low])*ISNUMBER([rise_high])," +
    `LET(low,${of("[rise_low]")},high,${of("[rise_high]")},` +
    'IF(ISNUMBER(low)*ISNUMBER(high),IF(low=high,"same throughout: "&low&" of 4","depends: "&low&" to "&high&" of 4"),' +
    'IF(ISNUMBER(high),"depends: "&low&" to "&high&" of 4","no grade: "&high))),"")'
  );
}

function remarks(): string {
  const missing = (condition: string, words: string): string => clause(condition, `"needs ${words}"`);
  const read = '([apparent]<>"")';
  const lacks = (key: string): string => `([${key}]="")`;
  const below1 = (key: string): string => `(ISNUMBER([${key}])*([${key}]<1))`;
  const typed = ["item", "reference_apparent", "over", "load", "reference_load"].map((key) => `([${key}]<>"")`);
  return joined([
    missing(`(1-${read})*((${typed.join("+")})>0)`, "a reading"),
    missing(`${read}*(1-ISNUMBER([apparent]))`, "a number as its reading"),
    missing(`${read}*${lacks("emissivity_used")}`, "emissivity"),
    missing(`${read}*${lacks("reflected_used")}`, "reflected"),
    missing(
      `${read}*((${below1("air_transmission_used")}+${below1("outer_air_transmission_used")})>0)*${lacks("air_temp_used")}`,
      "air_temp",
    ),
    missing(`${read}*${below1("window_transmission_used")}*${lacks("window_temp_used")}`, "window_temp"),
    missing(
      `${read}*(ISNUMBER([window_reflectance_used])*([window_reflectance_used]>0))*${lacks("outer_reflected_used")}`,
      "outer_reflected",
    ),
    missing(`([over_used]="similar")*${lacks("reference_apparent")}`, "the similar component's reading"),
    missing(`([over_used]="ambient")*${lacks("air_used")}`, "surrounding air"),
    missing(`${read}*([reference_apparent]<>"")*${lacks("over_used")}`, "over: similar or ambient"),
    clause(
      `ISNUMBER([apparent])*([temp]="")*([emissivity_used]<>"")*([reflected_used]<>"")`,
      '"no answer at the given settings: a setting is beyond what can be, or the surroundings alone give more than was read"',
    ),
    clause(
      `ISNUMBER([temp])*([over_used]="similar")*ISNUMBER([reference_apparent])*([temp_reference]="")`,
      '"no answer for the similar component"',
    ),
    clause(`${read}*(whatif_varied<>"")*(1-${KNOWN})`, '"Settings: nothing is called "&whatif_varied'),
    clause(`${read}*${KNOWN}*(1-ISNUMBER(whatif_from)*ISNUMBER(whatif_to))`, '"needs from and to in Settings"'),
    clause(
      'ISNUMBER([answered])*([answered]<11)*([temp]<>"")',
      '"over the span an answer at "&[answered]&" of 11 steps only"',
    ),
  ]);
}
