/** A call of one function: its arguments as fields, what it would give while typing, and the formula into the sheet. */
import { Button } from "@fluentui/react-components";
import { type ReactElement, useState } from "react";
import type { FunctionSpec } from "../../functions/contract.js";
import { signature } from "../../functions/describe.js";
import { sourcesInWords } from "../../functions/about.js";
import { argumentsOf } from "../../host/array.js";
import { callFormula } from "../../host/call.js";
import { Next } from "../parts.js";
import type { PaneTools } from "../tools.js";
import { ArgumentField } from "./argument-field.js";
import { Outcome } from "./outcome.js";
import { usePreview } from "./preview.js";

interface FormProps {
  readonly spec: FunctionSpec;
  readonly tools: PaneTools;
}

export function CallForm({ spec, tools }: FormProps): ReactElement {
  const { port, book, say } = tools;
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>(
    // A sheet in °F is asked in °F.
    book.route?.table.units === "F" ? { units: "F" } : {},
  );
  const [asking, setAsking] = useState(false);
  const { given, preview } = usePreview(spec, typed, tools);
  const formula = callFormula(spec, given);
  const needed = spec.args.filter(({ optional }) => optional !== true);
  const others = spec.args.filter(({ optional }) => optional === true);
  const example = argumentsOf(spec.example.formula);

  const insert = async (overwrite: boolean): Promise<void> => {
    const written = await port.insertFormula(formula, { overwrite });
    setAsking(!written.ok && written.reason === "occupied");
    say(written.ok ? `Written into ${book.cell?.address ?? "the selected cell"}.` : written.message);
  };
  const field = (argument: FunctionSpec["args"][number]): ReactElement => (
    <ArgumentField
      key={argument.name}
      argument={argument}
      units={typed.units?.toUpperCase() === "F" ? "F" : "C"}
      value={typed[argument.name] ?? ""}
      change={(value) => {
        setTyped({ ...typed, [argument.name]: value });
        setAsking(false);
      }}
    />
  );

  return (
    <form
      className="gp-form gp-call"
      aria-label={`${spec.name}: arguments`}
      onSubmit={(event) => {
        event.preventDefault();
        void insert(asking);
      }}
    >
      <p className="gp-code gp-signature">={signature(spec)}</p>
      <p>Gives {spec.returns}.</p>
      {needed.map(field)}
      {others.length === 0 ? null : (
        <details open={needed.length === 0}>
          <summary>{`${String(others.length)} more that may be left out`}</summary>
          <div className="gp-form">{others.map(field)}</div>
        </details>
      )}
      <div className="gp-foot">
        <Outcome preview={preview} />
        <p className="gp-code gp-signature">{formula}</p>
        <div className="gp-buttons">
          <Next type="submit">
            {asking ? "Write over what is there" : `Insert into ${book.cell?.address ?? "the cell"}`}
          </Next>
          {asking ? (
            <Button
              appearance="subtle"
              onClick={() => {
                setAsking(false);
              }}
            >
              Leave it
            </Button>
          ) : null}
        </div>
      </div>
      <p className="gp-note">
        Example: <span className="gp-code">{spec.example.formula}</span> gives {spec.example.shows}{" "}
        {example === undefined ? null : (
          <Button
            size="small"
            appearance="subtle"
            onClick={() => {
              setTyped(Object.fromEntries(spec.args.map(({ name }, at) => [name, example[at] ?? ""])));
              setAsking(false);
            }}
          >
            Fill it in
          </Button>
        )}
      </p>
      <p className="gp-note">Rests on {sourcesInWords(spec.sources)}.</p>
    </form>
  );
}
