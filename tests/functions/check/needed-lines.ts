/** What is needed by status, as in lines.ts. */
import { point } from "./line.js";
import type { Check } from "./line.js";
import type { Line } from "./route.js";

const noImage = { thermal_image: null } satisfies Line;
const needed = (column: string, more: Line = {}): Check => ({
  line: `an exception without ${column}`,
  finding: `needed ${column}`,
  what: /^is empty$/,
  off: { ...more, [column]: null },
  inside: more,
});
export const NEEDED_LINES: readonly Check[] = [
  ...["asset_id", "status", "time", "thermal_image", "left", "middle", "right"].map((column) => needed(column)),
  ...["amps_left", "amps_middle", "amps_right", "surrounding_air", "emissivity", "reflected"].map((column) =>
    needed(column),
  ),
  needed("distance"),
  needed("humidity"),
  needed("reading", point),
  needed("reference", point),
  needed("load", point),
  needed("process_load", { ...point, load: null, reference_load: null, process_load: 80 }),
  {
    line: "a like machine stands for a reference",
    finding: "needed reference",
    what: /is empty/,
    off: { ...point, reference: null },
    inside: { ...point, reference: null, like: "P-102B" },
  },
  needed("path_air", { air_taken: "enclosure", path_air: 25 }),
  needed("window_transmission", { window_id: "W1", window_transmission: 0.72, window_temp: 30 }),
  needed("window_temp", { window_id: "W1", window_transmission: 0.72, window_temp: 30 }),
  {
    line: "no exception: currents where it is seen directly",
    finding: "needed amps_left",
    what: /is empty/,
    off: { status: "no exception", amps_left: null },
    inside: { status: "no exception", amps_left: null, view: "indirect" },
  },
  {
    line: "no exception: emissivity is never missing",
    finding: "needed emissivity",
    what: /is empty/,
    off: { emissivity: null },
    inside: { emissivity: null, status: "no exception" },
  },
  {
    line: "no exception: reflected is never missing",
    finding: "needed reflected",
    what: /is empty/,
    off: { reflected: null },
    inside: { reflected: null, status: "no exception" },
  },
  {
    line: "no exception: an image is not needed",
    finding: "needed thermal_image",
    what: /is empty/,
    off: noImage,
    inside: { ...noImage, status: "no exception" },
  },
  ...["not inspected", "partly seen"].map((status): Check => ({
    line: `${status}: a reason`,
    finding: "needed reason",
    what: /is empty/,
    off: { status },
    inside: { status, reason: "blocked by scaffolding" },
  })),
  {
    line: "a setting that the job has is not needed in the row",
    finding: "needed reflected",
    what: /is empty/,
    off: { reflected: null, air_taken: "outdoors" },
    inside: { reflected: null },
    job: { reflected: 26 },
  },
];
