import windows from "./windows.json";
import type { Provenance } from "./provenance.js";

/** Transmission [-] of a plate, in 8–14 µm or 2–5 µm. */
export interface WindowRange extends Provenance {
  readonly band: "long" | "short";
  readonly what: "ceiling uncoated" | "in service" | "coated";
  readonly low: number;
  readonly high: number;
}

/** What a window may be made of; a window's own transmission is measured. */
export interface WindowMaterial {
  readonly material: string;
  readonly note?: string;
  readonly ranges: readonly WindowRange[];
}

export const WINDOWS = windows as readonly WindowMaterial[];
