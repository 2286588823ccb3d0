/** Sources and cautions: what the functions rest on. */
import { type ReactElement, useMemo } from "react";
import { findFunction } from "../../functions/catalogue.js";
import { type Cell, type FunctionSpec, isCellError } from "../../functions/contract.js";
import { sourcesInWords } from "../../functions/about.js";
import { readable } from "../../functions/units.js";
import { Cautions } from "../cautions.js";
import { Sentence } from "../parts.js";

export function SourcesWay({ specs }: { specs: readonly FunctionSpec[] }): ReactElement {
  const about = useMemo(() => tableOf("ABOUT"), []);
  const criteria = useMemo(() => tableOf("CRITERIA"), []);
  return (
    <>
      <Sentence announces={false}>
        What the numbers rest on: methods, constants, tables of criteria and the works behind each function.
      </Sentence>
      <section aria-labelledby="gp-methods">
        <h2 id="gp-methods">Methods and constants</h2>
        <dl>
          {about.map(([what, value, unit, source]) => (
            <div key={words(what)}>
              <dt>{words(what)}</dt>
              <dd>
                {[words(value), words(unit)].join(" ").trim()}
                <span className="gp-facts">{words(source)}</span>
              </dd>
            </div>
          ))}
        </dl>
      </section>
      <section aria-labelledby="gp-criteria">
        <h2 id="gp-criteria">Tables of criteria</h2>
        <dl>
          {criteria.map(([name, views, what]) => (
            <div key={words(name)}>
              <dt>{words(name)}</dt>
              <dd>
                {words(what)}
                <span className="gp-facts">{words(views)}</span>
              </dd>
            </div>
          ))}
        </dl>
      </section>
      <section aria-labelledby="gp-works">
        <h2 id="gp-works">Works behind the functions</h2>
        <dl>
          {specs.map(({ name, sources }) => (
            <div key={name}>
              <dt className="gp-code">{name}</dt>
              <dd>{sourcesInWords(sources)}</dd>
            </div>
          ))}
        </dl>
      </section>
      <Cautions />
    </>
  );
}

/** The rows of a function's own table, without its header. */
function tableOf(name: string): readonly (readonly Cell[])[] {
  return (findFunction(name)?.evaluate([]) ?? []).slice(1);
}

function words(cell: Cell | undefined): string {
  if (cell === null || cell === undefined || isCellError(cell)) return "";
  return typeof cell === "number" ? readable(cell, 12) : String(cell);
}
