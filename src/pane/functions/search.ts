import type { FunctionSpec } from "../../functions/contract.js";

/** The functions in which every word of the search occurs, in name, topic, help, arguments or units. */
export function searchFunctions(specs: readonly FunctionSpec[], wanted: string): FunctionSpec[] {
  const asked = wanted.toLowerCase().split(/\s+/).filter(Boolean);
  return specs.filter((spec) => {
    const all = wordsOf(spec);
    return asked.every((word) => all.includes(word));
  });
}

function wordsOf({ name, topic, summary, returns, args }: FunctionSpec): string {
  return [name, topic, summary, returns, ...args.flatMap((argument) => [argument.name, argument.help])]
    .join(" ")
    .toLowerCase();
}

/** By topic, in the catalogue's order. */
export function byTopic(specs: readonly FunctionSpec[]): [FunctionSpec["topic"], FunctionSpec[]][] {
  const topics = [...new Set(specs.map(({ topic }) => topic))];
  return topics.map((topic) => [topic, specs.filter((spec) => spec.topic === topic)]);
}
