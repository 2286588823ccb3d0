/** F6 goes round the page's parts: grid, sheet tabs, bar, panel; Shift+F6 back. The grid itself keeps Tab and Escape. */
import { ILayoutService } from "@univerjs/ui";
import type { LiveBook } from "../book/live.js";

export interface Region {
  readonly root: HTMLElement;
  readonly focus: () => void;
  readonly available: () => boolean;
}

export function gridRegion(root: HTMLElement, book: LiveBook): Region {
  return {
    root,
    available: () => true,
    focus: () => {
      book.injector.get(ILayoutService).focus();
    },
  };
}

/** A part whose chosen tab, or else whose first control, takes the focus; one that `remembers`, what had it last. */
export function region(
  root: HTMLElement,
  available: () => boolean = () => true,
  { remembers = false }: { remembers?: boolean } = {},
): Region {
  let last: HTMLElement | undefined;
  if (remembers) {
    root.addEventListener("focusin", ({ target }) => {
      if (target instanceof HTMLElement) last = target;
    });
  }
  const focus = (): void => {
    if (last?.isConnected === true) {
      last.focus();
      if (document.activeElement === last) return;
    }
    const chosen = root.querySelectorAll<HTMLElement>("[role=tab][aria-selected=true]");
    const others = root.querySelectorAll<HTMLElement>("button:not([tabindex='-1']), input, summary");
    for (const control of [...chosen, ...others]) {
      control.focus();
      // A hidden or disabled one does not take it.
      if (document.activeElement === control) return;
    }
  };
  return { root, available, focus };
}

export function walkRegions(regions: readonly Region[]): void {
  // In the capture phase: the grid's editor keeps every key that reaches it.
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6") return;
      event.preventDefault();
      event.stopPropagation();
      const open = regions.filter((part) => part.available());
      const here = open.findIndex((part) => part.root.contains(document.activeElement));
      const step = event.shiftKey ? -1 : 1;
      open[(Math.max(here, 0) + step + open.length) % open.length]?.focus();
    },
    { capture: true },
  );
}
