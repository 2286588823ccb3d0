import emissivity from "./emissivity.json";
import type { Provenance } from "./provenance.js";

/** What a value was averaged over: all wavelengths, 8–14 µm, 2–5 µm. */
export type EmissivityColumn = "total" | "long" | "short";
export type MaterialKind = "bare metal" | "oxidised metal" | "coating" | "non-metal" | "film on metal";

/** Lowest and highest emissivity [-] that a source has; equal where it has one. */
export interface EmissivityRange extends Provenance {
  readonly band: EmissivityColumn;
  readonly low: number;
  readonly high: number;
  /** Further keys of references.json with the same value. */
  readonly also?: readonly string[];
}

/** A material in one state of its surface. */
export interface Material {
  readonly material: string;
  readonly kind: MaterialKind;
  /** True where the range says no more than that it must be measured. */
  readonly measure?: boolean;
  readonly note?: string;
  readonly ranges: readonly EmissivityRange[];
}

export const MATERIALS = emissivity as readonly Material[];
