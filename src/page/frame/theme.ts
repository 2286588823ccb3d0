/** Light or dark as the system asks, also while the page is open. */
import type { LiveBook } from "../book/live.js";
import type { Tints } from "../show/tints.js";

const query = (): MediaQueryList => matchMedia("(prefers-color-scheme: dark)");

export function prefersDark(): boolean {
  return query().matches;
}

export function followTheme(book: LiveBook, tints: Tints): void {
  const apply = (dark: boolean): void => {
    tints.setDark(dark);
    book.api.toggleDarkMode(dark);
  };
  apply(prefersDark());
  query().addEventListener("change", (event) => {
    apply(event.matches);
  });
}
