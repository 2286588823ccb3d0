/** An invented dairy: its job sheet, its surfaces and its windows. */
import type { JobValues } from "../job.js";
import type { Surface, WindowEntry } from "../lists.js";
import { day } from "./moments.js";

export const job: JobValues = {
  id: "HQD-2026-03",
  client: "Hollin Quay Dairy (invented)",
  site: "Quay works (invented)",
  date: day("2026-03-11"),
  operating_state: "Morning production, both compressors running",
  criteria_edition: "numbers as in ATS-2003 and MTS-2011",
  thermographer: "R. Almgren (invented)",
  certificate: "Category 2",
  certificate_until: day("2028-05-31"),
  assistant: "T. Okafor (invented), site electrician",
  camera: "Imager of the demo, 320 × 240",
  camera_serial: "DEMO-0001",
  lens: "22°",
  ifov: 1.2,
  range_from: -20,
  range_to: 150,
  calibrated: day("2025-09-02"),
  check_source: 60,
  check_reading: 60.4,
  reflected: 24,
  reflected_method: "reflector",
  reflected_outdoors: -12,
  path_air: 23,
  humidity: 45,
  distance: 1,
  permit: "P-1147 (invented)",
  arc_flash_study: day("2024-06-18"),
  escort: "T. Okafor (invented)",
};

export const surfaces: readonly Surface[] = [
  {
    surface: "tape patch",
    emissivity: 0.96,
    known_from: "measured",
    remark: "Vinyl tape, put on by authorised people while the part was isolated and proved dead.",
  },
  {
    surface: "rubber boot",
    emissivity: 0.95,
    known_from: "handbook",
    remark: "What is seen is the boot, not the conductor.",
  },
  {
    surface: "heat-shrink sleeve",
    emissivity: 0.94,
    known_from: "measured",
    remark: "Same sleeve, warmed on the bench.",
  },
  {
    surface: "cable insulation",
    emissivity: 0.93,
    known_from: "handbook",
    remark: "PVC, 0.91 to 0.94; within 30 mm of the lug.",
  },
  { surface: "paint", emissivity: 0.93, known_from: "handbook", remark: "Oil paint, any colour, 0.92 to 0.94." },
  {
    surface: "moulded case",
    emissivity: 0.92,
    known_from: "assumed",
    remark: "0.90 to 0.95, from memory: measure it.",
  },
  {
    surface: "copper, in service",
    emissivity: 0.55,
    known_from: "handbook",
    remark: "0.5 to 0.75, wide: a tape patch at the next stop would settle it.",
  },
  {
    surface: "tinned bar, dulled",
    emissivity: 0.15,
    known_from: "assumed",
    remark: "0.1 to 0.3: no temperature to be had from it.",
  },
];

export const windows: readonly WindowEntry[] = [
  {
    window_id: "W1",
    where: "11 kV cubicle C1, rear",
    transmission: 0.72,
    reflectance: 0.05,
    band: "7.5-14",
    method: "one target read without and with the window, three times",
    date: day("2026-03-04"),
    target_temp: 65,
    window_temp: 19,
  },
  {
    window_id: "W2",
    where: "11 kV cubicle C2, rear",
    transmission: 0.7,
    reflectance: 0.05,
    band: "7.5-14",
    method: "one target read without and with the window, three times",
    date: day("2026-03-04"),
    target_temp: 65,
    window_temp: 19,
  },
];
