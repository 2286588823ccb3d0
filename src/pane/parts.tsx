/** Small parts that several ways are made of. */
import { Button } from "@fluentui/react-components";
import type { ReactElement, ReactNode } from "react";
import { gradeBars } from "../host/tones.js";

/** The sentence on top of a way. */
export function Sentence({ announces, children }: { announces: boolean; children: string }): ReactElement {
  return (
    <p className="gp-sentence" {...(announces ? { role: "status" } : {})}>
      {children}
    </p>
  );
}

/** The next sensible action: the only filled button of a way. */
export function Next(props: { type?: "submit"; press?: () => void; off?: boolean; children: ReactNode }): ReactElement {
  const { type = "button", press, off = false, children } = props;
  return (
    <Button appearance="primary" className="gp-next" type={type} disabledFocusable={off} onClick={press}>
      {children}
    </Button>
  );
}

export function Note({ children }: { children: ReactNode }): ReactElement {
  return <p className="gp-note">{children}</p>;
}

/** A grade as number, words, bars and fill; the fill comes last. */
export function Grade({ grade, words }: { grade: number; words: string }): ReactElement {
  return (
    <span className="gp-grade" data-grade={grade}>
      <span aria-hidden="true">{gradeBars[grade]} </span>
      {words}
    </span>
  );
}

/** One line of what and one of why; the whole line is pressed. */
export function Line(props: { what: string; why: string; where?: string; press: () => void }): ReactElement {
  const { what, why, where, press } = props;
  return (
    <button type="button" className="gp-line" onClick={press}>
      {where === undefined ? null : <span className="gp-line-where">{where}</span>}
      <span className="gp-line-what">{what}</span>
      <span className="gp-line-why">{why}</span>
    </button>
  );
}
