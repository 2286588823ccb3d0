/** Functions of two rows of numbers, pair by pair: a pair of which one is no number is passed over. */
import type { Cell, CellError } from "../../../functions/contract.js";
import { isCellError } from "../../../functions/contract.js";
import type { PlainArgument, PlainFunction } from "../../embedded/plain-functions.js";
import { errorCell, isGrid } from "./coerce.js";

type Pairs = readonly (readonly [number, number])[];

function pairsOf(first: PlainArgument, second: PlainArgument): Pairs | CellError {
  const [a, b] = [first, second].map((one): readonly Cell[] => (isGrid(one) ? one.flat() : [one ?? null]));
  const error = [...a!, ...b!].find(isCellError);
  if (error) return error;
  if (a!.length !== b!.length) return errorCell("#N/A");
  return a!.flatMap((one, i): [number, number][] => {
    const other = b![i];
    return typeof one === "number" && typeof other === "number" ? [[one, other]] : [];
  });
}

interface Sums {
  readonly count: number;
  readonly means: readonly [number, number];
  /** Sums of the squares and products of the distances from the means. */
  readonly aa: number;
  readonly bb: number;
  readonly ab: number;
}

function sumsOf(pairs: Pairs): Sums {
  const count = pairs.length;
  const a = pairs.reduce((total, [one]) => total + one, 0) / count;
  const b = pairs.reduce((total, [, one]) => total + one, 0) / count;
  let [aa, bb, ab] = [0, 0, 0];
  for (const [one, other] of pairs) {
    aa += (one - a) ** 2;
    bb += (other - b) ** 2;
    ab += (one - a) * (other - b);
  }
  return { count, means: [a, b], aa, bb, ab };
}

const finite = (value: number): Cell => (Number.isFinite(value) ? value : errorCell("#DIV/0!"));

/** The first argument holds what is explained (y), the second what explains it (x). */
function ofSums(names: readonly string[], work: (sums: Sums) => number): PlainFunction[] {
  return names.map((name) => ({
    name,
    evaluate: ([first, second]) => {
      const pairs = pairsOf(first, second);
      return Array.isArray(pairs) ? finite(work(sumsOf(pairs))) : (pairs as CellError);
    },
  }));
}

function summed(name: string, term: (a: number, b: number) => number): PlainFunction {
  return {
    name,
    evaluate: ([first, second]) => {
      const pairs = pairsOf(first, second);
      if (!Array.isArray(pairs)) return pairs;
      // So the corpus has it; the plain sum of none would be 0.
      if (pairs.length === 0) return errorCell("#DIV/0!");
      return (pairs as Pairs).reduce((total, [a, b]) => total + term(a, b), 0);
    },
  };
}

export function pairFunctions(): PlainFunction[] {
  const slope = ({ ab, bb }: Sums): number => ab / bb;
  return [
    ...ofSums(["SLOPE"], slope),
    ...ofSums(["INTERCEPT"], (sums) => sums.means[0] - slope(sums) * sums.means[1]),
    ...ofSums(["CORREL", "PEARSON"], ({ aa, bb, ab }) => ab / Math.sqrt(aa * bb)),
    ...ofSums(["RSQ"], ({ aa, bb, ab }) => ab ** 2 / (aa * bb)),
    ...ofSums(["STEYX"], ({ count, aa, bb, ab }) =>
      count < 3 ? NaN : Math.sqrt(Math.max(0, aa - ab ** 2 / bb) / (count - 2)),
    ),
    ...ofSums(["COVAR", "COVARIANCE.P"], ({ count, ab }) => ab / count),
    ...ofSums(["COVARIANCE.S"], ({ count, ab }) => (count < 2 ? NaN : ab / (count - 1))),
    summed("SUMX2MY2", (a, b) => a ** 2 - b ** 2),
    summed("SUMX2PY2", (a, b) => a ** 2 + b ** 2),
    summed("SUMXMY2", (a, b) => (a - b) ** 2),
  ];
}
