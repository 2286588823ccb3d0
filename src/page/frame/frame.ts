/** The page's parts, put together: bar, grid, tabs and status line, panel. */
import { element } from "./dom.js";

export interface Parts {
  readonly bar: HTMLElement;
  readonly tabs: HTMLElement;
  readonly status: HTMLElement;
  readonly calculating: HTMLElement;
  readonly panel: HTMLElement;
}

export interface Frame {
  /** Holds Univer; what floats over the grid is placed in `stage`. */
  readonly grid: HTMLElement;
  readonly stage: HTMLElement;
}

export const gridId = "gb-grid";

export function buildFrame(root: HTMLElement, parts: Parts): Frame {
  const grid = element("div", { class: "gb-grid", id: gridId, role: "tabpanel", "aria-label": "Sheet" });
  const stage = element("div", { class: "gb-stage" }, [grid]);
  const foot = element("div", { class: "gb-foot" }, [parts.tabs, parts.calculating]);
  const main = element("main", { class: "gb-main" }, [stage, foot, parts.status]);
  root.replaceChildren(parts.bar, element("div", { class: "gb-body" }, [main, parts.panel]));
  root.classList.add("gb-page");
  return { grid, stage };
}
