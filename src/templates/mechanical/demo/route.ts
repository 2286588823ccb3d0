/** A filled mechanical route: a morning at an invented water works. */
import type { Units } from "../../../functions/units.js";
import type { BookDescription } from "../../contract.js";
import type { FollowUp } from "../../report/follow-up-typed.js";
import { day } from "../../route/demo/moments.js";
import type { Surface } from "../../route/lists.js";
import type { PlannedView } from "../../route/plan-typed.js";
import { mechanicalBook } from "../book.js";
import type { MechanicalJob } from "../job.js";
import { points } from "./points.js";
import { readings } from "./readings.js";

const job: MechanicalJob = {
  id: "AMW-2026-04",
  client: "Aldermoor Water (invented)",
  site: "Aldermoor works (invented)",
  date: day("2026-04-22"),
  operating_state: "Two of three raw water pumps, one filter in backwash",
  thermographer: "R. Almgren (invented)",
  certificate: "Category 2",
  certificate_until: day("2028-05-31"),
  assistant: "J. Varga (invented), fitter of the works",
  camera: "Imager of the demo, 320 × 240",
  camera_serial: "DEMO-0001",
  lens: "22°",
  ifov: 1.2,
  range_from: -20,
  range_to: 150,
  calibrated: day("2025-09-02"),
  check_source: 60,
  check_reading: 60.4,
  reflected: 19,
  reflected_method: "reflector",
  path_air: 19,
  humidity: 55,
  distance: 1.5,
  escort: "J. Varga (invented)",
};

const surfaces: readonly Surface[] = [
  {
    surface: "painted casting",
    emissivity: 0.93,
    known_from: "handbook",
    remark: "Oil paint, any colour, 0.92 to 0.94.",
  },
  { surface: "rubber belt", emissivity: 0.94, known_from: "assumed", remark: "0.90 to 0.95, from memory: measure it." },
  {
    surface: "machined steel",
    emissivity: 0.25,
    known_from: "assumed",
    remark: "0.1 to 0.3: no temperature to be had from it.",
  },
];

const found = { found_on: day("2025-10-20") } as const;

const followUp: readonly FollowUp[] = [
  {
    ...found,
    asset_id: "BB-NDE",
    grade_found: "2 of 4: plan a repair",
    rise_found: 12.5,
    over: "baseline",
    load_found: 82,
    repair_date: day("2025-11-04"),
    repair_found: "grease hardened; cleaned, greased anew",
    work_order: "M-5502",
    left_date: day("2025-11-11"),
    left_hot: 39.8,
    left_load: 80,
    left_air: 21.5,
    closed_on: day("2025-11-11"),
    closed_by: "J. Varga (invented)",
  },
  {
    ...found,
    asset_id: "SP-DE",
    grade_found: "1 of 4: watch",
    rise_found: 6.4,
    over: "baseline",
    load_found: 80,
    repair_date: day("2025-12-02"),
    repair_found: "belt tension set",
    work_order: "M-5540",
    left_date: day("2025-12-03"),
    left_hot: 38.2,
    left_load: 50,
    left_air: 13,
  },
];

const plan: readonly PlannedView[] = [
  {
    what: "Drive end bearings of the raw water pumps, guards on",
    over: "similar",
    target_size: 60,
    emissivity: 0.93,
    expected_temp: 55,
    expected_rise: 12,
  },
  {
    what: "The same bearings against their own baseline",
    over: "baseline",
    target_size: 60,
    emissivity: 0.93,
    expected_temp: 55,
    expected_rise: 8,
  },
  {
    what: "Coupling through the mesh of its guard",
    over: "similar",
    distance: 2.5,
    target_size: 8,
    emissivity: 0.93,
    expected_temp: 60,
    expected_rise: 15,
  },
];

export function demoMechanicalRoute(units: Units = "C"): BookDescription {
  return mechanicalBook({
    title: "Mechanical route, demo",
    about: ["Demonstration: the works, the people and every reading are invented."],
    job,
    assets: points,
    windows: [],
    surfaces,
    rows: readings,
    followUp,
    plan,
    units,
  });
}
