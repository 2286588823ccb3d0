import { requireWhole } from "../../errors.js";
import type { Range } from "../../errors.js";

/** A seed: a whole number. 0 is none, for so Excel hands an empty cell over. */
export const SEED: Range = { min: 1, max: 1_000_000_000 };

/** Words made at a time, even because a number takes two of them. */
const SIZE = 1024;
const MASK = (1n << 64n) - 1n;
/** A copy of this module's own: see the note on speed in table.ts. */
const imul = Math.imul;

/** The four words of the state that a seed begins with: SplitMix64 (Steele, Lea & Flood 2014), low word first. */
export function stateOf(seed: number): readonly [number, number, number, number] {
  let counter = BigInt(seed);
  const next = (): [number, number] => {
    counter = (counter + 0x9e3779b97f4a7c15n) & MASK;
    let z = counter;
    z = ((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n) & MASK;
    z = ((z ^ (z >> 27n)) * 0x94d049bb133111ebn) & MASK;
    z ^= z >> 31n;
    return [Number(BigInt.asIntN(32, z)), Number(BigInt.asIntN(32, z >> 32n))];
  };
  return [...next(), ...next()];
}

/**
 * The generator xoshiro128** 1.0 (Blackman & Vigna 2018), in 32-bit integers: the same words in every host.
 * Reading: D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators", arXiv:1805.01407.
 */
export class Generator {
  private readonly state: Int32Array;
  private readonly words = new Int32Array(SIZE);
  private at = SIZE;

  /** @param state four words, not all 0 */
  constructor(state: readonly [number, number, number, number]) {
    this.state = Int32Array.from(state);
  }

  /** A generator for a seed. @throws INVALID "seed" where it is no whole number in its range */
  static seeded(seed: number): Generator {
    requireWhole("seed", seed, SEED);
    return new Generator(stateOf(seed));
  }

  private refill(): void {
    const { words, state } = this;
    let [s0 = 0, s1 = 0, s2 = 0, s3 = 0] = state;
    for (let i = 0; i < SIZE; i++) {
      const five = imul(s1, 5);
      words[i] = imul((five << 7) | (five >>> 25), 9);
      const t = s1 << 9;
      s2 ^= s0;
      s3 ^= s1;
      s1 ^= s2;
      s0 ^= s3;
      s2 ^= t;
      s3 = (s3 << 11) | (s3 >>> 21);
    }
    state[0] = s0;
    state[1] = s1;
    state[2] = s2;
    state[3] = s3;
    this.at = 0;
  }

  /** The next word: a signed 32-bit integer. */
  word(): number {
    if (this.at === SIZE) this.refill();
    return this.words[this.at++]!;
  }

  /** Uniform in (0, 1), 52 bits of two words and half a step more, so that neither end comes up. */
  uniform(): number {
    const high = this.word() >>> 6;
    const low = this.word() >>> 6;
    return (high * 67108864 + low + 0.5) * 2 ** -52;
  }
}
