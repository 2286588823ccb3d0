/** Functions: all of them with search; each opens to its form. */
import { Field, SearchBox } from "@fluentui/react-components";
import { type ReactElement, useMemo, useState } from "react";
import type { FunctionSpec } from "../../functions/contract.js";
import { NAMESPACE } from "../../functions/describe.js";
import { Sentence } from "../parts.js";
import type { PaneTools } from "../tools.js";
import { CallForm } from "./call-form.js";
import { byTopic, searchFunctions } from "./search.js";

export function FunctionsWay({ tools, specs }: { tools: PaneTools; specs: readonly FunctionSpec[] }): ReactElement {
  const [wanted, setWanted] = useState("");
  const [open, setOpen] = useState<string>();
  const found = useMemo(() => searchFunctions(specs, wanted), [specs, wanted]);
  const { cell } = tools.book;
  const into =
    cell === undefined
      ? "Choose a function to see what it takes; the form writes it into the selected cell."
      : `Choose a function: the form writes it into ${cell.address}${cell.header === undefined ? "" : ` (${cell.header})`}.`;
  return (
    <>
      <Sentence announces={false}>{into}</Sentence>
      <Field label="Search functions and arguments">
        <SearchBox
          value={wanted}
          placeholder="emissivity, load, grade …"
          autoComplete="off"
          spellCheck={false}
          dismiss={null}
          onChange={(_, data) => {
            setWanted(data.value);
          }}
        />
      </Field>
      <p className="gp-note" role="status">
        {wanted.trim() === ""
          ? ""
          : found.length === 0
            ? "No function with these words."
            : `${String(found.length)} of ${String(specs.length)}`}
      </p>
      {byTopic(found).map(([topic, own]) => (
        <section key={topic} aria-label={topic}>
          <h2>{topic}</h2>
          <ul className="gp-lines">
            {own.map((spec) => (
              <li key={spec.name}>
                <button
                  type="button"
                  className="gp-line"
                  aria-expanded={open === spec.name}
                  onClick={() => {
                    setOpen(open === spec.name ? undefined : spec.name);
                  }}
                >
                  <span className="gp-line-what gp-code">{`${NAMESPACE}.${spec.name}`}</span>
                  <span className="gp-line-why">{spec.summary}</span>
                  <span className="gp-line-example">
                    <span className="gp-code">{spec.example.formula}</span> → {spec.example.shows}
                  </span>
                </button>
                {open === spec.name ? <CallForm spec={spec} tools={tools} /> : null}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}
