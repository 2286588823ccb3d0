/** First-order propagation of uncertainty for any measurement, by its sensitivities. */

/** One input of a measurement. */
export interface Term {
  /** ∂(result)/∂(input), in the unit of the result per that of the input. */
  readonly sensitivity: number;
  /** Standard uncertainty (k = 1), in the unit of the input. */
  readonly standard: number;
  /** Degrees of freedom of `standard` [-]; infinite where absent. */
  readonly freedom?: number;
}

/** Two inputs that go together, by their places. */
export interface Pair {
  readonly one: number;
  readonly other: number;
  /** 2·r·c₁u₁·c₂u₂, its part of the variance. */
  readonly variance: number;
}

export interface FirstOrder {
  /** Sensitivity times standard uncertainty of each input, with its sign, in the unit of the result. */
  readonly contributions: readonly number[];
  /** Pairs that go together and both contribute. */
  readonly pairs: readonly Pair[];
  /** Combined standard uncertainty, in the unit of the result. */
  readonly combined: number;
  /** Effective degrees of freedom, not yet cut to a whole number; infinite where inputs go together. */
  readonly freedom: number;
}

/**
 * Combined standard uncertainty and its effective degrees of freedom.
 * @param correlation coefficients by the places of the terms, 1 on the diagonal; none go together where absent
 * Source: JCGM 100:2008, 5.1.2, 5.2.2; Welch–Satterthwaite as in G.4.1, which holds for independent inputs only.
 */
export function firstOrder(terms: readonly Term[], correlation?: readonly (readonly number[])[]): FirstOrder {
  const contributions = terms.map(({ sensitivity, standard }) => (standard === 0 ? 0 : sensitivity * standard));
  const pairs: Pair[] = [];
  for (let one = 0; one < terms.length; one++) {
    for (let other = one + 1; other < terms.length; other++) {
      const variance = 2 * (correlation?.[one]?.[other] ?? 0) * contributions[one]! * contributions[other]!;
      if (variance !== 0) pairs.push({ one, other, variance });
    }
  }
  const own = contributions.reduce((sum, contribution) => sum + contribution ** 2, 0);
  // Inputs that cancel altogether leave what rounding leaves, of either sign.
  const combined = Math.sqrt(
    Math.max(
      0,
      pairs.reduce((sum, { variance }) => sum + variance, own),
    ),
  );
  return { contributions, pairs, combined, freedom: pairs.length > 0 ? Infinity : effectiveFreedom(terms, combined) };
}

function effectiveFreedom(terms: readonly Term[], combined: number): number {
  let sum = 0;
  for (const { sensitivity, standard, freedom = Infinity } of terms) {
    if (combined > 0) sum += ((sensitivity * standard) / combined) ** 4 / freedom;
  }
  return sum === 0 ? Infinity : 1 / sum;
}

/**
 * Coefficient of correlation of two results of the same inputs [-]; NaN where one of them is exact.
 * Source: JCGM 100:2008, H.2.3 (equation H.9).
 */
export function correlationOfResults(
  one: readonly Term[],
  other: readonly Term[],
  correlation?: readonly (readonly number[])[],
): number {
  let covariance = 0;
  for (const [i, a] of one.entries()) {
    for (const [j, b] of other.entries()) {
      const r = i === j ? 1 : (correlation?.[i]?.[j] ?? 0);
      covariance += r * a.sensitivity * a.standard * b.sensitivity * b.standard;
    }
  }
  return covariance / (firstOrder(one, correlation).combined * firstOrder(other, correlation).combined);
}
