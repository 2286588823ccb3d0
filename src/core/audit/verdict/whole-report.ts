/** What only the rows together show. */
import { CHANCE_SPAN } from "../judge.js";
import { explainReport, isBeyondChance } from "../report.js";
import type { RowAudit } from "./audit.js";
import type { Claim, QuantityStated } from "./claim.js";
import { isAirAlone, type NumberVerdict } from "./number.js";
import { inOurs, gradeFor, type Numbering, NUMBERINGS } from "./grade.js";

interface SlipFinding {
  readonly id: "slip";
  readonly slip: string;
  readonly rows: number;
  /** Rows in which it would show. */
  readonly of: number;
}

export type ReportFinding =
  | SlipFinding
  | { readonly id: "same-emissivity"; readonly emissivity: number; readonly rows: number; readonly materials: number }
  | { readonly id: "reflected-is-air"; readonly rows: number }
  | { readonly id: "round-loads"; readonly rows: number }
  | { readonly id: "full-loads"; readonly rows: number }
  | { readonly id: "same-image"; readonly image: string; readonly rows: readonly number[] }
  | { readonly id: "before-job"; readonly rows: readonly number[] }
  | { readonly id: "calibration-out"; readonly rows: readonly number[] }
  | { readonly id: "numbering"; readonly numbering: Numbering; readonly rows: number };

/** Rows from which what they have alike is no chance, and materials over which one emissivity cannot be right. */
const MANY = 10;
const SEVERAL = 3;
const HIGH_EMISSIVITY = 0.9;
const ALIKE = 0.05;
/** Rows that a slip explains before it is one of the report and not of a row. */
const LEAST_OF_SLIP = 2;

export interface ReportDays {
  readonly job?: number;
  readonly calibratedUntil?: number;
}

export function findingsOf(
  rows: readonly RowAudit[],
  numbering: Numbering | undefined,
  days: ReportDays,
): ReportFinding[] {
  const claims = rows.map(({ claim }) => claim);
  return [
    ...slipsOver(rows),
    ...sameEmissivity(claims),
    ...reflectedAir(claims),
    ...loads(claims),
    ...images(claims),
    ...dates(claims, days),
    ...otherNumbering(rows, numbering),
  ];
}

/** Slips by the rows they explain, where those are more than chance: a slip of one row may be an accident. */
function slipsOver(rows: readonly RowAudit[]): SlipFinding[] {
  const explanations = rows.flatMap(explanationOf);
  const ofTemps = (explanations.length === 0 ? [] : explainReport(explanations))
    .filter(({ key, explained, sure }) => key !== "as-stated" && explained >= LEAST_OF_SLIP && sure)
    .map(({ key, explained, rows: shown }) => ({ id: "slip" as const, slip: key, rows: explained, of: shown }));
  return [...ofTemps, ...ofRises(rows, "rise"), ...ofRises(rows, "rise at load")].sort((a, b) => b.rows - a.rows);
}

/** Slips that a rise may have: those that are looked for at most. */
const SLIPS_OF_RISE = 20;

function ofRises(rows: readonly RowAudit[], what: QuantityStated): SlipFinding[] {
  const judged = rows.flatMap(({ lines }) => {
    const number = lines.find((line) => line.what === what)?.number;
    return number !== undefined && JUDGED.has(number.kind) ? [number] : [];
  });
  const wrong = judged.filter(({ kind }) => kind !== "reproduced");
  const chance = Math.min(1, mean(wrong.map(({ tolerance = 0 }) => tolerance)) / CHANCE_SPAN);
  const slips = wrong.flatMap((number) => [...new Set(number.slips.map(({ key }) => key))]);
  return [...groups(slips, (key) => key)]
    .map(([slip, own]) => ({ id: "slip" as const, slip, rows: own.length, of: judged.length }))
    .filter(
      ({ rows: explained }) =>
        explained >= LEAST_OF_SLIP && isBeyondChance(explained, wrong.length, SLIPS_OF_RISE, chance),
    );
}

/** Numbers that are right or wrong: of others something is missing, and any slip would fit. */
const JUDGED: ReadonlySet<NumberVerdict["kind"]> = new Set(["reproduced", "slips", "unexplained"]);

const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

/** Of a temperature that is right or wrong by what the report prints. */
function explanationOf({ lines }: RowAudit): Required<NumberVerdict>["explanation"][] {
  const number = lines.find(({ what }) => what === "temperature")?.number;
  if (number?.explanation === undefined || !JUDGED.has(number.kind) || !isAirAlone(number.missing)) return [];
  return [number.explanation];
}

function sameEmissivity(claims: readonly Claim[]): ReportFinding[] {
  const with_ = claims.filter(
    ({ settings, statedTemp, statedRise }) =>
      settings.emissivity !== undefined && (statedTemp ?? statedRise) !== undefined,
  );
  return [...groups(with_, ({ settings }) => settings.emissivity!)].flatMap(([emissivity, own]) => {
    const materials = new Set(own.flatMap(({ material }) => (material === undefined ? [] : [material.toLowerCase()])))
      .size;
    return own.length >= MANY && materials >= SEVERAL
      ? [{ id: "same-emissivity" as const, emissivity, rows: own.length, materials }]
      : [];
  });
}

function reflectedAir(claims: readonly Claim[]): ReportFinding[] {
  const rows = claims.filter(({ settings: { reflected, airTemp, emissivity }, surroundingAir }) => {
    const air = surroundingAir?.value ?? airTemp;
    return (
      reflected !== undefined &&
      air !== undefined &&
      (emissivity ?? 1) < HIGH_EMISSIVITY &&
      Math.abs(reflected - air) <= ALIKE
    );
  }).length;
  return rows >= MANY ? [{ id: "reflected-is-air", rows }] : [];
}

/** Loads that were read are not all multiples of ten, nor all the full load. */
function loads(claims: readonly Claim[]): ReportFinding[] {
  const known = claims.flatMap(({ load, referenceLoad }) =>
    load === undefined ? [] : [{ load: load.value, full: referenceLoad?.value }],
  );
  if (known.length < MANY) return [];
  if (known.every(({ load, full }) => full !== undefined && Math.abs(load / full - 1) < 1e-9))
    return [{ id: "full-loads", rows: known.length }];
  return known.every(({ load }) => Math.abs(load / 10 - Math.round(load / 10)) < 1e-9)
    ? [{ id: "round-loads", rows: known.length }]
    : [];
}

function images(claims: readonly Claim[]): ReportFinding[] {
  const named = claims.filter(({ image }) => image !== undefined);
  return [...groups(named, ({ image }) => image!.toLowerCase())].flatMap(([, own]) =>
    own.length > 1 ? [{ id: "same-image" as const, image: own[0]!.image!, rows: own.map(({ row }) => row) }] : [],
  );
}

function dates(claims: readonly Claim[], { job, calibratedUntil }: ReportDays): ReportFinding[] {
  const where = (holds: (day: number) => boolean): number[] =>
    // A date may have its time of day behind the point.
    claims.flatMap(({ day, row }) => (day !== undefined && holds(Math.floor(day)) ? [row] : []));
  const before = job === undefined ? [] : where((day) => day < Math.floor(job));
  const after = calibratedUntil === undefined ? [] : where((day) => day > Math.floor(calibratedUntil));
  return [
    ...(before.length > 0 ? [{ id: "before-job" as const, rows: before }] : []),
    ...(after.length > 0 ? [{ id: "calibration-out" as const, rows: after }] : []),
  ];
}

/** Only where the report does not say which way it counts, and the other way fits more rows than ours. */
function otherNumbering(rows: readonly RowAudit[], numbering: Numbering | undefined): ReportFinding[] {
  if (numbering !== undefined) return [];
  const [ours, theirs] = fitsOf(rows.map(({ claim }) => claim));
  return theirs > ours && theirs >= LEAST_OF_SLIP ? [{ id: "numbering", numbering: NUMBERINGS[1]!, rows: theirs }] : [];
}

/**
 * Which way a report may count its grades that does not say so: ours, unless the other way fits more of its rows, and then
 * undefined: a row may fit either.
 */
export function numberingOf(claims: readonly Claim[]): Numbering | undefined {
  const [ours, theirs] = fitsOf(claims);
  return theirs > ours && theirs >= LEAST_OF_SLIP ? undefined : NUMBERINGS[0];
}

/** How many grades follow from the stated rise in each numbering. */
function fitsOf(claims: readonly Claim[]): [ours: number, theirs: number] {
  const fits = (way: Numbering): number =>
    claims.filter((claim) => {
      const { statedGrade, statedRise, reference } = claim;
      if (statedGrade === undefined || statedRise === undefined || reference === undefined) return false;
      return gradeFor(claim, statedRise.value, reference) === inOurs(statedGrade, way);
    }).length;
  return [fits("4 = worst"), fits("1 = worst")];
}

function groups<Item, Key>(items: readonly Item[], keyOf: (item: Item) => Key): Map<Key, Item[]> {
  const found = new Map<Key, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const own = found.get(key);
    if (own) own.push(item);
    else found.set(key, [item]);
  }
  return found;
}
