/** All worksheet functions with search; each opens to its arguments with unit, range and default, and an example. */
import type { ArgumentSpec, FunctionSpec } from "../../functions/contract.js";
import { argumentFacts, NAMESPACE, signature } from "../../functions/describe.js";
import { element } from "./dom.js";

export function functionList(specs: readonly FunctionSpec[]): HTMLElement {
  const search = element("input", {
    type: "search",
    id: "gb-search",
    placeholder: "emissivity, load, grade …",
    autocomplete: "off",
    spellcheck: "false",
  });
  const count = element("p", { class: "gb-count", role: "status" });
  const list = element("div", { class: "gb-functions" });
  const entries = specs.map((spec) => ({ spec, words: searchWords(spec), root: functionEntry(spec) }));
  const topics = [...new Set(specs.map((spec) => spec.topic))].map((topic) => {
    const own = entries.filter((entry) => entry.spec.topic === topic);
    const root = element("section", {}, [element("h3", {}, [topic]), ...own.map((entry) => entry.root)]);
    return { own, root };
  });
  list.append(...topics.map((topic) => topic.root));

  const filter = (): void => {
    const wanted = search.value.toLowerCase().split(/\s+/).filter(Boolean);
    let found = 0;
    for (const entry of entries) {
      const matches = wanted.every((word) => entry.words.includes(word));
      entry.root.hidden = !matches;
      if (matches) found++;
    }
    for (const topic of topics) topic.root.hidden = topic.own.every((entry) => entry.root.hidden);
    count.textContent =
      wanted.length === 0
        ? ""
        : found === 0
          ? "No function with these words."
          : `${String(found)} of ${String(entries.length)}`;
  };
  search.addEventListener("input", filter);
  return element("section", { class: "gb-function-list" }, [
    element("label", { for: "gb-search", class: "gb-search-label" }, ["Search functions and arguments"]),
    search,
    count,
    list,
  ]);
}

function searchWords(spec: FunctionSpec): string {
  const words = [
    spec.name,
    spec.topic,
    spec.summary,
    spec.returns,
    ...spec.args.flatMap((argument) => [argument.name, argument.help]),
  ];
  return words.join(" ").toLowerCase();
}

function functionEntry(spec: FunctionSpec): HTMLElement {
  const summary = element("summary", {}, [
    element("span", { class: "gb-function-name" }, [`${NAMESPACE}.${spec.name}`]),
    element("span", { class: "gb-function-summary" }, [spec.summary]),
  ]);
  return element("details", { class: "gb-function" }, [
    summary,
    element("p", { class: "gb-call" }, [`=${signature(spec)}`]),
    element("dl", {}, spec.args.flatMap(argumentEntry)),
    element("p", {}, [`Gives ${spec.returns}.`]),
    element("p", { class: "gb-example" }, [element("code", {}, [spec.example.formula]), ` → ${spec.example.shows}`]),
  ]);
}

function argumentEntry(argument: ArgumentSpec): HTMLElement[] {
  return [
    element("dt", {}, [argument.name]),
    element("dd", {}, [argument.help, element("span", { class: "gb-facts" }, [argumentFacts(argument).join(" · ")])]),
  ];
}
