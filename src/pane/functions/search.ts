import type { FunctionSpec } from "../../functions/contract.js";

/**
 * The functions in which every word of the search occurs, in name, topic, help, arguments or columns. First those that
 * are named so, then those whose name begins with or holds it: who types a name wants that function.
 */
export function searchFunctions(specs: readonly FunctionSpec[], wanted: string): FunctionSpec[] {
  const asked = wanted.toLowerCase().split(/\s+/).filter(Boolean);
  const name = asked.join("_").replace(/^grey\./, "");
  const words = asked.map((word) => word.replace(/^grey\./, ""));
  return specs
    .filter((spec) => {
      const all = wordsOf(spec);
      return words.every((word) => all.includes(word));
    })
    .sort((one, other) => rank(one, name) - rank(other, name));
}

function rank({ name }: FunctionSpec, wanted: string): number {
  const own = name.toLowerCase();
  if (wanted === "") return 0;
  return own === wanted ? 0 : own.startsWith(wanted) ? 1 : own.includes(wanted) ? 2 : 3;
}

function wordsOf({ name, topic, summary, returns, args }: FunctionSpec): string {
  const all = args.flatMap((argument) => [argument, ...(argument.columns ?? [])]);
  return [name, name.replaceAll("_", " "), topic, summary, returns, ...all.flatMap((one) => [one.name, one.help])]
    .join(" ")
    .toLowerCase();
}

/** By topic, in the order in which they are found. */
export function byTopic(specs: readonly FunctionSpec[]): [FunctionSpec["topic"], FunctionSpec[]][] {
  const topics = [...new Set(specs.map(({ topic }) => topic))];
  return topics.map((topic) => [topic, specs.filter((spec) => spec.topic === topic)]);
}
