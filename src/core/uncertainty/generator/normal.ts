import type { Generator } from "./xoshiro.js";

/**
 * Standard normal numbers by the ziggurat of Marsaglia & Tsang (2000): exact, and mostly one look into a table. As Doornik
 * (2005) asks, the layer and the place within it come from different bits.
 * Sources: G. Marsaglia, W. W. Tsang, J. Stat. Softw. 5(8), 2000, where the edge of 256 layers stands; tail: Marsaglia 1964.
 */
const LAYERS = 256;
/** Where the tail begins. */
const EDGE = 3.6541528853610088;

const density = (x: number): number => Math.exp(-0.5 * x * x);

/** Edges of the layers, the widest first; the first stands for the bottom layer with its tail, the last is 0. */
const EDGES = new Float64Array(LAYERS + 1);
/** The density at each edge. */
const DENSITIES = new Float64Array(LAYERS + 1);

/** √(π/2)·erfc(EDGE/√2), by the continued fraction of Laplace, which converges fast out there. */
function tailArea(): number {
  let fraction = EDGE;
  for (let k = 200; k > 0; k--) fraction = EDGE + k / fraction;
  return density(EDGE) / fraction;
}

const area = EDGE * density(EDGE) + tailArea();
EDGES[0] = area / density(EDGE);
EDGES[1] = EDGE;
for (let i = 2; i < LAYERS; i++) EDGES[i] = Math.sqrt(-2 * Math.log(density(EDGES[i - 1]!) + area / EDGES[i - 1]!));
for (let i = 0; i <= LAYERS; i++) DENSITIES[i] = density(EDGES[i]!);

/** One from beyond the edge. */
function tail(generator: Generator): number {
  for (;;) {
    const x = -Math.log(generator.uniform()) / EDGE;
    const y = -Math.log(generator.uniform());
    if (2 * y > x * x) return EDGE + x;
  }
}

/** One standard normal number. */
export function normal(generator: Generator): number {
  for (;;) {
    const word = generator.word();
    const layer = word & (LAYERS - 1);
    // 51 bits with sign, none of them among those of the layer; half a step more, so that it is never 0.
    const x = ((word >> 8) * 134217728 + (generator.word() >>> 5) + 0.5) * 2 ** -50 * EDGES[layer]!;
    const inner = EDGES[layer + 1]!;
    if (x < inner && x > -inner) return x;
    if (layer === 0) return x < 0 ? -tail(generator) : tail(generator);
    const below = DENSITIES[layer]!;
    if (below + generator.uniform() * (DENSITIES[layer + 1]! - below) < density(x)) return x;
  }
}

/** Fills a column with value + stated · standard normal. */
export function normalInto(generator: Generator, to: Float64Array, value: number, stated: number): void {
  for (let k = 0; k < to.length; k++) to[k] = value + stated * normal(generator);
}
