/** The edge between grid and pane: drawn by pointer or by keyboard, within what leaves the grid the greater part. */
import { element } from "./dom.js";

export interface Splitter {
  readonly root: HTMLElement;
  /** Told again whenever the room has changed: what can be had, and what is. */
  readonly fit: () => void;
}

const narrowest = 320;
/** The grid is the main thing: it keeps the rest. */
const greatestShare = 0.4;
const step = 16;

/**
 * @param pane what is drawn wider, at the right of the page
 * @param fold puts the pane away
 */
export function splitter(pane: HTMLElement, fold: () => void, layoutChanged: () => void): Splitter {
  const root = element("div", {
    class: "gb-splitter",
    role: "separator",
    tabindex: "0",
    "aria-label": "Width of the pane",
    "aria-orientation": "vertical",
    "aria-controls": pane.id,
    "aria-valuemin": String(narrowest),
    title: "Draw the pane wider; Enter folds it away, a double click gives it its usual width",
  });
  const widest = (): number => Math.max(narrowest, Math.floor(innerWidth * greatestShare));
  const now = (): number => Math.round(pane.getBoundingClientRect().width);

  function fit(): void {
    if (pane.hidden) return;
    const width = now();
    root.setAttribute("aria-valuemax", String(widest()));
    root.setAttribute("aria-valuenow", String(width));
    root.setAttribute("aria-valuetext", `${String(width)} pixels`);
  }

  /** The usual width where none is said. */
  function set(width?: number): void {
    if (width === undefined) pane.style.removeProperty("--panel-width");
    else pane.style.setProperty("--panel-width", `${String(Math.min(Math.max(width, narrowest), widest()))}px`);
    layoutChanged();
    fit();
  }

  root.addEventListener("keydown", (event) => {
    const to = {
      ArrowLeft: now() + step,
      ArrowRight: now() - step,
      PageUp: now() + 4 * step,
      PageDown: now() - 4 * step,
      Home: narrowest,
      End: widest(),
    }[event.key];
    if (to === undefined && event.key !== "Enter") return;
    event.preventDefault();
    if (to === undefined) fold();
    else set(to);
  });
  root.addEventListener("dblclick", () => {
    set();
  });
  root.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    event.preventDefault();
    root.focus();
    root.setPointerCapture(event.pointerId);
    const grip = pane.getBoundingClientRect().left - event.clientX;
    const draw = ({ clientX }: PointerEvent): void => {
      set(pane.getBoundingClientRect().right - clientX - grip);
    };
    const end = (): void => {
      root.removeEventListener("pointermove", draw);
      root.removeEventListener("lostpointercapture", end);
    };
    root.addEventListener("pointermove", draw);
    root.addEventListener("lostpointercapture", end);
  });
  return { root, fit };
}
