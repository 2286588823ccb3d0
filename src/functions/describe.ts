import type { ArgumentSpec, FunctionSpec } from "./contract.js";
import { rangeInWords, unitOf } from "./units.js";
import type { Units } from "./units.js";

/** Under which all our worksheet functions stand. */
export const NAMESPACE = "GREY";

/** "GREY.RADIANCE(temp, [band], [units])". */
export function signature(spec: FunctionSpec): string {
  const args = spec.args.map((argument) => (argument.optional === true ? `[${argument.name}]` : argument.name));
  return `${NAMESPACE}.${spec.name}(${args.join(", ")})`;
}

/** True where a call may leave the argument out: always, or where another one names it as what is sought. */
export function mayBeLeftOut({ optional, soughtBy }: ArgumentSpec): boolean {
  return optional === true || soughtBy !== undefined;
}

/** Unit and range, choices, default of an argument, in words: said once, for pane, command line, README and Excel. */
export function argumentFacts(argument: ArgumentSpec, units: Units = "C"): string[] {
  const unit = unitOf(argument.quantity, units);
  const label = argument.quantity === "band" ? "" : unit.label;
  const facts = [argument.range ? rangeInWords(argument.range, unit) : label];
  if (argument.choices) facts.push(argument.choices.map((choice) => `"${choice}"`).join(", "));
  if (argument.default !== undefined)
    facts.push(`default ${typeof argument.default === "string" ? `"${argument.default}"` : argument.default}`);
  else if (argument.optional === true) facts.push("may be left out");
  else facts.push(argument.soughtBy === undefined ? "required" : `required unless ${argument.soughtBy} names it`);
  return facts.filter((fact) => fact !== "");
}
