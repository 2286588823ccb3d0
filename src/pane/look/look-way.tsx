/** Look: the route by severity. */
import { type ReactElement, useEffect, useMemo, useState } from "react";
import type { HostPort } from "../../host/port.js";
import { unitOf } from "../../functions/units.js";
import { Line, Next, Note, Sentence } from "../parts.js";
import { numberOf } from "../route.js";
import { tonesOf } from "../theme.js";
import type { Tones } from "../../host/tones.js";
import type { PaneTools } from "../tools.js";
import { count } from "../words.js";
import { bandsOf, criteriaOf } from "./bands.js";
import { Picture } from "./picture.js";
import { axes, look, type Looked } from "./points.js";
import { dateInWords } from "./words.js";

export function LookWay({ tools }: { tools: PaneTools }): ReactElement {
  const { book, port, say } = tools;
  const { route, fields } = book;
  const tones = useTones(port);
  const looked = useMemo(() => (route === undefined ? undefined : look(route)), [route]);
  const units = route?.table.units ?? "C";
  const date = dateInWords(numberOf(fields.find(({ name }) => name === "job_date")?.value));
  const first = looked?.points[0];
  const goToRow = async (row: number): Promise<void> => {
    if (route === undefined) return;
    const { table } = route;
    const column = table.columns.find(({ key }) => key === "grade_found")?.column ?? 0;
    const gone = await port.goTo({ sheet: table.sheet, row: table.firstRow + row, column });
    if (!gone.ok) say(gone.message);
  };
  return (
    <>
      <Sentence announces={tools.announces}>{lookSentence(looked)}</Sentence>
      {first === undefined ? null : (
        <Next press={() => void goToRow(first.row)}>{`Go to the worst: row ${String(first.sheetRow)}`}</Next>
      )}
      {axes.map((axis) => {
        const points = looked?.points.filter((point) => point.axis === axis) ?? [];
        if (points.length === 0) return null;
        const criteria = criteriaOf(axis, fields);
        return (
          <Picture
            key={axis}
            axis={axis}
            points={points}
            bands={bandsOf(axis, criteria, units)}
            criteria={criteria}
            unit={axis === "limit" ? "" : unitOf("difference", units).label}
            date={date}
            tones={tones}
            say={say}
            go={({ row }) => void goToRow(row)}
          />
        );
      })}
      {looked === undefined || looked.ungraded.length === 0 ? null : (
        <section aria-labelledby="gp-ungraded">
          <h2 id="gp-ungraded">{count(looked.ungraded.length, "exception")} without a grade</h2>
          <ul className="gp-lines">
            {looked.ungraded.map(({ row, name, why }) => (
              <li key={row}>
                <Line what={name} why={why} press={() => void goToRow(row)} />
              </li>
            ))}
          </ul>
        </section>
      )}
      <Note>A small rise is no evidence of health: a light load hides faults.</Note>
    </>
  );
}

function lookSentence(looked: Looked | undefined): string {
  if (looked === undefined) return "Look draws a route by severity; this workbook holds none.";
  if (looked.exceptions === 0) return "No exception stands on the route yet: there is nothing to draw.";
  const first = looked.points[0];
  const worst = first === undefined ? "" : ` The worst is ${first.name}, ${first.words}.`;
  return `The route's ${count(looked.exceptions, "exception")} by severity.${worst}`;
}

/** The tones follow the theme; a picture is drawn again when it changes. */
function useTones(port: HostPort): Tones {
  const [theme, setTheme] = useState(() => port.theme());
  useEffect(() => port.onTheme(setTheme), [port]);
  return tonesOf(theme);
}
