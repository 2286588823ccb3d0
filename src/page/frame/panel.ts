/** The panel beside the grid: the functions with their arguments, and the cautions. It folds away, and slides over a narrow page. */
import type { FunctionSpec } from "../../functions/contract.js";
import { cautions } from "../../functions/cautions.js";
import { button, element } from "./dom.js";
import { functionList } from "./function-list.js";

export interface Panel {
  readonly root: HTMLElement;
  /** Stands in the bar: shows and hides the panel. */
  readonly toggle: HTMLButtonElement;
  readonly isOpen: () => boolean;
}

const narrow = "(max-width: 899.98px)";

export function sidePanel(specs: readonly FunctionSpec[], layoutChanged: () => void): Panel {
  const toggle = button(
    "Panel",
    () => {
      set(root.hidden);
      // Over the grid it is a place of its own; beside it the person stays where they were.
      if (!root.hidden && matchMedia(narrow).matches) root.querySelector("input")?.focus();
    },
    { class: "gb-panel-toggle", "aria-controls": "gb-panel" },
  );
  const close = button(
    "Close",
    () => {
      set(false);
      toggle.focus();
    },
    { class: "gb-panel-close" },
  );
  const root = element("aside", { class: "gb-panel", id: "gb-panel", "aria-label": "Functions and cautions" }, [
    element("div", { class: "gb-panel-head" }, [element("h2", {}, ["Functions"]), close]),
    functionList(specs),
    cautionList(),
  ]);
  root.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || !matchMedia(narrow).matches) return;
    set(false);
    toggle.focus();
  });

  function set(open: boolean): void {
    root.hidden = !open;
    toggle.setAttribute("aria-expanded", String(open));
    layoutChanged();
  }
  // On a narrow page the grid comes first; the panel is one press away.
  set(!matchMedia(narrow).matches);
  return { root, toggle, isOpen: () => !root.hidden };
}

function cautionList(): HTMLElement {
  return element("section", { class: "gb-cautions", "aria-labelledby": "gb-cautions-title" }, [
    element("h2", { id: "gb-cautions-title" }, ["Cautions"]),
    element(
      "ol",
      {},
      cautions.map(({ title, text }) => element("li", {}, [element("strong", {}, [`${title}. `]), text])),
    ),
  ]);
}
