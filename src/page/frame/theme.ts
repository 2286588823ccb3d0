/** Light or dark as the system asks, also while the page is open. */
import type { LiveBook } from "../book/live.js";
import type { Tints } from "../show/tints.js";

const query = (): MediaQueryList => matchMedia("(prefers-color-scheme: dark)");

export function prefersDark(): boolean {
  return query().matches;
}

/** Told when the system changes to light or dark. */
export function onPrefersDark(listener: (dark: boolean) => void): () => void {
  const media = query();
  const heard = (event: MediaQueryListEvent): void => {
    listener(event.matches);
  };
  media.addEventListener("change", heard);
  return () => {
    media.removeEventListener("change", heard);
  };
}

export function followTheme(book: LiveBook, tints: Tints): void {
  const apply = (dark: boolean): void => {
    tints.setDark(dark);
    book.api.toggleDarkMode(dark);
  };
  apply(prefersDark());
  onPrefersDark(apply);
}
