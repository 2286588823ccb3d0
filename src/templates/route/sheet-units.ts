import type { Range } from "./ranges.js";
import { fromSI, toSI, unitOf, type Units } from "../../functions/units.js";

/** What a number on a route sheet measures, as far as its unit depends on the sheet. */
export type Measure = "temperature" | "difference" | "distance" | "speed" | "size";

/** The units of one book: what stands in headers, and metric numbers turned into them. */
export interface SheetUnits {
  /** The functions' last argument, as it stands in a formula. */
  readonly argument: string;
  readonly label: (measure: Measure) => string;
  /** A metric number (°C, K, m, m/s, mm) in the sheet's unit, without the noise of the conversion. */
  readonly from: (measure: Measure, metric: number) => number;
  /** Both ends of a range; as they are where they measure nothing whose unit depends on the sheet. */
  readonly range: (metric: Range, measure: Measure | undefined) => Range;
}

/** Miles an hour and inches are no units of a worksheet function, so they stand here. */
const OTHERS = {
  speed: { C: { label: "m/s", scale: 1 }, F: { label: "mph", scale: 0.44704 } },
  size: { C: { label: "mm", scale: 1 }, F: { label: "in", scale: 25.4 } },
} as const;

export function sheetUnits(units: Units): SheetUnits {
  const converted = (measure: Measure, metric: number): number =>
    measure === "speed" || measure === "size"
      ? metric / OTHERS[measure][units].scale
      : fromSI(toSI(metric, unitOf(measure, "C")), unitOf(measure, units));
  const from = (measure: Measure, metric: number): number =>
    units === "C" ? metric : Number(converted(measure, metric).toFixed(2));
  return {
    argument: `"${units}"`,
    label: (measure) =>
      measure === "speed" || measure === "size" ? OTHERS[measure][units].label : unitOf(measure, units).label,
    from,
    range: (metric, measure) => (measure === undefined ? metric : [from(measure, metric[0]), from(measure, metric[1])]),
  };
}
