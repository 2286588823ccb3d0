/** The report sheets of a route, in the order of the work. */
import type { SheetDescription } from "../contract.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { dueSheet } from "./due.js";
import { exceptionsSheet } from "./exceptions.js";
import { followUpSheet } from "./follow-up.js";
import type { FollowUp } from "./follow-up-typed.js";
import type { ReportHead } from "./head.js";
import type { ReportKind } from "./kind.js";
import { notInspectedSheet } from "./not-inspected.js";
import { pagesFor, pagesSheet } from "./pages.js";

export interface Report {
  readonly kind: ReportKind;
  readonly head: ReportHead;
  /** Rows of Readings that the book begins with. */
  readonly rows: number;
  readonly followUp: readonly FollowUp[];
  readonly units: SheetUnits;
}

export function reportSheets({ kind, head, rows, followUp, units }: Report): SheetDescription[] {
  const pages = pagesFor(rows);
  return [
    exceptionsSheet(kind, head, units, pages),
    pagesSheet(kind, head, units, pages),
    notInspectedSheet(kind, head),
    followUpSheet(kind, head, followUp, units),
    dueSheet(kind, head),
  ];
}
