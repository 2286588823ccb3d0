/** Chooses a template and makes its sheets in place, through the port. */
import { Button, Field, Input, Radio, RadioGroup, Select } from "@fluentui/react-components";
import { type ReactElement, useId, useState } from "react";
import type { Units } from "../../functions/units.js";
import type { CriteriaChoice } from "../../templates/new.js";
import { type Template, templates } from "../../templates/registry.js";
import { Next, Note } from "../parts.js";
import type { PaneTools } from "../tools.js";
import { mostRows, rowsOf } from "./rows.js";

const aboutCriteria: Partial<Record<CriteriaChoice, string>> = {
  "NETA-100.18": "NETA-100.18: similar, air",
  house: "house (ours): similar, air, baseline",
  "house-mechanical": "house-mechanical (ours): like, baseline",
};

const USUAL_ROWS = 50;

export function NewSheetsForm({ tools }: { tools: PaneTools }): ReactElement {
  const { port, say, refresh } = tools;
  const id = useId();
  const [template, setTemplate] = useState<Template>(templates[0]!);
  const [typedTitle, setTitle] = useState<string>();
  const [units, setUnits] = useState<Units>("C");
  const [rowsTyped, setRowsTyped] = useState<string>();
  const [chosen, setCriteria] = useState<CriteriaChoice>();
  const [asking, setAsking] = useState(false);
  const [making, setMaking] = useState(false);
  const shownRows = rowsTyped ?? String(template.rows?.usual ?? USUAL_ROWS);
  const most = template.rows?.most ?? mostRows;
  const rows = rowsOf(shownRows, most);
  const title = typedTitle ?? template.title;
  const criteria = template.criteria?.find((one) => one === chosen) ?? template.criteria?.[0];

  const make = async (): Promise<void> => {
    if (rows === undefined || making) return;
    setMaking(true);
    say("Making the sheets…");
    const given = title.trim() || template.title;
    const made = await port.makeBook(
      template.empty({ title: given, units, rows, ...(criteria === undefined ? {} : { criteria }) }),
    );
    setMaking(false);
    setAsking(false);
    refresh();
    say(made.ok ? madeSentence(template, rows, units, criteria) : made.message);
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
      <h2 id={`${id}-title`}>New sheets</h2>
      <Field label="For" hint={template.about}>
        <RadioGroup
          value={template.name}
          onChange={(_, data) => setTemplate(templates.find(({ name }) => name === data.value) ?? template)}
        >
          {templates.map((one) => (
            <Radio key={one.name} value={one.name} label={one.title} />
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
        {...(rows === undefined ? { validationMessage: `A whole number from 1 to ${String(most)}.` } : {})}
      >
        <Input value={shownRows} inputMode="numeric" onChange={(_, data) => setRowsTyped(data.value)} />
      </Field>
      {criteria === undefined ? null : <Criteria template={template} criteria={criteria} choose={setCriteria} />}
      {asking ? (
        <div className="gp-asking" role="alert">
          The new sheets take the place of the open workbook, which is then gone.
        </div>
      ) : null}
      <div className="gp-buttons">
        <Next type="submit" off={rows === undefined || making}>
          {asking ? "Replace the open workbook" : "Make the sheets"}
        </Next>
        {asking ? (
          <Button appearance="subtle" onClick={() => setAsking(false)}>
            Keep it
          </Button>
        ) : null}
      </div>
      <Note>A table grows as it is typed into: the rows are only a beginning.</Note>
    </form>
  );
}

function Criteria(props: {
  template: Template;
  criteria: CriteriaChoice;
  choose: (one: CriteriaChoice) => void;
}): ReactElement {
  const { template, criteria, choose } = props;
  const hint =
    template.name === "mechanical-route"
      ? "No standard has a table for machines' points; these numbers are ours."
      : "Agreed before the survey; Job can name others.";
  return (
    <Field label="Criteria, direct view" hint={hint}>
      <Select value={criteria} onChange={(_, data) => choose(data.value as CriteriaChoice)}>
        {template.criteria?.map((name) => (
          <option key={name} value={name}>
            {aboutCriteria[name] ?? name}
          </option>
        ))}
      </Select>
    </Field>
  );
}

function madeSentence(template: Template, rows: number, units: Units, criteria: CriteriaChoice | undefined): string {
  const by = criteria === undefined ? "" : `, by ${criteria}`;
  const next =
    criteria === undefined
      ? "F6 goes to the sheet."
      : "F6 goes to the sheet; what is on the route is listed in Assets.";
  return `${template.title}: the sheets stand, ${String(rows)} rows in ${units === "C" ? "°C" : "°F"}${by}. ${next}`;
}
