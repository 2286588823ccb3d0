/** Mechanical routes of a test: points and rows of one's own in an invented pump house. */
import type { BookDescription } from "../../../src/templates/contract.js";
import { mechanicalBook } from "../../../src/templates/mechanical/book.js";
import type { MechanicalJob } from "../../../src/templates/mechanical/job.js";
import type { Point, PointReading } from "../../../src/templates/mechanical/typed.js";
import type { Units } from "../../../src/functions/units.js";

/** 2026-03-11 as a sheet counts days: 44927 is the first day of 2023. */
export const DAY = 44_927 + 365 + 366 + 365 + 31 + 28 + 10;

const job: MechanicalJob = {
  id: "T-1",
  site: "Pump house (invented)",
  date: DAY,
  range_from: -20,
  range_to: 150,
  reflected: 20,
  reflected_method: "reflector",
  path_air: 20,
  distance: 0.05,
  humidity: 1,
  ifov: 1,
};

/** Black: what is read is what it is, to a hundredth, so close by and in such dry air. */
const surfaces = [{ surface: "black", emissivity: 1, known_from: "assumed" }];

const points: readonly Point[] = [
  { asset_id: "P1-DE", machine: "Pump 1", point: "drive end", surface: "black", like: "P1-NDE", target_size: 40 },
  { asset_id: "P1-NDE", machine: "Pump 1", point: "non-drive end", surface: "black", like: "P1-DE" },
  { asset_id: "P2-DE", machine: "Pump 2", point: "drive end", surface: "black", baseline_rise: 20, baseline_load: 80 },
  { asset_id: "P2-NDE", machine: "Pump 2", point: "non-drive end", surface: "black" },
  {
    asset_id: "M1-F",
    machine: "Motor 1",
    point: "stator frame",
    surface: "black",
    permitted_temp: 155,
    limit_is_of: "this surface",
  },
  {
    asset_id: "M2-F",
    machine: "Motor 2",
    point: "stator frame",
    surface: "black",
    permitted_temp: 80,
    limit_is_of: "winding",
  },
  {
    asset_id: "G1",
    machine: "Gearbox 1",
    point: "gearbox",
    surface: "black",
    permitted_temp: 90,
    limit_is_of: "this surface",
  },
  { asset_id: "G2", machine: "Gearbox 2", point: "gearbox", surface: "black", permitted_temp: 90 },
  { asset_id: "G3", machine: "Gearbox 3", point: "gearbox", surface: "black", permitted_temp: 90, limit_is_of: "oil" },
  { asset_id: "C1", machine: "Fan 1", point: "coupling", surface: "black", view: "indirect", baseline_rise: 5 },
  { asset_id: "B1", machine: "Fan 2", point: "belt", surface: "black" },
];

export const read: PointReading = {
  status: "exception",
  thermal_image: "IR-1",
  time: 0.5,
  surrounding_air: 20,
  process_load: 80,
};

export function inThePumpHouse(
  rows: readonly PointReading[],
  given: { readonly job?: MechanicalJob; readonly units?: Units } = {},
): BookDescription {
  return mechanicalBook({
    title: "Test",
    about: [],
    job: { ...job, ...given.job },
    assets: points,
    windows: [],
    surfaces,
    rows,
    units: given.units ?? "C",
  });
}
