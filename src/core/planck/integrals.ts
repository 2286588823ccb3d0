/**
 * Integrals of x^(m−1)/(eˣ−1) for m = 4 (radiance) and m = 3 (photons) between two limits, to a few units of the last
 * place. Series in e^(−nx) above x = 2 (Widger & Woodall 1976; Chang & Rhee 1984), Bernoulli series below.
 */

export type Moment = 3 | 4;

/** ζ(s) for s ≥ 2 by Euler–Maclaurin: forty terms, then the integral of the rest with its first corrections. */
function zeta(s: number): number {
  const last = 40;
  let sum = 0;
  for (let k = last - 1; k >= 1; k--) sum += k ** -s;
  let correction = (s * last ** (-s - 1)) / 12;
  correction -= (s * (s + 1) * (s + 2) * last ** (-s - 3)) / 720;
  correction += (s * (s + 1) * (s + 2) * (s + 3) * (s + 4) * last ** (-s - 5)) / 30240;
  return sum + last ** (1 - s) / (s - 1) + 0.5 * last ** -s + correction;
}

/** B₂ₙ/(2n)! = 2(−1)ⁿ⁺¹ζ(2n)/(2π)²ⁿ for n = 1, 2, …; at x = 2 each term is a tenth of the last. */
const BERNOULLI_OVER_FACTORIAL = Array.from({ length: 18 }, (_, i) => {
  const n = i + 1;
  return ((n % 2 === 1 ? 2 : -2) * zeta(2 * n)) / (2 * Math.PI) ** (2 * n);
});

/** ∫₀^∞: Γ(m)ζ(m). */
const WHOLE: Readonly<Record<Moment, number>> = { 3: 2 * zeta(3), 4: Math.PI ** 4 / 15 };

const SERIES_LIMIT = 2;

/** ∫₀ˣ for x below 2. */
function head(m: Moment, x: number): number {
  const square = x * x;
  let sum = 0;
  for (let i = BERNOULLI_OVER_FACTORIAL.length - 1; i >= 0; i--) {
    sum = sum * square + (BERNOULLI_OVER_FACTORIAL[i] ?? 0) / (2 * (i + 1) + m - 1);
  }
  return x ** (m - 1) * (1 / (m - 1) - x / (2 * m) + square * sum);
}

/** ∫ₓ^∞ for x from 2 up. */
function tail(m: Moment, x: number): number {
  const q = Math.exp(-x);
  let power = q;
  let sum = 0;
  for (let n = 1; n < 24; n++) {
    const r = 1 / n;
    const polynomial = m === 4 ? ((6 * r + 6 * x) * r + 3 * x * x) * r + x * x * x : (2 * r + 2 * x) * r + x * x;
    const term = power * r * polynomial;
    sum += term;
    if (term < sum * 1e-17) break;
    power *= q;
  }
  return sum;
}

/** ∫ from x2 to x1 (x1 > x2) of x^(m−1)/(eˣ−1) dx, heads and tails chosen so that nothing cancels. */
export function planckIntegral(m: Moment, x2: number, x1: number): number {
  if (x2 >= SERIES_LIMIT) return tail(m, x2) - tail(m, x1);
  if (x1 < SERIES_LIMIT) return head(m, x1) - head(m, x2);
  return WHOLE[m] - head(m, x2) - tail(m, x1);
}

/**
 * Share of the total emission of a black body below λ·T.
 * @param wavelengthTemperature λT [m·K]
 * @param secondConstant c2 [m·K]
 */
export function fractionBelow(wavelengthTemperature: number, secondConstant: number): number {
  const x = secondConstant / wavelengthTemperature;
  return x >= SERIES_LIMIT ? tail(4, x) / WHOLE[4] : 1 - head(4, x) / WHOLE[4];
}

/** Nodes and weights of Gauss–Legendre quadrature on −1…1, by Newton on the Legendre polynomial. */
export function gaussLegendre(points: number): { readonly nodes: Float64Array; readonly weights: Float64Array } {
  const nodes = new Float64Array(points);
  const weights = new Float64Array(points);
  for (let i = 0; i < points; i++) {
    let z = Math.cos((Math.PI * (i + 0.75)) / (points + 0.5));
    let slope = 1;
    for (let step = 0; step < 100; step++) {
      let p = 1;
      let before = 0;
      for (let j = 1; j <= points; j++) [p, before] = [((2 * j - 1) * z * p - (j - 1) * before) / j, p];
      slope = (points * (z * p - before)) / (z * z - 1);
      const change = p / slope;
      z -= change;
      if (Math.abs(change) < 1e-16) break;
    }
    nodes[i] = z;
    weights[i] = 2 / ((1 - z * z) * slope * slope);
  }
  return { nodes, weights };
}
