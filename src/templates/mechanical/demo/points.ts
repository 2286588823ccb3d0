/** The points of an invented water works' machines. */
import { day } from "../../route/demo/moments.js";
import type { Point } from "../typed.js";

const CASTING: Point = {
  surface: "painted casting",
  view: "direct",
  access: "free",
  target_size: 40,
  usual_speed: 1480,
  settling: 60,
  physical_condition: "1",
  environment: "1",
  last_survey: day("2025-10-20"),
};
const OWN_LIMIT = { limit_is_of: "this surface", limit_from: "works instruction 12 (invented)" } as const;
const known = (baseline_rise: number, baseline_load = 80) =>
  ({ baseline_rise, baseline_load, baseline_date: day("2024-06-11") }) as const;

type Line = [asset_id: string, point: string, criticality: "1" | "2" | "3", rest?: Point];

const MACHINES: readonly [location: string, machine: string, lines: readonly Line[]][] = [
  [
    "Raw water hall",
    "Raw water pump 1",
    [
      ["RW1-DE", "drive end", "3", { like: "RW2-DE", permitted_temp: 85, ...OWN_LIMIT }],
      ["RW1-NDE", "non-drive end", "3", { like: "RW2-NDE" }],
      ["RW1-CPL", "coupling", "3", { surface: "machined steel", access: "guard opening", target_size: 60 }],
    ],
  ],
  [
    "Raw water hall",
    "Raw water pump 2",
    [
      ["RW2-DE", "drive end", "3"],
      ["RW2-NDE", "non-drive end", "3"],
      ["RW2-SEAL", "seal", "3", { like: "RW1-NDE" }],
    ],
  ],
  ["Raw water hall", "Raw water pump 3", [["RW3-DE", "drive end", "2", { like: "RW2-DE" }]]],
  [
    "Filter gallery",
    "Backwash blower",
    [
      ["BB-DE", "drive end", "2", known(18)],
      ["BB-NDE", "non-drive end", "2", known(17)],
      ["BB-BELT", "belt", "2", { surface: "rubber belt", view: "indirect", access: "guard opening" }],
      ["BB-FRM", "stator frame", "2", { ...known(31), permitted_temp: 155, limit_is_of: "winding" }],
    ],
  ],
  [
    "Filter gallery",
    "Scraper drive",
    [
      ["SC-GB", "gearbox", "1", { permitted_temp: 80, ...OWN_LIMIT, environment: "2" }],
      ["SC-DE", "drive end", "1", { like: "SC-NDE", environment: "2" }],
      ["SC-NDE", "non-drive end", "1", { environment: "2" }],
    ],
  ],
  [
    "Compressor room",
    "Service air compressor",
    [
      ["AC-DE", "drive end", "2", { ...known(35), target_size: 30 }],
      ["AC-NDE", "non-drive end", "2", { ...known(33), target_size: 30 }],
    ],
  ],
  [
    "Sludge house",
    "Sludge pump",
    [
      ["SP-DE", "drive end", "2", { ...known(21), environment: "3" }],
      ["SP-GB", "gearbox", "2", { permitted_temp: 90, limit_is_of: "oil", environment: "3" }],
    ],
  ],
  ["Sludge house", "Sludge mixer", [["SM-DE", "drive end", "1", { environment: "3", last_survey: day("2025-04-14") }]]],
  ["Chemical store", "Dosing pump", [["DP-DE", "drive end", "1", { last_survey: null }]]],
];

export const points: readonly Point[] = MACHINES.flatMap(([location, machine, lines]) =>
  lines.map(([asset_id, point, criticality, rest = {}]) => ({
    ...CASTING,
    asset_id,
    location,
    machine,
    point,
    criticality,
    ...rest,
  })),
).map((point, index) => ({ ...point, order: index + 1 }));
