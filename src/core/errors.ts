/** Why a computation has no answer. The core gives fields, never prose: whoever shows it makes the text. */
export type ErrorCode =
  /** An input that cannot be: out of its range, not a number, not among the choices. */
  | "INVALID"
  /** A required input is absent. */
  | "NOT_GIVEN"
  /** The inputs are each possible, together they have no physical answer. */
  | "NO_SOLUTION"
  /** An answer could be computed but a rule of the trade forbids giving it. */
  | "REFUSED";

/** A range in the unit of the quantity (SI in the core). An absent end is open to infinity. */
export interface Range {
  readonly min?: number;
  readonly max?: number;
  /** True where the end itself is not allowed. */
  readonly minExcluded?: boolean;
  readonly maxExcluded?: boolean;
}

/** What usually lies behind a bad input or a refusal; the edge turns the key into a sentence. */
export interface Hint {
  readonly key: string;
  readonly values?: Readonly<Record<string, number | string>>;
}

export interface ErrorDetails {
  readonly code: ErrorCode;
  /** Name of the argument, as in the nomenclature (for example "emissivity"). */
  readonly argument?: string;
  /** The value that was given, in SI. */
  readonly given?: number | string;
  readonly allowed?: Range | readonly string[];
  readonly hint?: Hint;
}

/** The one error the core throws. */
export class GreybodyError extends Error implements ErrorDetails {
  readonly code: ErrorCode;
  readonly argument?: string;
  readonly given?: number | string;
  readonly allowed?: Range | readonly string[];
  readonly hint?: Hint;

  constructor(details: ErrorDetails) {
    super(
      [details.code, details.argument, details.given, details.hint?.key].filter((part) => part !== undefined).join(" "),
    );
    this.name = "GreybodyError";
    this.code = details.code;
    if (details.argument !== undefined) this.argument = details.argument;
    if (details.given !== undefined) this.given = details.given;
    if (details.allowed !== undefined) this.allowed = details.allowed;
    if (details.hint !== undefined) this.hint = details.hint;
  }
}

/** True where value lies in the range; NaN and infinities never do. */
export function inRange(value: number, range: Range): boolean {
  if (!Number.isFinite(value)) return false;
  const { min, max } = range;
  if (min !== undefined && (range.minExcluded === true ? value <= min : value < min)) return false;
  return !(max !== undefined && (range.maxExcluded === true ? value >= max : value > max));
}

/** Throws INVALID unless value lies in the range. */
export function requireInRange(argument: string, value: number, allowed: Range, hint?: Hint): void {
  if (!inRange(value, allowed)) {
    throw new GreybodyError({ code: "INVALID", argument, given: value, allowed, ...(hint ? { hint } : {}) });
  }
}

/** Throws INVALID unless value is a whole number of the range; the hint is that of a value out of it. */
export function requireWhole(argument: string, value: number, allowed: Range, hint?: Hint): void {
  requireInRange(argument, value, allowed, hint);
  if (Number.isInteger(value)) return;
  throw new GreybodyError({ code: "INVALID", argument, given: value, allowed, hint: { key: "whole-number" } });
}
