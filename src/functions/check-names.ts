/** How a header is known: what is read under which name, and which names of our sheets are passed over. */
import { nearest } from "../core/nearest.js";
import { JOB_LABELS } from "./check-labels.js";
import { CHECK_COLUMNS, JOB_LINES } from "./check-columns.js";
import type { Cell } from "./contract.js";
import { isCellError } from "./contract.js";

/** A cell as text; an error is none. */
export function cellText(cell: Cell | undefined): string {
  return cell === null || cell === undefined || isCellError(cell) ? "" : String(cell).trim();
}

const list = (names: string): readonly string[] => names.trim().split(/\s+/);

/** Columns of our route sheet, its lists and its demo that CHECK has no question to. */
const PASSED_OVER = new Set(
  list(`
    photo cause action told_to due order location component rated_a permitted_rise permitted_temp limit_from
    criticality physical_condition environment last_survey last_rise last_amps last_grade repaired next_due
    settings_missing outdoors wrong_readings beyond_camera unreadable t_left t_middle t_right limit_reading
    beyond_typical t_high air_used rise_over_air_left rise_over_air_middle rise_over_air_right amps_high imbalance
    c_left c_middle c_right c_sum c_high c_low hottest_phase t_hottest amps_hottest load_share currents phases similar
    hottest_less_lowest relative_rise limit_at_this_load share
    g_similar g_limit g_air grade_as_found u_95_edge_inside governs judged_by finding the_criteria_say
    grade_over_similar u_over_similar grade_by_share_of_limit u_share_of_limit grade_over_air u_over_air
    projected rise_at_full_load_with_u_low rise_at_full_load_with_u_high full_low_grade full_high_grade
    grade_at_full_load out_of_range stops needs withheld cautions needs_speaks_against_it rain
    last_greased speed machine_point machine point compared_with rise_over_like rise_over_baseline limit since_greasing
    grade_over_like u_over_like grade_over_baseline u_over_baseline t_reading t_reference usable over_air like_load t_like
    by change_of_rise due_rank exception_rank grade_last_time grade_number judged_over last_time_in_words last_load last_over
    load_last_time load_judged on_this_route overdue repaired_since rise_last_time rise_judged seen surveyed_last
    surveyed_last_time
    typing similar_is camera_u emissivity_u window_u reading_u apparent_hottest apparent_others apparent_reading
    apparent_reference emissivity_half transmission_half
    fresh g_baseline baseline_load baseline_date limit_is_of usual_speed remark
  `),
);

const PASSED_OVER_IN_JOB = new Set(
  list(`
    id client site operating_state criteria_edition criteria_limit criteria_indirect thermographer certificate
    certificate_until assistant camera camera_serial lens accuracy accuracy_percent exponent_low exponent permit
    similar_is reflected_half air_half u_similar_typed u_air_typed
    arc_flash_study escort grease_hours grease_rise load_apart
  `),
);

/** What our route sheet calls otherwise where it works it out. */
const OTHER_NAMES: Readonly<Record<string, string>> = {
  expected_max: "expected_max_A",
  window: "window_id",
  corrected: "corrected_reading",
  rise_over_similar: "rise_similar",
  rise_over_air: "rise_air",
  like_id: "like",
  baseline: "baseline_rise",
};

/** A name as it is compared: without case, unit and marks, spaces as underscores. */
export function plainName(header: string): string {
  return (
    header
      .replace(/\s*[[(].*[\])]\s*$/u, "")
      // The page breaks long names after an underscore; its last line is the unit.
      .replaceAll("_\n", "_")
      .replace(/\n.*$/su, "")
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, "_")
      .replace(/^_+|_+$/g, "")
  );
}

export interface KnownName {
  /** The column read under it; undefined where there is none. */
  readonly name: string | undefined;
  /** One of ours that no rule asks for. */
  readonly isPassedOver: boolean;
  /** The name that was likely meant, where it is not known. */
  readonly nearest: string | undefined;
}

function lookUp(plain: string, names: readonly string[], passedOver: ReadonlySet<string>): KnownName {
  const wanted = OTHER_NAMES[plain] ?? plain;
  const name = names.find((one) => one.toLowerCase() === wanted.toLowerCase());
  if (name !== undefined) return { name, isPassedOver: false, nearest: undefined };
  const isPassedOver = passedOver.has(plain);
  return { name: undefined, isPassedOver, nearest: isPassedOver ? undefined : likely(plain, names) };
}

/** What others call our words; the empty ones say nothing. */
const USUAL_WORDS: Readonly<Record<string, string>> = {
  temp: "",
  temperature: "",
  no: "",
  number: "",
  current: "amps",
  currents: "amps",
  ampere: "amps",
  ambient: "surrounding_air",
  asset: "asset_id",
  tag: "asset_id",
  image: "thermal_image",
  thermogram: "thermal_image",
  rh: "humidity",
  background: "reflected",
};

/** The nearest by letters, in our words first; else the longest name that the header has all words of. */
function likely(plain: string, names: readonly string[]): string | undefined {
  const ours = plain
    .split("_")
    .map((word) => USUAL_WORDS[word] ?? word)
    .filter((word) => word !== "");
  const [near] = [...nearest(ours.join("_"), names, 1), ...nearest(plain, names, 1)];
  if (near !== undefined) return near;
  const words = new Set(ours.flatMap((word) => [word, ...word.split("_")]));
  const within = names.filter((name) =>
    name
      .toLowerCase()
      .split("_")
      .every((word) => words.has(word)),
  );
  return within.sort((a, b) => b.length - a.length)[0];
}

const COLUMN_NAMES = CHECK_COLUMNS.map(({ name }) => name);
export const JOB_NAMES: readonly string[] = JOB_LINES.map(({ name }) => name);

export function columnNamed(header: string): KnownName {
  return lookUp(plainName(header), COLUMN_NAMES, PASSED_OVER);
}

export function jobLineNamed(name: string): KnownName {
  const plain = plainName(name);
  return lookUp(JOB_LABELS[plain] ?? plain.replace(/^job_/, ""), JOB_NAMES, PASSED_OVER_IN_JOB);
}

/** A line that a job has beside our lists of assets and surfaces, and no other job. */
export function isOnlyOurs(name: string): boolean {
  const plain = plainName(name);
  return (JOB_LABELS[plain] ?? plain.replace(/^job_/, "")) === "criteria_limit";
}
