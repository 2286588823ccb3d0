import erfc from "@stdlib/math-base-special-erfc";

/** Probability of a standard normal number below z, exact in both tails. */
export function normalCdf(z: number): number {
  return 0.5 * erfc(-z * Math.SQRT1_2);
}
