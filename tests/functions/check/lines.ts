/**
 * Lines of a check: each with a change that sets it off and one just inside that does not. The thresholds are those that the
 * rules of data/check-rules.json name (common practice of the trade and our own judgement: no published table holds them);
 * where one is worked out of several inputs, how is said beside it.
 */
import { point } from "./line.js";
import type { Check } from "./line.js";
import type { Line } from "./route.js";

const spot = { ifov: 1.36 };
const window = { window_id: "W1", window_transmission: 0.72, window_temp: 30 };

export const STOP_LINES: readonly Check[] = [
  {
    // 3 × 1.36 mrad × 1 m = 4.08 mm.
    line: "target below 3 × 3 pixels",
    finding: "stop target_size",
    what: /^target only 0\.9975 times 3 pixels/,
    off: { ...spot, target_size: 4.07 },
    inside: { ...spot, target_size: 4.08 },
  },
  {
    line: "at least",
    finding: "stop reading_is",
    what: /at least/,
    off: { reading_is: "at least" },
    inside: { reading_is: "exact" },
  },
  {
    line: "at most",
    finding: "stop reading_is",
    what: /at most/,
    off: { reading_is: "at most" },
    inside: { reading_is: null },
  },
  {
    line: "corrected in the camera, its settings unknown",
    finding: "stop set_reflected",
    what: /^corrected in the camera, set_reflected not known$/,
    off: { readings_are: "corrected in the camera", set_emissivity: 0.95 },
    inside: { readings_are: "corrected in the camera", set_emissivity: 0.95, set_reflected: 20 },
  },
  {
    line: "corrected in the camera and called apparent",
    finding: "stop readings_are",
    what: /set_emissivity is 0\.95$/,
    off: { readings_are: "apparent", set_emissivity: 0.95 },
    inside: { readings_are: "apparent", set_emissivity: 1 },
  },
  {
    // 60 °C corrected at .95 and 26 °C, 7.5–14 µm: 61.55 °C by Simpson's rule on Planck's law, apart from this code.
    line: "corrected twice: the temperature typed is the camera's result corrected again",
    finding: "stop corrected_right",
    what: /^corrected twice: 61\.\d+ °C comes of/,
    off: { ...inCamera(), corrected_right: 61.55 },
    inside: { ...inCamera(), corrected_right: 60 },
  },
  {
    line: "current missing on an exception",
    finding: "stop amps_middle",
    what: /^no grade without amps_middle$/,
    off: { amps_middle: null },
    inside: { amps_middle: null, status: "no exception" },
  },
  {
    // 40 % of 572.5 A is 229 A.
    line: "load below 40 % of the expected maximum",
    finding: "stop amps_right",
    what: /^load only 39\.97 % of the expected maximum$/,
    off: { expected_max_A: 573 },
    inside: { expected_max_A: 572.5 },
  },
  {
    line: "load below the job's own least",
    finding: "stop amps_right",
    what: /^load only 39\.97 %/,
    off: { expected_max_A: 573 },
    inside: { expected_max_A: 573 },
    jobInside: { minimum_load: 0.3 },
  },
  {
    // 2025-03-10 and 365 days: 2026-03-10.
    line: "calibration out of date on the day",
    finding: "stop date",
    what: /ran out on 2026-03-10$/,
    off: { date: "2026-03-11" },
    inside: { date: "2026-03-10" },
    job: { calibrated: "2025-03-10" },
  },
  {
    line: "calibration out of date on the job's day",
    finding: "stop job_calibrated",
    what: /ran out on 2026-03-10$/,
    off: {},
    inside: {},
    job: { calibrated: "2025-03-10", date: "2026-03-11" },
    jobInside: { calibrated: "2025-03-10", date: "2026-03-11", calibration_days: 366 },
  },
  ...(["range_to", "range_from"] as const).map((end): Check => ({
    line: `reading outside the camera's ${end}`,
    finding: end === "range_to" ? "stop right" : "stop middle",
    what: /outside the camera's range/,
    off: end === "range_to" ? { right: 150.1 } : { middle: -20.1 },
    inside: end === "range_to" ? { right: 150 } : { middle: -20 },
    job: { range_from: -20, range_to: 150 },
  })),
  {
    line: "wind above 7 m/s",
    finding: "stop wind",
    what: /^wind 7\.1 m\/s at the target$/,
    off: { wind: 7.1 },
    inside: { wind: 7 },
  },
];

function inCamera(): Line {
  return {
    readings_are: "corrected in the camera",
    set_emissivity: 0.95,
    set_reflected: 26,
    air_transmission: 1,
  };
}

export const IMPLAUSIBLE_LINES: readonly Check[] = [
  {
    // 1.2 × 190.8333 A = 229 A.
    line: "load above 1.2 of the expected maximum",
    finding: "implausible amps_right",
    what: /^load 120\.5 % of/,
    off: { expected_max_A: 190 },
    inside: { expected_max_A: 191 },
  },
  {
    line: "load over its reference above 2.5",
    finding: "implausible amps_right",
    what: /^load 229 against 91: per cent against fraction\?$/,
    off: { expected_max_A: 91 },
    inside: { expected_max_A: 91.6 },
  },
  {
    line: "load over its reference below 0.02",
    finding: "implausible load",
    what: /^load 0\.9 against 46: per cent against fraction\?$/,
    off: { ...point, load: 0.9, reference_load: 46 },
    inside: { ...point, load: 0.9, reference_load: 45 },
  },
  {
    line: "humidity of 1 % or less",
    finding: "implausible humidity",
    what: /^humidity 1 %$/,
    off: { humidity: 1 },
    inside: { humidity: 1.1 },
  },
  {
    line: "a transmission above 1",
    finding: "implausible air_transmission",
    what: /^air_transmission 1\.01 is above 1$/,
    off: { air_transmission: 1.01 },
    inside: { air_transmission: 1 },
  },
  {
    line: "transmission and reflectance of a window above 1",
    finding: "implausible window_reflectance",
    what: /come to 1\.01$/,
    off: { ...window, window_reflectance: 0.29, outer_reflected: 25 },
    inside: { ...window, window_reflectance: 0.28, outer_reflected: 25 },
  },
  {
    line: "emissivity above 0.98 on metal",
    finding: "implausible emissivity",
    what: /^emissivity 0\.99 on copper, oxidised$/,
    off: { emissivity: 0.99, surface: "copper, oxidised", known_from: "measured" },
    inside: { emissivity: 0.98, surface: "copper, oxidised", known_from: "measured" },
  },
  {
    line: "a hot exception that reads below reflected − 2 K",
    finding: "implausible right",
    what: /^reads 60 °C, below its reflected 62\.1 °C$/,
    off: { reflected: 62.1 },
    inside: { reflected: 62 },
  },
  {
    line: "surrounding air above the reference + 2 K",
    finding: "implausible surrounding_air",
    what: /^air 39\.9 °C above the cool part's 37\.8 °C$/,
    off: { emissivity: 1, air_transmission: 1, surrounding_air: 39.9 },
    inside: { emissivity: 1, air_transmission: 1, surrounding_air: 39.8 },
  },
  {
    line: "a date before the job",
    finding: "implausible date",
    what: /^2026-03-10 is before the survey of 2026-03-11$/,
    off: { date: "2026-03-10" },
    inside: { date: "2026-03-11" },
    job: { date: "2026-03-11" },
  },
  {
    line: "currents more than 10 min from the image",
    finding: "implausible amps_time",
    what: /^currents read 11 min from the image$/,
    off: { time: "08:52", amps_time: "09:03" },
    inside: { time: "08:52", amps_time: "09:02" },
  },
  ...(
    [
      ["over midnight", "23:55", "00:06", "00:05"],
      ["with the day beside one of them", "2026-03-11 08:52", "09:03", "09:02"],
      ["with both days", "2026-03-11 08:52", "2026-03-11 09:03", "2026-03-11 09:02"],
    ] as const
  ).map(([how, time, off, inside]): Check => ({
    line: `currents from the image, ${how}`,
    finding: "implausible amps_time",
    what: /^currents read 11 min from the image$/,
    off: { time, amps_time: off },
    inside: { time, amps_time: inside },
  })),
  {
    line: "an exception colder than its reference",
    finding: "implausible reading",
    what: /^reading 38\.9 °C is colder than its reference 40 °C$/,
    off: { ...point, reading: 38.9 },
    inside: { ...point, reading: 39 },
  },
  {
    line: "a word that is no choice",
    finding: "implausible view",
    what: /^view "direkt" is none of: direct, indirect, enclosed$/,
    off: { view: "direkt" },
    inside: { view: "DIRECT" },
  },
];
