/** Unit, range, default and choices of a function's argument, in words. */
import type { ArgumentSpec } from "../../functions/contract.js";
import { rangeInWords, unitOf } from "../../functions/units.js";

export function argumentFacts(argument: ArgumentSpec): string[] {
  const unit = unitOf(argument.quantity, "C");
  const facts: string[] = [];
  if (argument.range !== undefined) facts.push(rangeInWords(argument.range, unit));
  else if (unit.label !== "") facts.push(unit.label);
  if (argument.choices !== undefined) facts.push(argument.choices.map((choice) => `"${choice}"`).join(", "));
  if (argument.default !== undefined) facts.push(`default ${String(argument.default)}`);
  else facts.push(argument.optional === true ? "may be left out" : "required");
  return facts;
}
