/** Every cell of the sheet in front in which a function of ours gives an error: in a sheet that is no route of ours, too. */
import { Button } from "@fluentui/react-components";
import { type ReactElement, useState } from "react";
import type { CellAt, Result } from "../../host/port.js";
import { Line, Note } from "../parts.js";
import { count } from "../words.js";

export interface SheetErrors {
  readonly sheet: string;
  /** Formulas that call a function of ours. */
  readonly formulas: number;
  readonly findings: readonly { cell: CellAt; address: string; error: string; message: string }[];
}

/** A list that nobody reads to its end is cut, and says so. */
const most = 200;

interface Props {
  readonly lookThrough: () => Promise<SheetErrors>;
  readonly go: (at: CellAt) => Promise<void>;
  /** Enters every formula of ours again: what was opened before the functions were there stays #NAME? until then. */
  readonly enterAgain: () => Promise<Result<number>>;
}

export function SheetErrorList({ lookThrough, go, enterAgain }: Props): ReactElement {
  const [found, setFound] = useState<SheetErrors>();
  const [said, setSaid] = useState("");
  const run = async (): Promise<void> => {
    setSaid("Looking through the sheet…");
    try {
      const result = await lookThrough();
      setFound(result);
      setSaid(summary(result));
    } catch {
      setSaid("Excel gave no answer: finish what is being typed in the cell, then press again.");
    }
  };
  const again = async (): Promise<void> => {
    setSaid("Entering the formulas of the workbook again…");
    const entered = await enterAgain();
    if (!entered.ok) setSaid(entered.message);
    else if (entered.value === 0) setSaid("The workbook holds no GREY function.");
    else setSaid(`${count(entered.value, "formula")} with GREY functions entered again.`);
  };
  return (
    <section aria-label="Errors of the sheet">
      <h2>Errors of the sheet</h2>
      <Note>Cells show #NAME? although the add-in is loaded: Excel opened them before it knew the functions.</Note>
      <Button onClick={() => void again()}>Enter the formulas again</Button>
      <Button onClick={() => void run()}>Look through the sheet</Button>
      <div role="status">
        <Note>{said}</Note>
      </div>
      <ul className="gp-lines">
        {found?.findings.slice(0, most).map(({ cell, address, error, message }) => (
          <li key={address}>
            <Line what={error === "" ? address : `${address}: ${error}`} why={message} press={() => void go(cell)} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function summary({ sheet, formulas, findings }: SheetErrors): string {
  if (formulas === 0) return `${sheet} holds no GREY function.`;
  const looked = `${sheet}: ${count(formulas, "formula")} with GREY functions, `;
  if (findings.length === 0) return `${looked}none with an error.`;
  const cells = count(findings.length, "cell");
  return `${looked}${cells} with an error${findings.length > most ? `; the first ${String(most)}:` : "."}`;
}
