import { GreybodyError } from "../core/errors.js";
import type { ErrorDetails, Range } from "../core/errors.js";
import type { ArgumentSpec, Cell, CellError, Quantity } from "./contract.js";
import { HINTS } from "./hints.js";
import { fromSI, rangeInWords, readable, unitOf } from "./units.js";
import type { Unit, Units } from "./units.js";

/** A value of the user's as it is quoted in a message. */
function quote(cell: Cell | undefined): string {
  if (typeof cell === "string") return `"${cell.length > 60 ? `${cell.slice(0, 57)}…` : cell}"`;
  if (typeof cell === "number") return String(cell);
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return "this";
}

const isRange = (allowed: Range | readonly string[]): allowed is Range => !Array.isArray(allowed);

function listInWords(words: readonly string[]): string {
  const quoted = words.map((word) => `"${word}"`);
  return quoted.length < 2 ? quoted.join("") : `${quoted.slice(0, -1).join(", ")} or ${quoted.at(-1) ?? ""}`;
}

function allowedInWords(allowed: Range | readonly string[] | undefined, unit: Unit): string {
  if (allowed === undefined) return "";
  return ` Allowed: ${isRange(allowed) ? rangeInWords(allowed, unit) : listInWords(allowed)}.`;
}

function hintInWords(details: ErrorDetails, units: Units): string {
  const { hint } = details;
  if (!hint) return "";
  const sentence = HINTS[hint.key];
  if (!sentence) return "";
  const values = hint.values ?? {};
  const inUnit =
    (quantity: Quantity) =>
    (name: string): string => {
      const unit = unitOf(quantity, units);
      return `${readable(fromSI(Number(values[name]), unit), 4)} ${unit.label}`;
    };
  const number = (name: string): string => {
    const value = values[name];
    return typeof value === "number" ? readable(value) : (value ?? "");
  };
  const percent = (name: string): string => `${readable(Number(values[name]) * 100, 4)} %`;
  return ` ${sentence({
    temperature: inUnit("temperature"),
    difference: inUnit("difference"),
    length: inUnit("distance"),
    pressure: inUnit("pressure"),
    speed: inUnit("speed"),
    number,
    percent,
  })}`;
}

/**
 * What a cell shows for a structured error: #N/A where there is no answer to give, #VALUE! where an input cannot be.
 * @param spec the argument meant, where known
 * @param given the user's own cell, as he typed it
 */
export function errorCell(
  details: ErrorDetails,
  spec: ArgumentSpec | undefined,
  given: Cell | undefined,
  unit: Unit,
  units: Units = "C",
): CellError {
  const name = details.argument ?? spec?.name ?? "";
  // The core takes fractions: its hint at per cent would mislead where the sheet itself wants per cent.
  const perCentMeant = spec?.quantity === "percent" && details.hint?.key === "per-cent";
  const hint = perCentMeant ? "" : hintInWords(details, units);
  switch (details.code) {
    case "NOT_GIVEN":
      return { error: "#VALUE!", message: `${name} is not given.${hint}` };
    case "NO_SOLUTION":
    case "REFUSED":
      return { error: "#N/A", message: hint.trim() || `${name}: no answer for these values.` };
    case "INVALID": {
      const value = given ?? details.given;
      // A share of a limit stands in the argument of a rise, and a band may have become a date: neither has the unit.
      const unitless =
        spec?.quantity === "band" ||
        (details.hint?.key === "per-cent" && !perCentMeant) ||
        details.hint?.key === "share-of-limit";
      const unitLabel = typeof given === "number" && unit.label && !unitless ? ` ${unit.label}` : "";
      const stated = value === undefined ? "" : ` ${quote(value)}${unitLabel} cannot be.`;
      return { error: "#VALUE!", message: `${name}:${stated}${allowedInWords(details.allowed, unit)}${hint}` };
    }
  }
}

/** A required argument that is absent; `zero` where a 0 was read as an empty cell. */
export function notGivenCell(spec: ArgumentSpec, zero: boolean): CellError {
  const read = zero ? " 0 is read as an empty cell, since it cannot be 0." : "";
  return { error: "#VALUE!", message: `${spec.name} is not given.${read} Needed: ${spec.help}.` };
}

/** What a cell shows for an error thrown outside any column of values. */
export function thrownPlainly(error: unknown, spec: ArgumentSpec, given: Cell): CellError {
  if (!(error instanceof GreybodyError)) throw error;
  return errorCell({ ...error, code: error.code, argument: spec.name }, spec, given, unitOf(spec.quantity, "C"));
}
