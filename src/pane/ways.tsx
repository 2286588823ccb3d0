/** The five ways of the pane, in the order of the work. */
import type { ReactElement } from "react";

export const ways = ["start", "check", "look", "functions", "sources"] as const;
export type Way = (typeof ways)[number];

export const wayNames: Readonly<Record<Way, string>> = {
  start: "Start",
  check: "Check",
  look: "Look",
  functions: "Functions",
  sources: "Sources",
};

/** Outlines of our own: a new sheet, a list that is ticked, dots over bands, a bracket, a book. */
const outlines: Readonly<Record<Way, string>> = {
  start: "M5 2.5h7l3.5 3.5v11.5h-10.5zM12 2.5V6h3.5M10 8.5v6M7 11.5h6",
  check: "M3 5l1.5 1.5L7 4M3 10.5l1.5 1.5L7 9.5M3 16l1.5 1.5L7 15M9.5 5.5H17M9.5 11H17M9.5 16.5H17",
  look: "M3 3v14h14M6.5 13.5h.01M9 9.5h.01M12.5 11.5h.01M15.5 5.5h.01",
  functions: "M7 3C4.5 5 3.5 7.5 3.5 10S4.5 15 7 17M13 3c2.5 2 3.5 4.5 3.5 7s-1 5-3.5 7M8 7.5l4 5M12 7.5l-4 5",
  sources: "M10 5C8 3.5 5.5 3.5 3 4v12c2.5-.5 5-.5 7 1 2-1.5 4.5-1.5 7-1V4c-2.5-.5-5-.5-7 1zM10 5v12",
};

export function WayIcon({ way }: { readonly way: Way }): ReactElement {
  return (
    <svg className="gp-icon" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
      <path
        d={outlines[way]}
        fill="none"
        stroke="currentColor"
        strokeWidth={way === "look" ? 2 : 1.5}
        strokeLinecap="round"
      />
    </svg>
  );
}
