/** When the page cannot start or its worker stops: a readable line instead of a blank or frozen page. */
import { element } from "./dom.js";

export interface Trouble {
  readonly root: HTMLElement;
  readonly report: (what: string, detail: unknown) => void;
}

export function trouble(): Trouble {
  const root = element("div", { class: "gb-trouble", role: "alert", hidden: "" });
  return {
    root,
    report: (what, detail) => {
      const reason = detail instanceof Error ? detail.message : typeof detail === "string" ? detail : "";
      const text = [what, reason].filter(Boolean).join(" ");
      // The first trouble is the cause; what follows from it would bury it.
      if (!root.hidden) return;
      root.textContent = text;
      root.hidden = false;
    },
  };
}

/** Everything that nobody caught. */
export function catchUncaught(report: (detail: unknown) => void): void {
  addEventListener("error", (event) => {
    report(event.error ?? event.message);
  });
  addEventListener("unhandledrejection", (event) => {
    report(event.reason);
  });
}
