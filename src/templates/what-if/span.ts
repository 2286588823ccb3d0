/** One row of Readings step by step over the span: a table to read, to print and to draw. */
import type { TableSheet } from "../contract.js";
import { type Column, column, type Computed } from "../route/columns.js";
import { uncertaintyInWords } from "../route/grade.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { tableSheet } from "../route/sheets.js";
import { grade, hot, reference, riseUncertainty, SPANNED, STEPS } from "./calls.js";
import { gradeWords } from "./computed.js";
import { RELATION } from "./form.js";
import { SETTINGS } from "./settings.js";

const degrees = { measure: "temperature", format: "0.0", align: "right" } as const;
const kelvin = { measure: "difference", format: "0.0", align: "right" } as const;

const SHARE_COLUMNS: readonly Column<"share">[] = [
  column("share", "Step", 72, {
    header: "of the span",
    range: [0, 1],
    format: "0 %",
    note: "0 is from, 1 is to. More rows make finer steps.",
  }),
];

/** Of the chosen row, "" where it is empty. */
const chosen = (key: string): string => `LET(cell,INDEX(WhatIf[${key}],whatif_row),IF(cell="","",cell))`;
const isRead = `IFERROR(${chosen("apparent")}<>"",FALSE)`;
const ifRead = (rest: string): string => `=IF([share]="","",IF(${isRead},${rest},""))`;

export function spanSheet(heading: readonly string[], units: SheetUnits): TableSheet {
  return tableSheet(
    "Span",
    "SpanSteps",
    [
      ...heading,
      `="Row "&whatif_row&": "&IFERROR(${chosen("item")},"")&IF(${SPANNED},". "&whatif_varied&" from "&whatif_from&" to "&whatif_to&" ("&whatif_span_unit&")",". Settings hold no span yet")`,
    ],
    SHARE_COLUMNS,
    Array.from({ length: STEPS }, (_, step) => ({ share: step / (STEPS - 1) })),
    units,
    { computed: computed(units), frozenColumns: 1 },
  );
}

function computed(units: SheetUnits): Computed[] {
  const RESULT = "Result";
  const working = (key: string, formula: string): Computed => ({
    key,
    header: key.replace("_used", ", used"),
    group: "Settings used",
    width: 92,
    folded: true,
    formula: ifRead(formula),
  });
  const varied = (setting: string, own: string): string => `IF(whatif_varied="${setting}",[value],${chosen(own)})`;
  return [
    {
      key: "value",
      header: "varied setting",
      group: "Step",
      width: 96,
      align: "right",
      format: "General",
      formula: `=IF([share]="","",IF(${SPANNED},IF(ISNUMBER([share]),ROUND(whatif_from+(whatif_to-whatif_from)*[share],6),""),""))`,
    },
    {
      key: "temp",
      header: "corrected",
      group: RESULT,
      width: 84,
      ...degrees,
      formula: ifRead(`IF([value]="","",IFERROR(${hot(units)},"no answer"))`),
    },
    {
      key: "rise",
      group: RESULT,
      width: 72,
      ...kelvin,
      formula: ifRead(`IF(([value]="")+([over_used]="")>0,"",IFERROR(${hot(units)}-${reference(units)},"no answer"))`),
    },
    {
      key: "u",
      header: "± U of the rise",
      group: RESULT,
      width: 84,
      ...kelvin,
      note: "Expanded (95 %), by the half-widths of Settings.",
      formula: `=IF(ISNUMBER([rise]),IFERROR(${riseUncertainty(RELATION, units)},""),"")`,
    },
    { key: "grade", group: RESULT, width: 260, grade: true, formula: gradeWords("[rise]", units) },
    {
      key: "grade_u",
      header: "± U 95 %, edge inside",
      group: RESULT,
      width: 200,
      formula: uncertaintyInWords(
        { rise: "[rise]", u: "[u]", more: "0", call: (show) => grade("[rise]", show, units) },
        '([u]="")+(LEFT([grade],3)="no ")>0',
        units,
      ),
    },
    working("apparent", varied("apparent", "apparent")),
    working("reference_apparent", chosen("reference_apparent")),
    ...SETTINGS.map(({ key }) => working(`${key}_used`, varied(key, `${key}_used`))),
    working("over_used", chosen("over_used")),
    working("air_used", chosen("air_used")),
  ];
}
