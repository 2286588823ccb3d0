const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Where a function turns between the points of a grid, one place for each local extremum that the grid shows.
 * Golden section: J. Kiefer 1953.
 */
export function turningPoints(of: (x: number) => number, grid: readonly number[]): number[] {
  const values = grid.map(of);
  const turns: number[] = [];
  for (let i = 1; i < grid.length - 1; i++) {
    const before = values[i]! - values[i - 1]!;
    const after = values[i + 1]! - values[i]!;
    if (before * after >= 0) continue;
    turns.push(extremum((x) => Math.sign(before) * of(x), grid[i - 1]!, grid[i + 1]!));
  }
  return turns;
}

/** The place of the one maximum between two ends. */
function extremum(of: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [atC, atD] = [of(c), of(d)];
  // Close to an extremum a function is level: half the digits are all that can be had.
  while (b - a > 1e-9 * Math.max(Math.abs(a), Math.abs(b))) {
    if (atC > atD) {
      [b, d, atD] = [d, c, atC];
      c = b - GOLDEN * (b - a);
      atC = of(c);
    } else {
      [a, c, atC] = [c, d, atD];
      d = a + GOLDEN * (b - a);
      atD = of(d);
    }
  }
  return (a + b) / 2;
}
