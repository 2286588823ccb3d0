/** One argument: a cell, a number or a word; the choices are offered where there are some. */
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
  return (
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
}
