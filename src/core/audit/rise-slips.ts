import { RULES } from "../../data/rules.js";
import { ZERO_CELSIUS } from "../constants.js";
import { RATIO_SLACK } from "../loading/load.js";

/** A rise to be explained: a hot part and its reference, or three phases. */
export interface RiseCase {
  /** Corrected temperatures [K]: hot and reference, or the three phases. */
  readonly temps: readonly number[];
  /** Loads of the same, in one unit. */
  readonly loads: readonly number[];
  /** The load that the rise is brought to; the largest of the loads where absent. */
  readonly referenceLoad?: number;
  /** The air that the rises are over [K]. */
  readonly surroundingAir: number;
  /** The degrees of the sheet, "C" where absent: slips on bare numbers hang on them. */
  readonly degrees?: "C" | "F";
}

/** A slip: the difference that it would give [K], NaN where the case has no room for it. */
export interface RiseSlip<Key extends string = string> {
  readonly key: Key;
  readonly apply: (given: Phases) => number;
}

/** Which of the other phases the hot one is compared with. */
type Compare = (others: readonly number[]) => number;
const mean: Compare = (others) => others.reduce((sum, one) => sum + one, 0) / others.length;
const lowest: Compare = (others) => Math.min(...others);
const next: Compare = (others) => (others.length > 1 ? Math.max(...others) : NaN);

const CENTRAL = RULES.exponent.value;
/** 16.1 − 1.1 is 15.000000000000002 [K]. */
const APART_SLACK = 1e-6;

/** The rule of PHASE_RISE: below the least share of a load nothing is projected to it. */
export const tooLittle = (share: number): boolean => share < RULES.minimum_load.value - RATIO_SLACK;

/** A case taken apart: which phase is hot, and how its numbers are put together. */
export class Phases {
  readonly hot: number;
  readonly target: number;
  readonly degrees: "C" | "F";
  /** Raw rises over the air [K]. */
  private readonly rises: readonly number[];

  constructor(readonly given: RiseCase) {
    const { temps, loads, surroundingAir, referenceLoad, degrees = "C" } = given;
    this.degrees = degrees;
    this.target = referenceLoad ?? Math.max(...loads);
    this.rises = temps.map((temp) => temp - surroundingAir);
    // Of two the hot one is named; of three it is the one with the largest rise at one load, if all can be brought there.
    const brought = this.brought();
    const compared = brought.some(Number.isNaN) ? this.rises : brought;
    this.hot = temps.length > 2 ? compared.indexOf(Math.max(...compared)) : 0;
  }

  get phases(): number {
    return this.rises.length;
  }

  /** Smallest load over the one that rises are brought to. */
  get smallestShare(): number {
    return Math.min(...this.given.loads) / this.target;
  }

  /** From a load to the target; NaN where there is too little load to project from. */
  factor(load: number | undefined, exponent: number, target = this.target): number {
    return load === undefined || load <= 0 || tooLittle(load / target) ? NaN : (target / load) ** exponent;
  }

  /** How far apart the others' rises at one load are [K], where that is too far for them to be one reference. */
  get othersApart(): number | undefined {
    const others = this.brought().filter((_, i) => i !== this.hot);
    const apart = Math.max(...others) - lowest(others);
    const alike = Math.max(RULES.similar_apart.value, RULES.similar_apart_share.value * Math.max(...others));
    return apart > alike + APART_SLACK ? apart : undefined;
  }

  /** Loads with the places of some phases exchanged; the hot phase is 0, the others follow in order. */
  loadsInOrder(order: readonly number[]): readonly (number | undefined)[] {
    const places = [this.hot, ...this.rises.keys()].filter((phase, i, all) => all.indexOf(phase) === i);
    const out = new Array<number | undefined>(this.phases);
    for (const [i, place] of places.entries()) out[place] = this.given.loads[places[order[i] ?? i] ?? -1];
    return out;
  }

  /** The hot phase's value less what the others are compared by. */
  hotLess(values: readonly number[], compare: Compare = mean, hot = this.hot): number {
    return (values[hot] ?? NaN) - compare(values.filter((_, i) => i !== hot));
  }

  /** Each rise brought to one load. */
  brought(
    exponent = CENTRAL,
    loads: readonly (number | undefined)[] = this.given.loads,
    target = this.target,
  ): number[] {
    return this.rises.map((rise, i) => rise * this.factor(loads[i], exponent, target));
  }

  /** Rises as found. */
  get found(): readonly number[] {
    return this.rises;
  }

  /** Temperatures as bare numbers of the sheet, as differences of its degrees [K]. */
  get numbers(): readonly number[] {
    return [...this.given.temps, this.given.surroundingAir].map((temp) =>
      this.degrees === "F" ? temp - 459.67 / 1.8 : temp - ZERO_CELSIUS,
    );
  }
}

/** Each phase's rise over the same air brought to one load, then the hot one less the mean of the others. */
export const rightRise = (p: Phases): number => p.hotLess(p.brought());
/** The other way to read a rise over similar, where the others are too far apart for their mean to be a reference. */
export const OTHER_READING = "less-lowest";

const slip = <Key extends string>(key: Key, apply: (p: Phases) => number): RiseSlip<Key> => ({ key, apply });
const hotLoad = (p: Phases): number | undefined => p.given.loads[p.hot];
/** Load of another phase than the hot one, in order. */
const otherLoad = (p: Phases, which: number): number | undefined => p.loadsInOrder([which])[p.hot];
const hottestFound = (p: Phases): number => p.found.indexOf(Math.max(...p.found));
const difference = (p: Phases): number => p.hotLess(p.found);
const scaled = (p: Phases, load: number | undefined, exponent: number): number =>
  difference(p) * p.factor(load, exponent);
const ofThree = (p: Phases, value: () => number): number => (p.phases > 2 ? value() : NaN);
/** 32 as a difference of the sheet's degrees [K]. */
const thirtyTwo = ({ degrees }: Phases): number => (degrees === "F" ? 32 / 1.8 : 32);
const numbersBrought = (p: Phases): number[] =>
  p.numbers.slice(0, p.phases).map((number, i) => number * p.factor(p.given.loads[i], CENTRAL));

/** The usual slips of a rise. */
export const RISE_SLIPS = [
  slip("not-adjusted", (p) => p.hotLess(p.found, mean, p.phases > 2 ? hottestFound(p) : 0)),
  slip("difference-scaled", (p) => scaled(p, hotLoad(p), CENTRAL)),
  slip("difference-scaled-1.6", (p) => scaled(p, hotLoad(p), 1.6)),
  slip("difference-scaled-2", (p) => scaled(p, hotLoad(p), 2)),
  slip("over-air", (p) => p.brought()[p.hot] ?? NaN),
  slip("over-air-1.6", (p) => p.brought(1.6)[p.hot] ?? NaN),
  slip("over-air-2", (p) => p.brought(2)[p.hot] ?? NaN),
  slip("over-air-not-adjusted", (p) => Math.max(...(p.phases > 2 ? p.found : p.found.slice(0, 1)))),
  slip("less-lowest", (p) => ofThree(p, () => p.hotLess(p.brought(), lowest))),
  slip("less-lowest-not-adjusted", (p) => ofThree(p, () => p.hotLess(p.found, lowest, hottestFound(p)))),
  slip("less-next", (p) => p.hotLess(p.brought(), next)),
  slip("less-next-not-adjusted", (p) => p.hotLess(p.found, next, hottestFound(p))),
  slip("exponent-1", (p) => p.hotLess(p.brought(1))),
  slip("exponent-1.6", (p) => p.hotLess(p.brought(1.6))),
  slip("exponent-1.7", (p) => p.hotLess(p.brought(1.7))),
  slip("exponent-2", (p) => p.hotLess(p.brought(2))),
  slip("currents-swapped", (p) => p.hotLess(p.brought(CENTRAL, p.loadsInOrder([1, 0, 2])))),
  slip("currents-swapped-last", (p) => ofThree(p, () => p.hotLess(p.brought(CENTRAL, p.loadsInOrder([2, 1, 0]))))),
  slip("currents-of-others-swapped", (p) => ofThree(p, () => p.hotLess(p.brought(CENTRAL, p.loadsInOrder([0, 2, 1]))))),
  slip("currents-moved-on", (p) => ofThree(p, () => p.hotLess(p.brought(CENTRAL, p.loadsInOrder([1, 2, 0]))))),
  slip("currents-moved-back", (p) => ofThree(p, () => p.hotLess(p.brought(CENTRAL, p.loadsInOrder([2, 0, 1]))))),
  slip("other-current", (p) => p.hotLess(p.brought(CENTRAL, p.loadsInOrder([1, 1, 2])))),
  slip("other-current-last", (p) => ofThree(p, () => p.hotLess(p.brought(CENTRAL, p.loadsInOrder([2, 1, 2]))))),
  slip("difference-scaled-other", (p) => scaled(p, otherLoad(p, 1), CENTRAL)),
  slip("difference-scaled-other-last", (p) => ofThree(p, () => scaled(p, otherLoad(p, 2), CENTRAL))),
  slip("largest-for-reference", (p) =>
    p.given.referenceLoad === undefined
      ? NaN
      : p.hotLess(p.brought(CENTRAL, p.given.loads, Math.max(...p.given.loads))),
  ),
  slip("temperature-scaled", (p) => p.hotLess(numbersBrought(p))),
  slip("temperature-scaled-over-air", (p) => (numbersBrought(p)[p.hot] ?? NaN) - (p.numbers[p.phases] ?? NaN)),
  slip("adjusted-twice", (p) => p.hotLess(p.brought(2 * CENTRAL))),
  slip("difference-scaled-twice", (p) => scaled(p, hotLoad(p), 2 * CENTRAL)),
  slip("upside-down", (p) => p.hotLess(p.brought(-CENTRAL))),
  slip("difference-upside-down", (p) => scaled(p, hotLoad(p), -CENTRAL)),
  slip("thirty-two-added", (p) => rightRise(p) + thirtyTwo(p)),
  slip("thirty-two-taken", (p) => rightRise(p) - thirtyTwo(p)),
  slip("converted-as-temperature", (p) => rightRise(p) * 1.8 + thirtyTwo(p)),
  slip("converted-back-as-temperature", (p) => (rightRise(p) - thirtyTwo(p)) / 1.8),
  slip("times-1.8", (p) => rightRise(p) * 1.8),
  slip("over-1.8", (p) => rightRise(p) / 1.8),
  slip("per-cent-for-fraction", (p) => rightRise(p) * 100 ** CENTRAL),
  slip("fraction-for-per-cent", (p) => rightRise(p) / 100 ** CENTRAL),
] as const;
