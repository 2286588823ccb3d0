import limits from "./limits.json";
import type { Provenance } from "./provenance.js";

/** What a standard permits a part. */
export interface LimitRow extends Provenance {
  readonly part: string;
  /** Highest temperature [°C]. */
  readonly temp?: number;
  /** Highest rise [K]; over the air unless the note says otherwise. */
  readonly rise?: number;
  /** Air [°C] that the figures are meant for, at most. */
  readonly air?: number;
  readonly medium?: "air" | "SF6" | "oil";
  readonly note?: string;
}

export const LIMITS = limits as readonly LimitRow[];
