/** What is typed and cannot be: no number, beyond what there is, beyond the camera's range, not among the choices. */
import type { Column, Computed } from "./columns.js";
import { clause, joined, PHASES } from "./formula.js";
import type { SheetUnits } from "./sheet-units.js";
import { AIR, CURRENT, DISTANCE, EMISSIVITY, HUMIDITY, type Range, READING, REFLECTED, WINDOW } from "./ranges.js";
import { READING_COLUMNS } from "./typed.js";

const fits = (reference: string, [low, high]: Range): string =>
  `ISNUMBER(${reference})*(${reference}>=${low})*(${reference}<=${high})`;

export const inUnits = ([low, high]: Range, units: SheetUnits): Range => [
  units.from("temperature", low),
  units.from("temperature", high),
];

/** How many readings of the row are no temperatures: then the other phases alone say nothing about the hottest. */
export function unreadable(units: SheetUnits, readings: readonly string[] = PHASES): string {
  const range = inUnits(READING, units);
  return readings.map((phase) => `([${phase}]<>"")*(1-${fits(`[${phase}]`, range)})`).join("+");
}

/** The readings that are no temperatures, each with what to do. */
export function wrongReadings(units: SheetUnits, readings: readonly string[] = PHASES): string[] {
  return readings.map((phase) => wrong(`[${phase}]`, inUnits(READING, units), `"${phase}"`, { atEnd: true }));
}

/** Hard limits of what can be typed, each told under the name it was typed under; and words that are no choice of their column. */
export function outOfRange(units: SheetUnits): string[] {
  const air = inUnits(AIR, units);
  return [
    clause('[wrong_readings]<>""', "[wrong_readings]"),
    ...PHASES.map((phase) => wrong(`[amps_${phase}]`, CURRENT, `"amps_${phase}"`)),
    wrong("[surrounding_air]", air, '"surrounding_air"'),
    wrong("[room_air]", air, '"room_air"'),
    ...wrongSettings(units),
    notAChoice("reading_is"),
    notAChoice("air_taken"),
  ];
}

/** What Job holds for the rows that have a surface and nothing of their own. */
const ofJob = (name: string): string => `IF(([${name}]="")*([emissivity_used]<>""),job_${name},"")`;

/** Settings of the row, or of wherever they were looked up, that cannot be. */
export function wrongSettings(units: SheetUnits): string[] {
  const distance = (metric: number): number => units.from("distance", metric);
  const air = inUnits(AIR, units);
  return [
    wrong("[emissivity_used]", EMISSIVITY, 'IF([emissivity]<>"","emissivity","emissivity in Surfaces")'),
    wrong(
      "[reflected_used]",
      inUnits(REFLECTED, units),
      'IF([reflected]<>"","reflected",IF([outdoors]=1,"reflected outdoors in Job","reflected in Job"))',
    ),
    // The surrounding air stands for the path's where none is typed, and has been told already.
    wrong("[path_air]", air, '"path_air"'),
    wrong('IF([path_air]&[surrounding_air]="",[path_air_used],"")', air, '"air between camera and target in Job"'),
    wrong("[distance]", [distance(DISTANCE[0]), distance(DISTANCE[1])], '"distance"'),
    wrong("[humidity]", HUMIDITY, '"humidity"', { perCent: true }),
    // Those of Job are told where they are used: else a fraction for per cent would only leave the air without an answer.
    wrong(ofJob("distance"), [distance(DISTANCE[0]), distance(DISTANCE[1])], '"distance in Job"'),
    wrong(ofJob("humidity"), HUMIDITY, '"humidity (%) in Job"', { perCent: true }),
    wrong("[window_temp]", inUnits(WINDOW, units), '"window_temp"'),
  ];
}

/** Text is told as such: a reading beyond the camera's range has a column of its own to say so in. */
export function wrong(value: string, range: Range, name: string, { atEnd = false, perCent = false } = {}): string {
  // "> 150,5 °C": what stands before the unit, with a point.
  const rest = 'TRIM(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(MID(value,2,20),"=",""),"°"," "),",","."))';
  const digits = `LEFT(${rest},FIND(" ",${rest}&" ")-1)`;
  const beyond = (signs: string, word: string): string =>
    `IF(ISNUMBER(FIND(LEFT(value,1),"${signs}")),"type "&${digits}&" and set reading_is to ${word}",`;
  const text = '"a number with a point, nothing else"';
  const fraction = perCent ? '&IF((value>0)*(value<1),", per cent and no fraction: "&ROUND(100*value,1)&"?","")' : "";
  const told = atEnd ? `${beyond(">≥", "at least")}${beyond("<≤", "at most")}${text}))` : text;
  return (
    `LET(value,${value},IF(value="","",IF(${fits("value", range)},"",` +
    `${name}&" "&value&": "&IF(ISNUMBER(value),"a number from ${range[0]} to ${range[1]}"${fraction},${told})&"; ")))`
  );
}

/** A time of day is a part of a day; 9.20 for 9:20 is a number like any other. */
function notATime(key: string): string {
  const isTime = `ISNUMBER([${key}])*([${key}]>=0)*([${key}]<1)`;
  return `IF([${key}]="","",IF(${isTime},"","${key} "&[${key}]&" is no time of day: type it with a colon, as 9:20; "))`;
}

/** An asset that an earlier row has too: meant, where it was seen from two sides, or a row typed twice. */
function repeatedAsset(): string {
  const isAbove = "IFERROR(XMATCH([asset_id],[asset_id])<SEQUENCE(ROWS([asset_id])),FALSE)";
  return clause(`([asset_id]<>"")*${isAbove}`, '[asset_id]&" stands in a row above as well"');
}

/** What was typed and may well be a slip, though no grade hangs on it. */
export function doubtfulTyping(times: readonly string[]): Computed {
  return {
    key: "typing",
    group: "Working",
    width: 120,
    folded: true,
    note: "What was typed and may be a slip.",
    formula: joined([...times.map(notATime), repeatedAsset()]),
  };
}

/** Words of a column with choices that are none of them. */
export function notAChoice(key: string, columns: readonly Column[] = READING_COLUMNS): string {
  const { choices = [] } = columns.find((one) => one.key === key) ?? {};
  const isNone = choices.map((choice) => `([${key}]<>"${choice}")`).join("*");
  return clause(`([${key}]<>"")*${isNone}`, `"${key} "&[${key}]&": one of ${choices.join(", ")}"`);
}

/**
 * The camera's range in Job, for readings as they are shown: at its end stands what is at least, or at most, so much.
 * What the camera has corrected may lie beyond, since its range is one of apparent temperatures.
 */
export function beyondCamera(units: SheetUnits, readings: readonly string[] = PHASES): string[] {
  const count = (end: string, comparison: string): string =>
    `ISNUMBER(job_range_${end})*(${readings.map((phase) => `ISNUMBER([${phase}])*([${phase}]${comparison}job_range_${end})`).join("+")})`;
  const apparent = '(job_readings_are="apparent")';
  const range =
    'IF(job_range_from="","up to "&job_range_to,IF(job_range_to="","from "&job_range_from,job_range_from&" to "&job_range_to))';
  const atEnd = (end: string, word: string): string =>
    clause(
      `${apparent}*([reading_is]<>"${word}")*(${count(end, "=")})`,
      `"at the end of the camera's range: set reading_is to ${word}"`,
    );
  return [
    clause(
      `${apparent}*(${count("from", "<")}+${count("to", ">")})`,
      `"reading outside the camera's range "&${range}&" ${units.label("temperature")}"`,
    ),
    atEnd("to", "at least"),
    atEnd("from", "at most"),
  ];
}
