import figures from "./figures.json";
import type { Provenance } from "./provenance.js";

/** A figure of bearings and motors that helps to judge a reading; nothing is computed with it. */
export interface Figure extends Provenance {
  readonly what: string;
  readonly low: number;
  readonly high: number;
  readonly unit: "°C" | "K" | "-";
  readonly note?: string;
}

export const FIGURES = figures as readonly Figure[];
