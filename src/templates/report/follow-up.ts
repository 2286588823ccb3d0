/** What came of the exceptions: as found, the repair, as left at the load of the as-found, and what that shows. */
import type { TableSheet } from "../contract.js";
import type { Computed } from "../route/columns.js";
import { clause, fromAssets, given, joined } from "../route/formula.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { tableSheet } from "../route/sheets.js";
import { degrees, type FollowUp, followUpColumns, kelvin } from "./follow-up-typed.js";
import { heading, type ReportHead } from "./head.js";
import { type FollowUpKind, named, type ReportKind } from "./kind.js";

export function followUpSheet(
  kind: ReportKind,
  head: ReportHead,
  rows: readonly FollowUp[],
  units: SheetUnits,
): TableSheet {
  return tableSheet(
    "Follow-up",
    "FollowUp",
    [
      ...heading("Follow-up", head),
      "Comparing shows no more than that a rise is smaller: whether a repair is good decides who is responsible for it.",
    ],
    followUpColumns(kind.followUp),
    rows,
    units,
    { computed: computedColumns(kind, units), frozenColumns: 1 },
  );
}

function computedColumns(whole: ReportKind, units: SheetUnits): Computed[] {
  const kind = whole.followUp;
  const COMPARED = "As left, compared";
  const working = { group: "Working", width: 76, folded: true } as const;
  const difference = { ...kelvin, align: "right" } as const;
  const columns: Computed[] = [
    { key: "location", group: "Looked up", width: 140, formula: `=${fromAssets("location", '""', '"not in Assets"')}` },
    { key: "component", group: "Looked up", width: 220, formula: `=${named(whole, (key) => fromAssets(key))}` },
    corrected("t_hot", "left_hot", units),
    corrected("t_reference", "left_reference", units),
    {
      key: "left_rise",
      header: "rise as left",
      group: COMPARED,
      width: 76,
      ...difference,
      formula: riseAsLeft(kind),
    },
    {
      key: "load_kept",
      header: kind.projects ? "load, of that found" : "load, less that found",
      group: COMPARED,
      width: 84,
      ...(kind.projects ? { format: "0 %" } : { format: "0", unit: "points" }),
      align: "right",
      formula: `=IF(ISNUMBER([left_load])*ISNUMBER([load_found]),${kind.projects ? 'IF([load_found]>0,[left_load]/[load_found],"")' : "[left_load]-[load_found]"},"")`,
    },
    {
      key: "incomparable",
      ...working,
      width: 120,
      note: "Why the two rises cannot be compared.",
      formula: incomparable(kind),
    },
    {
      key: "left_at_load",
      header: "rise as left, at the load found",
      group: COMPARED,
      width: 96,
      ...difference,
      note: kind.projects
        ? "By the exponent of Job, low or high, that leaves more of it. None below the least load of Job."
        : "As it is: of a machine's load nothing is projected.",
      formula: atLoadFound(kind),
    },
    {
      key: "change",
      group: COMPARED,
      width: 72,
      ...difference,
      note: "Rise as left, at the load found, less the rise found.",
      formula: '=IF(ISNUMBER([left_at_load])*ISNUMBER([rise_found]),[left_at_load]-[rise_found],"")',
    },
    {
      key: "change_u",
      header: "± U of the change",
      group: COMPARED,
      width: 84,
      ...difference,
      note: "Root of the sum of both squares (95 %); that of the rise as left grows with it when it is brought to the load found.",
      formula: changeU(kind, units),
    },
    { key: "verdict", header: "what it shows", group: COMPARED, width: 330, formula: verdict() },
    {
      key: "closed",
      group: "Closed",
      width: 200,
      header: "closed, yes or no",
      formula: `=IF([asset_id]="","",IF([closed_on]="","no","yes"&IF(LEFT([verdict],6)="cooler","",": a smaller rise is not shown")))`,
    },
    {
      key: "days_open",
      header: "days open",
      group: "Closed",
      width: 64,
      unit: "d",
      format: "0",
      align: "right",
      note: "From the day found to the day closed, else to the survey date of Job.",
      formula:
        '=LET(end,IF(ISNUMBER([closed_on]),[closed_on],IF(job_date="","",job_date)),IF(ISNUMBER([found_on])*ISNUMBER(end),IF(end>=[found_on],end-[found_on],"found after that day"),""))',
    },
  ];
  return columns.sort((one, other) => Number(one.group === "Working") - Number(other.group === "Working"));
}

function corrected(key: string, reading: string, units: SheetUnits): Computed {
  return {
    key,
    group: "Working",
    width: 76,
    folded: true,
    ...degrees,
    formula:
      `=IF(ISNUMBER([${reading}]),IF([left_emissivity]="",[${reading}],` +
      `IFERROR(GREY.CORRECTED([${reading}],[left_emissivity],IF([left_reflected]<>"",[left_reflected],${given("job_reflected")}),,,,,,,,job_band,${units.argument}),"")),"")`,
  };
}

const isOver = (reference: string): string => `([over]="${reference}")`;

function riseAsLeft({ references, air }: FollowUpKind): string {
  const overAir = 'IF(ISNUMBER([t_hot])*ISNUMBER([left_air]),[t_hot]-[left_air],"")';
  const rest = 'IF(ISNUMBER([t_hot])*ISNUMBER([t_reference]),[t_hot]-[t_reference],"")';
  const baseline = `LET(was,${fromAssets("baseline_rise")},over_air,${overAir},IF(ISNUMBER(was)*ISNUMBER(over_air),over_air-was,""))`;
  const others = references.includes("baseline") ? `IF(${isOver("baseline")},${baseline},${rest})` : rest;
  return `=IF([over]="","",IF(${isOver(air)},${overAir},${others}))`;
}

/** Needed first, then what speaks against comparing at all. */
function incomparable({ projects, air, references }: FollowUpKind): string {
  const missing = (condition: string, words: string): string => clause(condition, `"${words}"`, ", ");
  const overAir = [air, ...references.filter((one) => one === "baseline")].map(isOver);
  // A sum, since a truth alone stands above every number.
  const withAir = `(${overAir.join("+")}+0)`;
  const needs = joined(
    [
      missing("1-ISNUMBER([rise_found])", "rise found"),
      missing('[over]=""', "over"),
      missing("1-ISNUMBER([load_found])", "load found"),
      missing("1-ISNUMBER([left_load])", "load as left"),
      missing(`([over]<>"")*(${withAir}=0)*(1-ISNUMBER([left_reference]))`, "reference as left"),
      missing(`(${withAir}>0)*(1-ISNUMBER([left_air]))`, "air as left"),
    ],
    ", ",
  ).slice(1);
  const share = "[load_kept]";
  const load = projects
    ? `IF(ISNUMBER(${share}),IF(${share}<job_minimum_load,"not comparable: load "&TEXT(${share},"0 %")&" of "&[load_found]&" A",""),"not comparable: load found is 0")`
    : `IF(ISNUMBER(${share}),IF(ABS(${share})>job_load_apart,"not comparable: load "&[left_load]&" % against "&[load_found]&" %",""),"")`;
  const apart = projects
    ? 'IF(ISNUMBER([left_reference_load])*ISNUMBER([left_load]),IF(ABS([left_load]-[left_reference_load])>0.1*[left_reference_load],"not comparable: "&[left_load]&" A against "&[left_reference_load]&" A of its reference",""),"")'
    : 'IF(ISNUMBER([left_reference_load])*ISNUMBER([left_load]),IF(ABS([left_load]-[left_reference_load])>job_load_apart,"not comparable: load "&[left_load]&" % against "&[left_reference_load]&" % of its reference",""),"")';
  return (
    `=LET(needs,${needs},load,${load},apart,${apart},IF([asset_id]="","",IF([repair_date]="","no repair noted yet",IF([left_hot]="","as left not measured",` +
    'IF(needs<>"","needs: "&needs,IF(load<>"",load,IF(apart<>"",apart,IF([left_rise]="","no answer: check the readings","")))))))) '.trimEnd()
  );
}

function atLoadFound({ projects }: FollowUpKind): string {
  const at = (exponent: string): string =>
    `IFERROR(GREY.RISE_AT_LOAD([left_rise],[left_load],[load_found],${exponent},job_minimum_load),"")`;
  const fits = '([incomparable]="")*ISNUMBER([left_rise])';
  if (!projects) return `=IF(${fits},[left_rise],"")`;
  return (
    `=IF(${fits},IF([left_rise]<=0,[left_rise],LET(low,${at("job_exponent_low")},high,${at("job_exponent_high")},` +
    'IF(ISNUMBER(low)*ISNUMBER(high),IF(low>high,low,high),""))),"")'
  );
}

/** Usual figures at an emissivity of 0.85, where nothing was typed: in one image, over air by thermometer (trade.md 5.6). */
const USUAL = { similar: 1.4, air: 3.9 } as const;

function changeU({ air, references }: FollowUpKind, units: SheetUnits): string {
  const usualOf = (typed: string, metric: number): string =>
    `IF(ISNUMBER(${typed}),${typed},${units.from("difference", metric)})`;
  const overAir = usualOf("job_u_air_typed", USUAL.air);
  const overSimilar = usualOf("job_u_similar_typed", USUAL.similar);
  const baseline = references.includes("baseline")
    ? `IF(${isOver("baseline")},${overAir}*SQRT(2),${overSimilar})`
    : overSimilar;
  const usual = `IF(${isOver(air)},${overAir},${baseline})`;
  return (
    `=IF([change]="","",LET(usual,${usual},found,IF(ISNUMBER([u_found]),[u_found],usual),left,IF(ISNUMBER([u_left]),[u_left],usual),` +
    "grown,IF([left_rise]>0,[left_at_load]/[left_rise],1),SQRT(found*found+left*grown*left*grown)))"
  );
}

function verdict(): string {
  return (
    '=IF([asset_id]="","",IF([incomparable]<>"",[incomparable],IF([change]="","no answer: check the readings",' +
    'IF([change]<-[change_u],"cooler than found beyond the uncertainty",IF([change]>[change_u],"hotter than found beyond the uncertainty",' +
    '"not shown: the change lies within the uncertainty")))))'
  );
}
