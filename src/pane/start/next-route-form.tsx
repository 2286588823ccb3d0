/** The next route from the open one: a date, a press, and once more where it takes the open one's place. */
import { Button, Field, Input } from "@fluentui/react-components";
import { type ReactElement, useId, useState } from "react";
import type { Template } from "../../templates/registry.js";
import { Note } from "../parts.js";
import type { PaneTools } from "../tools.js";
import { dayTyped, nextFromOpen, NOT_HERE } from "./next-route.js";

export function NextRouteForm({ tools, template }: { tools: PaneTools; template: Template }): ReactElement {
  const { port, say, refresh } = tools;
  const id = useId();
  const [typed, setTyped] = useState("");
  const [asking, setAsking] = useState(false);
  const [making, setMaking] = useState(false);
  const date = dayTyped(typed);
  const isWrong = Number.isNaN(date);

  const make = async (): Promise<void> => {
    if (isWrong || making) return;
    setMaking(true);
    say("Making the next route…");
    const next = await nextFromOpen(port, template, date);
    const made = next.ok ? await port.makeBook(next.value.book) : next;
    setMaking(false);
    setAsking(false);
    refresh();
    const [, repeats = "", overdue = ""] = next.ok ? next.value.told : [];
    say(made.ok ? `The next route stands. ${repeats} ${overdue} The sheet Carried over tells the rest.` : made.message);
  };

  return (
    <section className="gp-form" aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>Next route from this one</h2>
      {port.newBookIs === "added" ? (
        <Note>{NOT_HERE}</Note>
      ) : (
        <>
          <Field
            label="Survey date"
            hint="Where it is known: what is overdue by then comes first."
            {...(isWrong ? { validationMessage: "A day such as 2026-09-14." } : {})}
          >
            <Input value={typed} placeholder="yyyy-mm-dd" onChange={(_, data) => setTyped(data.value)} />
          </Field>
          {asking ? (
            <div className="gp-asking" role="alert">
              The next route takes the place of this one, which is then gone: save it first.
            </div>
          ) : null}
          <div className="gp-buttons">
            <Button
              disabledFocusable={isWrong || making}
              onClick={() => {
                if (asking) void make();
                else setAsking(true);
              }}
            >
              {asking ? "It is saved: make the next one" : "Make the next route"}
            </Button>
            {asking ? (
              <Button appearance="subtle" onClick={() => setAsking(false)}>
                Stay with this one
              </Button>
            ) : null}
          </div>
          <Note>
            Assets, windows, criteria and defaults are carried over; repeats and what is overdue stand on top, with last
            time&apos;s grade, rise, load and repair beside today&apos;s.
          </Note>
        </>
      )}
    </section>
  );
}
