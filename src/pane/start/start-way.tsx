/** Start: a new route, in the units and by the criteria that were agreed; the cautions at its foot. */
import { Button, Field, Input, Radio, RadioGroup, Select } from "@fluentui/react-components";
import { type ReactElement, useId, useState } from "react";
import type { Units } from "../../functions/units.js";
import { type CriteriaChoice, criteriaChoices, newRoute, type RouteKind, routeKinds } from "../../templates/new.js";
import { Cautions } from "../cautions.js";
import { Next, Note, Sentence } from "../parts.js";
import type { PaneTools } from "../tools.js";
import { mostRows, rowsOf } from "./rows.js";
import { startSentence } from "./sentence.js";

const aboutCriteria: Readonly<Record<RouteKind, Partial<Record<CriteriaChoice, string>>>> = {
  electrical: { "NETA-100.18": "NETA-100.18: similar, air", house: "house (ours): similar, air, baseline" },
  mechanical: { "house-mechanical": "house-mechanical (ours): like, baseline" },
};

const aboutKind: Readonly<Record<RouteKind, string>> = {
  electrical: "A row an item: three phases, their currents, the air.",
  mechanical: "A row a point of a machine: against its like, its baseline or a limit of your own.",
};

const titleOf: Readonly<Record<RouteKind, string>> = {
  electrical: "Electrical route",
  mechanical: "Mechanical route",
};

export function StartWay({ tools }: { tools: PaneTools }): ReactElement {
  return (
    <>
      <Sentence announces={tools.announces}>{startSentence(tools.book)}</Sentence>
      <NewRouteForm tools={tools} />
      <Cautions />
    </>
  );
}

function NewRouteForm({ tools }: { tools: PaneTools }): ReactElement {
  const { port, say, refresh } = tools;
  const id = useId();
  const [kind, setKind] = useState<RouteKind>("electrical");
  const [typedTitle, setTitle] = useState<string>();
  const [units, setUnits] = useState<Units>("C");
  const [typedRows, setTypedRows] = useState("50");
  const [chosen, setCriteria] = useState<CriteriaChoice>();
  const [asking, setAsking] = useState(false);
  const [making, setMaking] = useState(false);
  const rows = rowsOf(typedRows);
  const title = typedTitle ?? titleOf[kind];
  const choices: readonly CriteriaChoice[] = criteriaChoices[kind];
  const criteria = choices.find((one) => one === chosen) ?? criteriaChoices[kind][0];

  const make = async (): Promise<void> => {
    if (rows === undefined || making) return;
    setMaking(true);
    say("Making the route…");
    const made = await port.makeBook(newRoute({ kind, title: title.trim() || titleOf[kind], units, rows, criteria }));
    setMaking(false);
    setAsking(false);
    refresh();
    say(
      made.ok
        ? `The route stands: ${String(rows)} rows in ${units === "C" ? "°C" : "°F"}, by ${criteria}. F6 goes to the sheet; what is on the route is listed in Assets.`
        : made.message,
    );
  };
  const press = (): void => {
    // What is open goes: that is asked for once more, in place, never by a dialog.
    if (port.newBookIs === "replaced" && !asking) setAsking(true);
    else void make();
  };

  return (
    <form
      className="gp-form"
      aria-labelledby={`${id}-title`}
      onSubmit={(event) => {
        event.preventDefault();
        press();
      }}
    >
      <h2 id={`${id}-title`}>New route</h2>
      <Field label="Inspected" hint={aboutKind[kind]}>
        <RadioGroup layout="horizontal" value={kind} onChange={(_, data) => setKind(data.value as RouteKind)}>
          {routeKinds.map((one) => (
            <Radio key={one} value={one} label={one} />
          ))}
        </RadioGroup>
      </Field>
      <Field label="Title">
        <Input value={title} onChange={(_, data) => setTitle(data.value)} />
      </Field>
      <Field label="Temperatures in">
        <RadioGroup layout="horizontal" value={units} onChange={(_, data) => setUnits(data.value as Units)}>
          <Radio value="C" label="°C, K, m" />
          <Radio value="F" label="°F, ft" />
        </RadioGroup>
      </Field>
      <Field
        label="Rows to begin with"
        {...(rows === undefined ? { validationMessage: `A whole number from 1 to ${String(mostRows)}.` } : {})}
      >
        <Input value={typedRows} inputMode="numeric" onChange={(_, data) => setTypedRows(data.value)} />
      </Field>
      <Field
        label="Criteria, direct view"
        hint={
          kind === "electrical"
            ? "Agreed before the survey; Job can name others."
            : "No standard has a table for machines' points; these numbers are ours."
        }
      >
        <Select value={criteria} onChange={(_, data) => setCriteria(data.value as CriteriaChoice)}>
          {choices.map((name) => (
            <option key={name} value={name}>
              {aboutCriteria[kind][name]}
            </option>
          ))}
        </Select>
      </Field>
      {asking ? (
        <div className="gp-asking" role="alert">
          The new route takes the place of the open workbook, which is then gone.
        </div>
      ) : null}
      <div className="gp-buttons">
        <Next type="submit" off={rows === undefined || making}>
          {asking ? "Replace the open workbook" : "Make the route"}
        </Next>
        {asking ? (
          <Button appearance="subtle" onClick={() => setAsking(false)}>
            Keep it
          </Button>
        ) : null}
      </div>
      <Note>The table grows as it is typed into: the rows are only a beginning.</Note>
    </form>
  );
}
