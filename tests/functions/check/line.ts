import type { Line } from "./route.js";

export interface Check {
  /** What is looked for, in words. */
  readonly line: string;
  /** "kind column" of the finding. */
  readonly finding: string;
  readonly what: RegExp;
  readonly off: Line;
  readonly inside: Line;
  readonly job?: Line;
  /** Instead of the job above. */
  readonly jobInside?: Line;
}

/** A single point, in place of three phases. */
const single = { left: null, middle: null, right: null, amps_left: null, amps_middle: null, amps_right: null };
export const point = { ...single, reading: 60, reference: 40, load: 90, reference_load: 100, expected_max_A: null };
