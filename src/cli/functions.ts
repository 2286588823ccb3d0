import type { ArgumentSpec, FunctionSpec } from "../functions/contract.js";
import { rangeInWords, unitOf } from "../functions/units.js";
import { NAMESPACE } from "../host/embedded/names.js";
import { nearest } from "../host/embedded/nearest.js";
import { UsageError } from "./usage.js";

/** `greybody functions`: every function with its summary, by topic; with a name, all about that one. */
export function functionsText(specs: readonly FunctionSpec[], name?: string): string {
  if (name === undefined) return table(specs);
  const wanted = name.toUpperCase().replace(`${NAMESPACE}.`, "");
  const spec = specs.find((candidate) => candidate.name === wanted);
  if (spec !== undefined) return help(spec);
  const near = nearest(
    wanted,
    specs.map((candidate) => candidate.name),
  );
  const advice = near.length === 0 ? "See `greybody functions`." : `Did you mean ${near.join(" or ")}?`;
  throw new UsageError(`there is no function ${name}. ${advice}`);
}

function table(specs: readonly FunctionSpec[]): string {
  const width = Math.max(0, ...specs.map((spec) => spec.name.length)) + NAMESPACE.length + 1;
  const topics = [...new Set(specs.map((spec) => spec.topic))];
  const sections = topics.map((topic) => {
    const lines = specs
      .filter((spec) => spec.topic === topic)
      .map((spec) => `  ${qualified(spec).padEnd(width)}  ${spec.summary}`);
    return [topic, ...lines].join("\n");
  });
  return sections.join("\n\n");
}

function help(spec: FunctionSpec): string {
  const width = Math.max(0, ...spec.args.map((argument) => argument.name.length));
  const args = spec.args.map((argument) => `  ${argument.name.padEnd(width)}  ${argumentText(argument)}`);
  const example = `  ${spec.example.formula}  →  ${spec.example.shows}`;
  return [
    signature(spec),
    `  ${spec.summary}`,
    "",
    ...(args.length > 0 ? ["Arguments", ...args, ""] : []),
    "Gives",
    `  ${spec.returns}`,
    "",
    "Example",
    example,
    ...(spec.sources.length > 0 ? ["", "Sources", `  ${spec.sources.join(", ")}`] : []),
  ].join("\n");
}

function signature(spec: FunctionSpec): string {
  return `${qualified(spec)}(${spec.args.map((argument) => (argument.optional === true ? `[${argument.name}]` : argument.name)).join(", ")})`;
}

/** Help, unit, range, choices and default, as far as they are. */
function argumentText(argument: ArgumentSpec): string {
  const unit = unitOf(argument.quantity, "C");
  const facts = [
    argument.range ? rangeInWords(argument.range, unit) : unit.label,
    argument.choices?.map((choice) => `"${choice}"`).join(", "),
    argument.default === undefined
      ? undefined
      : `default ${typeof argument.default === "string" ? `"${argument.default}"` : argument.default}`,
  ].filter((fact) => fact !== undefined && fact !== "");
  return facts.length === 0 ? argument.help : `${argument.help} (${facts.join("; ")})`;
}

function qualified(spec: FunctionSpec): string {
  return `${NAMESPACE}.${spec.name}`;
}
