/** The cautions, as in lines.ts. */
import type { Check } from "./line.js";

const measured = { known_from: "measured" };
const window = { window_id: "W1", window_transmission: 0.72, window_temp: 30 };
/** Air that lets all through: what is worked out below then hangs on emissivity and window alone. */
const clear = { air_transmission: 1 };

export const CAUTION_LINES: readonly Check[] = [
  {
    // Half of 458 A is 229 A.
    line: "load below half",
    finding: "caution amps_right",
    what: /^load 49\.89 % of the expected maximum: light$/,
    off: { expected_max_A: 459 },
    inside: { expected_max_A: 458 },
  },
  {
    // The hot phase carries 229 A: 229/254.5 = 0.8998, 229/254.4 = 0.9002.
    line: "the hot phase with less current than another",
    finding: "caution amps_left",
    what: /^currents differ by 10\.02 %$/,
    off: { amps_left: 254.5 },
    inside: { amps_left: 254.4 },
  },
  {
    // 229/208.1 = 1.1004, 229/208.2 = 1.0999.
    line: "the hot phase with more current than another",
    finding: "caution amps_left",
    what: /^currents differ by 10\.04 %$/,
    off: { amps_left: 208.1 },
    inside: { amps_left: 208.2 },
  },
  {
    line: "a phase without current",
    finding: "caution amps_left",
    what: /^no current in amps_left$/,
    off: { amps_left: 0 },
    inside: { amps_left: 0, view: "indirect" },
  },
  {
    line: "emissivity below 0.6: wide",
    finding: "caution emissivity",
    what: /^emissivity 0\.59: wide uncertainty$/,
    off: { emissivity: 0.59 },
    inside: { emissivity: 0.6 },
  },
  {
    line: "emissivity below 0.3: qualitative",
    finding: "caution emissivity",
    what: /^emissivity 0\.29: qualitative only$/,
    off: { emissivity: 0.29 },
    inside: { emissivity: 0.3 },
  },
  {
    line: "bare metal above 0.5 without a source",
    finding: "caution known_from",
    what: /^emissivity 0\.51 on tinned bar, source not stated$/,
    off: { emissivity: 0.51, surface: "tinned bar" },
    inside: { emissivity: 0.5, surface: "tinned bar" },
  },
  {
    line: "a source that was assumed is none",
    finding: "caution known_from",
    what: /source not stated$/,
    off: { emissivity: 0.6, material: "copper", known_from: "assumed" },
    inside: { emissivity: 0.6, material: "copper", ...measured },
  },
  {
    line: "what is painted is no bare metal",
    finding: "caution known_from",
    what: /source not stated$/,
    off: { emissivity: 0.93, surface: "steel" },
    inside: { emissivity: 0.93, surface: "steel, painted" },
  },
  {
    // 1.5 × 3 × 1.36 mrad × 1 m = 6.12 mm.
    line: "target below 1.5 times 3 × 3 pixels",
    finding: "caution target_size",
    what: /^target only 1\.498 times 3 pixels$/,
    off: { ifov: 1.36, target_size: 6.11 },
    inside: { ifov: 1.36, target_size: 6.12 },
  },
  {
    // (1 − .908) · 10 K / .908 = 1.01 K; .91: 0.99 K.
    line: "reflected assumed where 10 K of it are more than 1 K",
    finding: "caution reflected_method",
    what: /10 K of error move this by 1\.01 K$/,
    off: { reflected_method: "assumed", emissivity: 0.908 },
    inside: { reflected_method: "assumed", emissivity: 0.91 },
  },
  {
    line: "outdoors, reflected within 5 K of the air",
    finding: "caution reflected",
    what: /^outdoors, and reflected within 4\.9 K of the air$/,
    off: { air_taken: "outdoors", emissivity: 0.94, reflected: 21.6 },
    inside: { air_taken: "outdoors", emissivity: 0.94, reflected: 21.5 },
  },
  {
    line: "the same, at an emissivity of 0.95 it does not count",
    finding: "caution reflected",
    what: /^outdoors/,
    off: { access: "outdoor", emissivity: 0.94 },
    inside: { access: "outdoor", emissivity: 0.95 },
  },
  {
    line: "wind above 2 m/s",
    finding: "caution wind",
    what: /^wind 2\.1 m\/s at the target$/,
    off: { wind: 2.1 },
    inside: { wind: 2 },
  },
  {
    line: "wind above 5 m/s",
    finding: "caution wind",
    what: /^wind 5\.1 m\/s at the target: doubtful$/,
    off: { wind: 5.1 },
    inside: { wind: 5 },
  },
  {
    line: "sun within 2 h",
    finding: "caution hours_since_sun",
    what: /^sun on it 1\.9 h before$/,
    off: { hours_since_sun: 1.9 },
    inside: { hours_since_sun: 2 },
  },
  ...(
    [
      ["panel", 30],
      ["motor", 60],
      ["dry transformer", 240],
      ["oil transformer", 600],
    ] as const
  ).map(([equipment, settled]): Check => ({
    line: `load changed on a ${equipment}`,
    finding: "caution minutes_since_load_change",
    what: new RegExp(`^load changed ${settled - 1} min before, settled after ${settled}$`),
    off: { equipment, minutes_since_load_change: settled - 1 },
    inside: { equipment, minutes_since_load_change: settled },
  })),
  {
    line: "load changed, of an asset with a time of its own",
    finding: "caution minutes_since_load_change",
    what: /settled after 90$/,
    off: { settling: 90, minutes_since_load_change: 89 },
    inside: { settling: 90, minutes_since_load_change: 90 },
  },
  {
    line: "door open for more than 5 min",
    finding: "caution minutes_door_open",
    what: /^door open for 5\.1 min$/,
    off: { minutes_door_open: 5.1 },
    inside: { minutes_door_open: 5 },
  },
  {
    line: "camera out of the vehicle for less than 15 min",
    finding: "caution minutes_camera_out",
    what: /^camera out of the vehicle for 14 min only$/,
    off: { minutes_camera_out: 14 },
    inside: { minutes_camera_out: 15 },
  },
  {
    line: "the same, told once by the job",
    finding: "caution job_minutes_camera_out",
    what: /14 min only$/,
    off: {},
    inside: {},
    job: { minutes_camera_out: 14 },
    jobInside: { minutes_camera_out: 15 },
  },
  {
    line: "field check more than 2 K off",
    finding: "caution job_check_error",
    what: /^field check: 2\.1 K off$/,
    off: {},
    inside: {},
    job: { check_source: 50, check_reading: 52.1 },
    jobInside: { check_source: 50, check_reading: 52 },
  },
  {
    // The edge over similar: above 15 K; U of the row.
    line: "an edge within U, over similar",
    finding: "caution rise_similar",
    what: /^rise 14\.1 K over similar ± 0\.9 K: edge 15 K within$/,
    off: { rise_similar: 14.1, rise_U: 0.9 },
    inside: { rise_similar: 14.1, rise_U: 0.89 },
  },
  {
    // The edge over air: above 40 K; ours is 2.8 K at emissivity .95.
    line: "an edge within U, over air",
    finding: "caution rise_air",
    what: /^rise 37\.2 K over air ± 2\.8 K: edge 40 K within$/,
    off: { rise_air: 37.2 },
    inside: { rise_air: 37.1 },
  },
  // Ours where nothing else is given: over similar 0.96 K, at an emissivity below 0.95 1.4 K; over air then 3.9 K.
  ...(
    [
      ["rise_similar", 0.95, 14.04, 14.03],
      ["rise_similar", 0.949, 13.6, 13.59],
      ["rise_air", 0.949, 36.1, 36.09],
    ] as const
  ).map(([column, emissivity, off, inside]): Check => ({
    line: `an edge within our U, ${column} at emissivity ${emissivity}`,
    finding: `caution ${column}`,
    what: /within$/,
    off: { [column]: off, emissivity },
    inside: { [column]: inside, emissivity },
  })),
  {
    line: "an edge of the job's own criteria",
    finding: "caution rise_air",
    what: /edge 50 K within$/,
    off: { rise_air: 48 },
    inside: { rise_air: 48 },
    job: { criteria: "house" },
    jobInside: { criteria: "NETA-100.18" },
  },
  {
    // Where everything is as warm as the reading, a change of it comes to 1/emissivity in the temperature: 1/.33 and 1/.34.
    line: "∂T/∂T_app above 3",
    finding: "caution right",
    what: /^a degree of the reading moves the temperature by 3\.03$/,
    off: { ...clear, emissivity: 0.33, left: 58, middle: 59, right: 60, reflected: 60 },
    inside: { ...clear, emissivity: 0.34, left: 58, middle: 59, right: 60, reflected: 60 },
  },
  {
    // (229/397)⁻² = 3.0054, (229/396)⁻² = 2.9903.
    line: "projected more than 3 times",
    finding: "caution amps_right",
    what: /^projected to full load it is multiplied by up to 3\.01$/,
    off: { expected_max_A: 397 },
    inside: { expected_max_A: 396 },
  },
  {
    line: "temperature of the window assumed",
    finding: "caution window_temp",
    what: /not measured$/,
    off: { ...window, window_temp_from: "assumed" },
    inside: { ...window, window_temp_from: "measured" },
  },
  {
    line: "temperature of the window not known",
    finding: "caution window_temp",
    what: /not measured$/,
    off: { ...window, window_temp: null, status: "no exception" },
    inside: { ...window, status: "no exception" },
  },
];
