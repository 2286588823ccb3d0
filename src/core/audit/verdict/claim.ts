/** One row of a client's report: what it states, and what it gives to work it out again. All in SI. */
import type { ReferenceKind, View } from "../../../data/criteria.js";
import type { Settings } from "../../correction/settings.js";
import type { Band } from "../../planck/band.js";

/** A number as it was printed. */
export interface Printed {
  readonly value: number;
  /** Half of its last digit. */
  readonly half: number;
}

export const QUANTITIES = ["temperature", "reference temperature", "rise", "rise at load", "grade"] as const;
export type QuantityStated = (typeof QUANTITIES)[number];

/** Settings that a report prints are what was keyed into the camera or the sheet: exact, however few digits they have. */
export interface Claim {
  /** From 1. */
  readonly row: number;
  readonly statedTemp?: Printed;
  readonly statedReferenceTemp?: Printed;
  readonly statedRise?: Printed;
  readonly statedRiseAtLoad?: Printed;
  /** As written, whichever way the report counts. */
  readonly statedGrade?: number;

  /** Reading of the hot spot, uncorrected. */
  readonly apparent?: Printed;
  /** Reading of what it is compared with, uncorrected. */
  readonly referenceApparent?: Printed;
  readonly readingIs?: "exact" | "at least" | "at most";
  /** The report marks what it states as beyond the camera's range too. */
  readonly isStatedAsBound?: boolean;
  readonly settings: Partial<Settings>;
  /** Of the air on the path, where its transmission is not given. */
  readonly distance?: number;
  readonly humidity?: number;
  readonly pressure?: number;
  readonly band: Band;
  readonly degrees: "C" | "F";

  readonly reference?: ReferenceKind;
  readonly surroundingAir?: Printed;
  /** The air of the room, where surroundingAir was taken in the enclosure. */
  readonly roomAir?: Printed;
  readonly load?: Printed;
  /** Of what the hot spot is compared with. */
  readonly loadOfReference?: Printed;
  /** Which the rise is brought to. */
  readonly referenceLoad?: Printed;
  readonly ratedLoad?: Printed;
  /** Of the current, where the report says it. */
  readonly exponent?: number;
  readonly minimumLoad: number;

  readonly criteria: string;
  readonly view: View;
  readonly material?: string;
  readonly isMetal: boolean;
  /** Of a metal: named with what grows on it, so that an emissivity above 0.5 may well be right. */
  readonly isOxidised?: boolean;
  readonly isOutdoors: boolean;
  readonly isThroughWindow: boolean;
  readonly image?: string;
  readonly day?: number;
  /** Names that the row gives something for that could not be read: not stated would be wrong of them. */
  readonly unread?: ReadonlySet<string>;
}
