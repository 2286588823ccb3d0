import type { ReactElement } from "react";
import { cautions } from "../functions/cautions.js";

/** What is always said beside the numbers. */
export function Cautions(): ReactElement {
  return (
    <section className="gp-cautions" aria-labelledby="gp-cautions-title">
      <h2 id="gp-cautions-title">Cautions</h2>
      <ol>
        {cautions.map(({ title, text }) => (
          <li key={title}>
            <strong>{title}.</strong> {text}
          </li>
        ))}
      </ol>
    </section>
  );
}
