/**
 * A root of a function between two ends of unlike sign: interpolate, truncate, project. Never slower than bisection by
 * more than one step, as a rule some ten evaluations.
 * @param tolerance half the width at which it is enough, in the unit of x, above 0
 * Source: Oliveira & Takahashi 2020, with κ₁ = 0.2/(b − a), κ₂ = 2, n₀ = 1.
 */
export function rootBetween(of: (x: number) => number, from: number, to: number, tolerance: number): number {
  let a = Math.min(from, to);
  let b = Math.max(from, to);
  let atA = of(a);
  let atB = of(b);
  if (atA === 0) return a;
  if (atB === 0) return b;
  const direction = Math.sign(atB);
  const kappa = 0.2 / (b - a);
  const steps = Math.max(Math.ceil(Math.log2((b - a) / (2 * tolerance))), 0) + 1;
  for (let step = 0; b - a > 2 * tolerance && step <= steps + 1; step++) {
    const middle = (a + b) / 2;
    const spare = tolerance * 2 ** (steps - step) - (b - a) / 2;
    const falsi = (atB * a - atA * b) / (atB - atA);
    const side = Math.sign(middle - falsi);
    const push = kappa * (b - a) ** 2;
    const truncated = push <= Math.abs(middle - falsi) ? falsi + side * push : middle;
    const x = Math.abs(truncated - middle) <= spare ? truncated : middle - side * Math.max(spare, 0);
    const y = of(x);
    if (y === 0) return x;
    if (Math.sign(y) === direction) [b, atB] = [x, y];
    else [a, atA] = [x, y];
  }
  return (a + b) / 2;
}
