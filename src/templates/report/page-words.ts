/** The words of the pages, a row an exception: worked out once over all of them, so that a page only looks them up. */
import type { SheetUnits } from "../route/sheet-units.js";
import { gradeShown, type ReportKind, text } from "./kind.js";

export interface PageWord {
  readonly key: string;
  readonly label: string;
  /** Over columns of Readings. */
  readonly shown: string;
}

/** A block of words: one spill, and the defined name that it is looked up by. */
export interface PageWords {
  readonly name: string;
  readonly words: readonly PageWord[];
}

/** Several blocks, since one formula would be longer than Excel takes. */
export function pageWords(kind: ReportKind, units: SheetUnits): readonly [PageWords, ...PageWords[]] {
  const heads = kind.readings.columns.map((one) => ({ key: `head_${one}`, label: "", shown: constant(one) }));
  const readings = kind.readings.rows.flatMap(({ label, cells }, row) =>
    cells.map((cell, column) => ({
      key: `reading_${row}_${column}`,
      label: `${label}, ${kind.readings.columns[column] ?? ""}`,
      shown: text(cell),
    })),
  );
  const facts = kind.facts(units).map(({ label, shown }, row) => ({ key: `fact_${row}`, label, shown }));
  const said = (key: string): string => `IF([${key}]="","not said",[${key}])`;
  const words: PageWord[] = [
    {
      key: "title",
      label: "title",
      shown:
        '[asset_id]&IF([location]="","",", "&[location])&IF([component]="","",", "&[component])&IF(ISNUMBER([time]),", "&TEXT([time],"hh:mm"),"")',
    },
    { key: "grade", label: "grade as found", shown: gradeShown },
    { key: "judged", label: "judged by", shown: 'IF([judged_by]="","nothing is graded",[judged_by])' },
    {
      key: "say",
      label: "the criteria say",
      shown: 'IF([criteria_action]="","","the criteria say: "&[criteria_action])',
    },
    // Label and number, label and number, as they stand beside one another.
    { key: "pictures", label: "", shown: constant("thermogram") },
    { key: "thermogram", label: "thermogram", shown: 'IF([thermal_image]="","no number",[thermal_image])' },
    { key: "photo_label", label: "", shown: constant("photo") },
    { key: "photo", label: "photo", shown: 'IF([photo]="","no number",[photo])' },
    { key: "against", label: "speaks against it", shown: 'IF([remarks]="","nothing found",[remarks])' },
    { key: "cause", label: "probable cause", shown: said("cause") },
    { key: "action", label: "action", shown: said("action") },
    { key: "told", label: "told to", shown: said("told_to") },
    { key: "due", label: "due", shown: `IF(ISNUMBER([due]),TEXT([due],"yyyy-mm-dd"),${said("due")})` },
  ];
  return [
    { name: "exception_words", words },
    { name: "exception_numbers", words: [...heads, ...readings] },
    {
      name: "exception_facts",
      words: [...facts, { key: "settings", label: "settings used", shown: kind.settings(units) }],
    },
  ];
}

/** The same word in every row: a single one would fill the first only. */
function constant(word: string): string {
  return `IF([exception_rank]="","","${word}")`;
}
