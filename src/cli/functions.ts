import { sourcesInWords } from "../functions/about.js";
import type { ArgumentSpec, FunctionSpec } from "../functions/contract.js";
import { argumentFacts, NAMESPACE, signature } from "../functions/describe.js";
import { nearest } from "../core/nearest.js";
import { UsageError } from "./usage.js";

/** `greybody functions`: every function with its summary, by topic; with a name, all about that one. */
export function functionsText(specs: readonly FunctionSpec[], name?: string): string {
  if (name === undefined) return table(specs);
  const wanted = name.toUpperCase().replace(`${NAMESPACE}.`, "");
  const spec = specs.find((candidate) => candidate.name === wanted);
  if (spec !== undefined) return help(spec);
  const names = specs.map((candidate) => candidate.name);
  const near = nearest(wanted, names);
  const advice = near.length === 0 ? "See `greybody functions`." : `Did you mean ${near.join(" or ")}?`;
  throw new UsageError(`there is no function ${name}. ${advice}`);
}

function table(specs: readonly FunctionSpec[]): string {
  const width = Math.max(0, ...specs.map((spec) => spec.name.length));
  const topics = [...new Set(specs.map((spec) => spec.topic))];
  const sections = topics.map((topic) => {
    const ofTopic = specs.filter((spec) => spec.topic === topic);
    return [topic, ...ofTopic.map((spec) => `  ${NAMESPACE}.${spec.name.padEnd(width)}  ${spec.summary}`)].join("\n");
  });
  return sections.join("\n\n");
}

function help(spec: FunctionSpec): string {
  const width = Math.max(0, ...spec.args.map((argument) => argument.name.length));
  const args = spec.args.map((argument) => {
    const facts = argumentFacts(argument).join("; ");
    return `  ${argument.name.padEnd(width)}  ${argument.help} (${facts})`;
  });
  const columns = spec.args.flatMap((argument) => columnsOf(argument));
  return [
    signature(spec),
    `  ${spec.summary}`,
    ...section("Arguments", args),
    ...columns,
    ...section("Gives", [`  ${spec.returns}`]),
    ...section("Example", [`  ${spec.example.formula}  →  ${spec.example.shows}`]),
    ...section("Sources", spec.sources.length === 0 ? [] : [`  ${sourcesInWords(spec.sources)}`]),
  ].join("\n");
}

/** What the columns of a range are, where each has a meaning of its own. */
function columnsOf({ name, columns = [], columnsAre }: ArgumentSpec): string[] {
  const width = Math.max(0, ...columns.map((column) => column.name.length));
  const lines = columns.map((column) => {
    const facts = argumentFacts(column).filter((fact) => fact !== "may be left out");
    return `  ${column.name.padEnd(width)}  ${column.help}${facts.length === 0 ? "" : ` (${facts.join("; ")})`}`;
  });
  return section(columnsAre === "names" ? `Names in ${name}` : `Columns of ${name}`, lines);
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ["", title, ...lines];
}
