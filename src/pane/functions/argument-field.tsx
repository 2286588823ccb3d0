/** One argument: a cell, a range, a number or a word; the choices are offered where there are some. */
import { Field, Input } from "@fluentui/react-components";
import { type ReactElement, useId } from "react";
import type { ArgumentSpec } from "../../functions/contract.js";
import { argumentFacts, mayBeLeftOut } from "../../functions/describe.js";
import type { Units } from "../../functions/units.js";

interface FieldProps {
  readonly argument: ArgumentSpec;
  readonly units: Units;
  readonly value: string;
  readonly change: (value: string) => void;
}

export function ArgumentField({ argument, units, value, change }: FieldProps): ReactElement {
  const listId = useId();
  const { name, help, choices } = argument;
  const field = (
    <Field
      label={name}
      required={!mayBeLeftOut(argument)}
      hint={
        <>
          {help}
          <span className="gp-facts">{argumentFacts(argument, units).join(" · ")}</span>
        </>
      }
    >
      <Input
        value={value}
        autoComplete="off"
        spellCheck={false}
        {...(choices === undefined ? {} : { list: listId })}
        contentAfter={
          choices === undefined ? null : (
            <datalist id={listId}>
              {choices.map((choice) => (
                <option key={choice} value={choice} />
              ))}
            </datalist>
          )
        }
        onChange={(_, data) => {
          change(data.value);
        }}
      />
    </Field>
  );
  return (
    <div>
      {field}
      <Columns argument={argument} units={units} />
    </div>
  );
}

/** More than these are of a table whose headers say what they are, and nobody reads them on the way. */
const mostInOrder = 15;

/** What a range taken whole is made of: its columns in their order, or the names that it may hold. */
function Columns({ argument, units }: Pick<FieldProps, "argument" | "units">): ReactElement | null {
  const { columns = [], columnsAre } = argument;
  if (columns.length === 0) return null;
  const count = String(columns.length);
  const inOrder = columnsAre === undefined && columns.length <= mostInOrder;
  const told = inOrder
    ? `${count} columns, in this order; those that may be left out only from the end`
    : `${count} ${columnsAre === undefined ? "columns that are read, in any order, by their headers" : "names that are read, each with its value beside it"}`;
  const Items = inOrder ? "ol" : "ul";
  return (
    <details className="gp-columns" open={inOrder}>
      <summary>{told}</summary>
      <Items>
        {columns.map((column) => (
          <li key={column.name}>
            <span className="gp-code">{column.name}</span> {factsOf(column, units, inOrder)}
          </li>
        ))}
      </Items>
    </details>
  );
}

function factsOf(column: ArgumentSpec, units: Units, inOrder: boolean): string {
  const facts = argumentFacts(column, units);
  return (inOrder ? facts : facts.filter((fact) => fact !== "may be left out")).join(" · ");
}
