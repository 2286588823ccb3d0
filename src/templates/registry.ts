/** Every template: what `greybody new` writes, the pane makes in place, and workbooks/ holds. */
import type { Units } from "../functions/units.js";
import type { BookDescription } from "./contract.js";
import { MOST, sizeOf } from "./grid/block.js";
import { gridBook } from "./grid/book.js";
import { demoGrid } from "./grid/demo.js";
import { demoMechanicalRoute } from "./mechanical/demo/route.js";
import { type CriteriaChoice, criteriaChoices, newRoute, type RouteKind } from "./new.js";
import { auditBook } from "./audit/book.js";
import { demoAudit } from "./audit/demo.js";
import { demoRoute } from "./route/demo/route.js";
import { trendBook } from "./trend/book.js";
import { demoTrend } from "./trend/demo.js";
import { whatIfBook } from "./what-if/book.js";
import { demoWhatIf } from "./what-if/demo.js";

export interface TemplateOptions {
  readonly title?: string;
  readonly units: Units;
  /** Empty rows to begin with. */
  readonly rows: number;
  /** One of the template's criteria; the first where absent. */
  readonly criteria?: CriteriaChoice;
}

export interface Template {
  /** As the command line calls it. */
  readonly name: string;
  readonly title: string;
  /** One line for who chooses among them. */
  readonly about: string;
  /** Rows to begin with where none are asked for, and the most that it has room for; where absent the face's own. */
  readonly rows?: { readonly usual: number; readonly most: number };
  /** Of a route: tables of criteria it may be graded by, the usual one first. */
  readonly criteria?: readonly CriteriaChoice[];
  readonly empty: (options: TemplateOptions) => BookDescription;
  /** Filled with an invented scenario. */
  readonly demo?: (units: Units) => BookDescription;
}

const route = (name: string, kind: RouteKind, title: string, about: string): Template => ({
  name,
  title,
  about,
  criteria: criteriaChoices[kind],
  empty: ({ title: given = title, units, rows, criteria = criteriaChoices[kind][0] }) => ({
    ...newRoute({ kind, title: given, units, rows, criteria }),
    template: { name, units },
  }),
});

export const templates: readonly Template[] = [
  {
    ...route("route", "electrical", "Electrical route", "A row an item: three phases, their currents, the air."),
    demo: (units) => ({ ...demoRoute(units), template: { name: "route", units } }),
  },
  {
    ...route(
      "mechanical-route",
      "mechanical",
      "Mechanical route",
      "A row a point of a machine: against its like, its baseline or a limit of your own.",
    ),
    demo: (units) => ({ ...demoMechanicalRoute(units), template: { name: "mechanical-route", units } }),
  },
  {
    name: "audit",
    title: "Audit",
    about: "What a client's report states, worked out again: four verdicts a row, and a page to send.",
    empty: ({ title = "Audit", units, rows }) =>
      auditBook({ title, about: [], report: {}, rows: Array.from({ length: rows }, () => ({})), units }),
    demo: demoAudit,
  },
  {
    name: "what-if",
    title: "What if",
    about: "Readings with one setting running from … to: lowest, highest, and where the grade flips.",
    empty: ({ title = "What if", units, rows, criteria }) =>
      whatIfBook({
        title,
        about: [],
        values: criteria === undefined ? {} : { criteria },
        rows: Array.from({ length: rows }, () => ({})),
        units,
      }),
    demo: demoWhatIf,
  },
  {
    name: "grid",
    title: "Grid",
    about: "A pasted image of readings, corrected as a whole: maximum, mean, boxes and their differences.",
    rows: { usual: MOST.rows, most: MOST.rows },
    empty: ({ title = "Grid", units, rows }) => gridBook({ title, about: [], values: {}, size: sizeOf(rows), units }),
    demo: demoGrid,
  },
  {
    name: "trend",
    title: "Trend",
    about: "One point over years at a common load: slope, steps, and when its limit is reached.",
    empty: ({ title = "Trend", units, rows }) =>
      trendBook({ title, about: [], point: {}, visits: Array.from({ length: rows }, () => ({})), units }),
    demo: demoTrend,
  },
];
