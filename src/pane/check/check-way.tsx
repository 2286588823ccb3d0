/** Check: what the selected row lacks or what speaks against it, why a cell shows an error, and the whole route's list. */
import { Button } from "@fluentui/react-components";
import { type ReactElement, useMemo, useState } from "react";
import type { CellAt } from "../../host/port.js";
import { Grade, Line, Next, Note, Sentence } from "../parts.js";
import { foundGrade, isFilled, words } from "../route.js";
import type { PaneTools } from "../tools.js";
import { count } from "../words.js";
import { type Finding, findingsOf, findingsOfRow } from "./findings.js";
import { SheetErrorList } from "./sheet-errors.js";
import { checkSentence } from "./sentence.js";

/** A list that nobody reads to its end is cut, and says so. */
const most = 100;

export function CheckWay({ tools }: { tools: PaneTools }): ReactElement {
  const { book, port, say } = tools;
  const { cell, route } = book;
  const [shown, setShown] = useState(most);
  const all = useMemo(() => (route === undefined ? [] : findingsOf(route, book.fields)), [route, book.fields]);
  const row = useMemo(() => {
    if (route === undefined || cell?.row?.table !== route.table.name) return undefined;
    const { index } = cell.row;
    const record = route.rows[index] ?? cell.row.record;
    return {
      record,
      index,
      findings: isFilled(record, route.table) ? findingsOfRow(route.table, record, index, book.fields) : [],
    };
  }, [route, cell, book.fields]);
  const go = async (at: CellAt): Promise<void> => {
    const gone = await port.goTo(at);
    if (!gone.ok) say(gone.message);
  };
  const grade = row === undefined ? undefined : foundGrade(row.record);
  // The next sensible action: the worst of the row, else of the route.
  const next = row?.findings[0] ?? all[0];

  return (
    <>
      <Sentence announces={tools.announces}>{checkSentence(book, row?.findings.length, all.length)}</Sentence>
      {cell?.message === undefined ? null : (
        <section className="gp-message" aria-label="Message of the selected cell">
          <p>
            {cell.address} shows {cell.shown}
          </p>
          <p>{cell.message}</p>
        </section>
      )}
      {grade === undefined ? null : (
        <p>
          As found: <Grade grade={grade} words={words(row?.record.grade_found)} />
        </p>
      )}
      {next === undefined ? null : <Next press={() => void go(next.at)}>Go to the first: {next.where}</Next>}
      {row === undefined || row.findings.length === 0 ? null : (
        <FindingList title="This row" findings={row.findings} go={go} withPlace={false} />
      )}
      {route === undefined ? (
        <Note>
          Check reads the computed columns of a route; the workbook has none. Errors are explained in any cell.
        </Note>
      ) : (
        <FindingList title="The route, worst first" findings={all.slice(0, shown)} go={go} withPlace />
      )}
      {tools.lookThrough === undefined ? null : (
        <SheetErrorList lookThrough={tools.lookThrough} go={go} enterAgain={port.enterAgain} />
      )}
      {all.length <= shown ? null : (
        <Button onClick={() => setShown(shown + most)}>{`Show more of ${count(all.length, "finding")}`}</Button>
      )}
    </>
  );
}

interface ListProps {
  readonly title: string;
  readonly findings: readonly Finding[];
  readonly go: (at: CellAt) => Promise<void>;
  readonly withPlace: boolean;
}

function FindingList({ title, findings, go, withPlace }: ListProps): ReactElement {
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      {findings.length === 0 ? <Note>Nothing is missing and nothing speaks against a row.</Note> : null}
      <ul className="gp-lines">
        {findings.map((finding, index) => (
          <li key={`${String(finding.row)}/${String(index)}`}>
            <Line
              what={finding.what}
              why={finding.why}
              {...(withPlace ? { where: finding.where } : {})}
              press={() => void go(finding.at)}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}
