/**
 * Office's own theme, told by the ground of its panes. The name and the flag that newer Excels have beside it are not in
 * all of them; Excel on the web has at times no theme at all (office-js issue 6134): then the system's is followed.
 */
/// <reference types="office-js" />
import type { Stop, Theme } from "../port.js";

const systemDark = "(prefers-color-scheme: dark)";

export function theme(): Theme {
  const { Office: office } = globalThis as { Office?: { context?: { officeTheme?: Partial<Office.OfficeTheme> } } };
  return (
    themeOf(office?.context?.officeTheme?.bodyBackgroundColor) ?? (matchMedia(systemDark).matches ? "dark" : "light")
  );
}

/**
 * High contrast is a ground of pure black: Office's own black theme is a dark grey. High contrast on white cannot be
 * told from the white theme by its ground; there, as in every contrast theme of the system, the browser's forced colours
 * do the rest.
 *
 * @param ground "#rrggbb"; undefined is given back for anything else
 */
export function themeOf(ground: string | undefined): Theme | undefined {
  const digits = /^#?([0-9a-f]{6})/i.exec(ground ?? "")?.[1];
  if (digits === undefined) return undefined;
  const [red, green, blue] = [0, 2, 4].map((at) => Number.parseInt(digits.slice(at, at + 2), 16)) as [
    number,
    number,
    number,
  ];
  if (red + green + blue === 0) return "contrast";
  return 0.299 * red + 0.587 * green + 0.114 * blue < 128 ? "dark" : "light";
}

/**
 * Excel tells of no change of its theme, so it is looked at again whenever it may have changed: when the system's has,
 * and when someone comes back to the pane from Excel's own settings.
 */
export function onTheme(listener: (theme: Theme) => void): Stop {
  let told = theme();
  const look = (): void => {
    const now = theme();
    if (now === told) return;
    told = now;
    listener(now);
  };
  const query = matchMedia(systemDark);
  query.addEventListener("change", look);
  globalThis.addEventListener("focus", look);
  globalThis.addEventListener("pointerenter", look, true);
  document.addEventListener("visibilitychange", look);
  return () => {
    query.removeEventListener("change", look);
    globalThis.removeEventListener("focus", look);
    globalThis.removeEventListener("pointerenter", look, true);
    document.removeEventListener("visibilitychange", look);
  };
}
