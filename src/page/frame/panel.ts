/** The place of the pane beside the grid. It is drawn wider, folds away, and slides over a narrow page. */
import type { HostPort } from "../../host/port.js";
import { button, element } from "./dom.js";
import { splitter } from "./splitter.js";
import type { Trouble } from "./trouble.js";

export interface Panel {
  readonly root: HTMLElement;
  /** Stands in the bar: shows and hides the panel. */
  readonly toggle: HTMLButtonElement;
  readonly isOpen: () => boolean;
  /** Folds away where it would cover the grid. */
  readonly giveWay: () => void;
  /** Puts the pane in; until then its place is kept. */
  readonly fill: (port: HostPort) => Promise<void>;
}

const narrow = "(max-width: 899.98px)";

export function sidePanel(layoutChanged: () => void, report: Trouble["report"]): Panel {
  const toggle = button(
    "Panel",
    () => {
      set(root.hidden);
      // Over the grid it is a place of its own; beside it the person stays where they were.
      if (!root.hidden && matchMedia(narrow).matches) chosenWay()?.focus();
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
  const place = element("div", { class: "gb-pane" }, [
    element("p", { class: "gb-starting", role: "status" }, ["Loading the pane…"]),
  ]);
  const root = element("aside", { class: "gb-panel", id: "gb-panel", "aria-label": "Pane" }, [
    element("div", { class: "gb-panel-head" }, [close]),
    place,
  ]);
  const edge = splitter(
    root,
    () => {
      set(false);
      toggle.focus();
    },
    layoutChanged,
  );
  root.prepend(edge.root);
  addEventListener("resize", edge.fit);
  root.addEventListener("keydown", (event) => {
    // What is open within (a list of choices) closes first.
    if (event.key !== "Escape" || event.defaultPrevented || !matchMedia(narrow).matches) return;
    set(false);
    toggle.focus();
  });
  const chosenWay = (): HTMLElement | null => place.querySelector("[role=tab][aria-selected=true]");

  function set(open: boolean): void {
    root.hidden = !open;
    toggle.setAttribute("aria-expanded", String(open));
    layoutChanged();
  }
  // On a narrow page the grid comes first; the panel is one press away.
  set(!matchMedia(narrow).matches);
  return {
    root,
    toggle,
    isOpen: () => !root.hidden,
    giveWay: () => {
      if (matchMedia(narrow).matches) set(false);
    },
    fill: async (port) => {
      try {
        const { mountPane } = await import(/* webpackChunkName: "pane" */ "../../pane/mount.js");
        mountPane(place, { port, announces: false });
      } catch (error) {
        report("The pane could not be loaded; the sheet works without it. The reason:", error);
      }
    },
  };
}
