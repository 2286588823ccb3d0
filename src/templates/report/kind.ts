/** What the reports of the routes differ in; everything else about them is said once. */
import type { SheetUnits } from "../route/sheet-units.js";

export interface ReportKind {
  /** One word for the rows of Assets. */
  readonly item: string;
  /** The columns of Assets that say what it is. */
  readonly named: readonly string[];
  /** The rise that was graded, or the one over air: a number a row or "". Also what equal grades are ordered by. */
  readonly riseJudged: string;
  /** The same in words, with what it is over. */
  readonly judged: (units: SheetUnits) => string;
  /** Readings side by side on a page. */
  readonly readings: ReadingsTable;
  /** Lines under them. */
  readonly facts: (units: SheetUnits) => readonly Fact[];
  /** Load in a word or two, for the list. */
  readonly load: string;
  /** The grade at full load, for the list. */
  readonly projected: string;
  readonly settings: (units: SheetUnits) => string;
  /** Titles of the cautions that every print of exceptions has. */
  readonly cautions: readonly string[];
  readonly followUp: FollowUpKind;
}

export interface ReadingsTable {
  readonly columns: readonly string[];
  readonly rows: readonly ReadingsRow[];
}

export interface ReadingsRow {
  readonly label: string;
  readonly unit: (units: SheetUnits) => string;
  /** Numbers are shown with one place, texts as they are. */
  readonly cells: readonly string[];
}

export interface Fact {
  readonly label: string;
  readonly shown: string;
}

/** How a reading after the repair is compared with the one before. */
export interface FollowUpKind {
  readonly references: readonly string[];
  /** The reference that is the air. */
  readonly air: string;
  readonly loadUnit: string;
  /** Currents are brought to one another; of a machine's load nothing is projected. */
  readonly projects: boolean;
}

/** What an asset is, of the columns as `cell` gives them. */
export function named({ named: columns }: ReportKind, cell: (key: string) => string): string {
  const [first = "", ...rest] = columns.map(cell);
  return rest.reduce((before, next) => `${before}&IF(${next}="","",", "&${next})`, `${first}&""`);
}

/** Nothing at all would look calm. */
export const gradeShown = 'IF([grade_found]="","no grade: nothing was read",[grade_found])';

/** A number in words, or that it is not known. */
export function known(reference: string, format: string): string {
  return `IF(ISNUMBER(${reference}),TEXT(${reference},"${format}"),IF(${reference}="","not known",${reference}))`;
}

/** A number as text with one place; words and "" as they are. */
export function text(reference: string, format = "0.0"): string {
  return `IF(ISNUMBER(${reference}),TEXT(${reference},"${format}"),${reference}&"")`;
}

/** What both routes correct with. */
export function settingsShown(units: SheetUnits): string {
  const degrees = units.label("temperature");
  const orJob = (key: string): string => `IF([${key}]="",job_${key},[${key}])`;
  const parts = [
    `"emissivity "&${known("[emissivity_used]", "0.00")}`,
    `"; reflected "&${known("[reflected_used]", "0.0")}&" ${degrees}"`,
    `"; distance "&TEXT(${orJob("distance")},"0.0")&" ${units.label("distance")}"`,
    `"; humidity "&TEXT(${orJob("humidity")},"0")&" %"`,
    `"; air on the path "&${known("[path_air_used]", "0.0")}&" ${degrees}"`,
    `"; air transmission "&${known("[air_transmission]", "0.000")}`,
    `IF([window]="","","; window "&[window]&": transmission "&${known("[window_transmission]", "0.00")}&", at "&${known("[window_temp]", "0.0")}&" ${degrees}")`,
    `"; band "&job_band&" µm; readings "&job_readings_are`,
  ];
  return parts.join("&");
}
