import { CHECK_RULES } from "../../data/check-rules.js";
import type { RowFacts } from "./facts.js";
import { impossible } from "./impossible.js";
import type { Named } from "./named.js";
import type { Finding, Hit, Kind } from "./hit.js";
import { above, below, when } from "./hit.js";

/** Readings and settings that are given with one decimal and mean the same [K]. */
const SAME = 0.05;

/** What speaks against a whole route: each once, whatever the number of rows. */
export function wholeRoute(rows: readonly RowFacts[], job: Named): Finding[] {
  const found = (id: string, kind: Kind, hits: readonly Hit[]): Finding[] =>
    hits.map((hit) => ({ row: 0, id, kind, ...hit }));
  return [
    ...found("calibration-out", "stop", calibration(rows, job)),
    ...impossible(job).map(({ id, hit }): Finding => ({
      row: 0,
      id,
      kind: "implausible",
      ...hit,
      column: `job_${hit.column}`,
    })),
    ...found("field-check", "caution", fieldCheck(job)),
    ...found("camera-cold", "caution", cameraCold(job)),
    ...found("same-emissivity", "caution", sameEmissivity(rows)),
    ...found("reflected-is-air", "caution", reflectedIsAir(rows)),
    ...found("round-loads", "caution", roundLoads(rows)),
  ];
}

/** The same image on more rows than one. */
export function imagesTwice(rows: readonly RowFacts[]): Finding[] {
  const users = new Map<string, RowFacts[]>();
  for (const facts of rows) {
    const image = facts.row.text("thermal_image")?.toLowerCase();
    if (image === undefined) continue;
    const others = users.get(image);
    if (others) others.push(facts);
    else users.set(image, [facts]);
  }
  return [...users.values()]
    .filter((all) => all.length > 1)
    .flatMap((all) =>
      all.map((facts): Finding => ({
        row: facts.number,
        id: "image-twice",
        kind: "implausible",
        column: "thermal_image",
        values: {
          image: facts.row.text("thermal_image") ?? "",
          other: (all[0] === facts ? all[1] : all[0])?.number ?? NaN,
        },
      })),
    );
}

/** On the job's day, where rows have no day of their own. */
function calibration(rows: readonly RowFacts[], job: Named): readonly Hit[] {
  const until = rows[0]?.calibratedUntil;
  const isJobsDay = rows.some((facts) => facts.isMeasured && facts.ownDay === undefined);
  return when(isJobsDay && below(until, job.number("date")), "job_calibrated", () => ({ until: until ?? NaN }));
}

function fieldCheck(job: Named): readonly Hit[] {
  const [source, reading] = [job.number("check_source"), job.number("check_reading")];
  const error = job.number("check_error") ?? (reading ?? NaN) - (source ?? NaN);
  return when(above(Math.abs(error), CHECK_RULES.field_check.value), "job_check_error", () => ({ error }));
}

function cameraCold(job: Named): readonly Hit[] {
  const minutes = job.number("minutes_camera_out");
  return when(below(minutes, CHECK_RULES.camera_out.value), "job_minutes_camera_out", () => ({
    minutes: minutes ?? NaN,
  }));
}

/** One emissivity for whatever was looked at. */
function sameEmissivity(rows: readonly RowFacts[]): readonly Hit[] {
  const groups = new Map<number, string[]>();
  for (const facts of rows) {
    if (!facts.isException || facts.emissivity === undefined) continue;
    const surface = (facts.row.text("surface") ?? facts.row.text("material") ?? "").toLowerCase();
    groups.set(facts.emissivity, [...(groups.get(facts.emissivity) ?? []), surface]);
  }
  return [...groups].flatMap(([emissivity, surfaces]) => {
    const materials = new Set(surfaces.filter((surface) => surface !== "")).size;
    const isHabit = surfaces.length >= CHECK_RULES.same_rows.value && materials >= CHECK_RULES.same_materials.value;
    return when(isHabit, "emissivity", () => ({ emissivity, rows: surfaces.length, materials }));
  });
}

function reflectedIsAir(rows: readonly RowFacts[]): readonly Hit[] {
  const count = rows.filter(
    ({ emissivity, reflected, row }) =>
      below(emissivity, CHECK_RULES.same_reflected_emissivity.value) &&
      Math.abs((reflected ?? NaN) - (row.number("surrounding_air") ?? NaN)) < SAME,
  ).length;
  return when(count >= CHECK_RULES.same_rows.value, "reflected", () => ({ rows: count }));
}

/** Currents that end in 0 throughout, or stand at the expected maximum throughout. */
function roundLoads(rows: readonly RowFacts[]): readonly Hit[] {
  const loaded = rows.filter(({ currents }) => currents.some(({ value }) => value > 0));
  if (loaded.length < CHECK_RULES.same_rows.value) return [];
  const isRound = loaded.every(({ currents }) => currents.every(({ value }) => value % 10 === 0));
  const isFull = loaded.every(({ loadShare }) => loadShare !== undefined && Math.abs(loadShare.ratio - 1) < 1e-6);
  return when(isRound || isFull, loaded[0]?.currents[0]?.column ?? "load", () => ({
    rows: loaded.length,
    how: isFull ? "full" : "round",
  }));
}
