/** In the order in which findings are told: what is missing, what forbids a grade, what cannot well be, what calls for care. */
export const KINDS = ["needed", "stop", "implausible", "caution"] as const;
export type Kind = (typeof KINDS)[number];

/** Values of a finding by name, SI. */
export type HitValues = Readonly<Record<string, number | string>>;

/** Where a rule is met: the column to look at, and what its words are made with. */
export interface Hit {
  readonly column: string;
  readonly values?: HitValues;
}

export interface Finding extends Hit {
  /** From 1, as the rows were given; 0 where it is of the whole route. */
  readonly row: number;
  readonly kind: Kind;
  readonly id: string;
}

/** What floating point and a conversion of units add to a number that stands on a limit. */
const SLACK = 1e-6;

/** a < b, b not reached by rounding; false where one is not known. */
export function below(a: number | undefined, b: number | undefined): boolean {
  return a !== undefined && b !== undefined && a < b - SLACK;
}

/** a > b likewise. */
export function above(a: number | undefined, b: number | undefined): boolean {
  return below(b, a);
}

/** One hit where the condition holds. */
export function when(condition: boolean, column: string, values?: () => HitValues): readonly Hit[] {
  if (!condition) return [];
  return [values ? { column, values: values() } : { column }];
}
