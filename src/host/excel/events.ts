/** What Excel tells of itself. */
/// <reference types="office-js" />
import type { Stop, Theme } from "../port.js";

type Handler = OfficeExtension.EventHandlerResult<unknown>;

/** Adds handlers; a listener that is gone before Excel has them hears nothing. */
export function onExcel(
  listener: () => void,
  add: (context: Excel.RequestContext, heard: () => Promise<void>) => Handler[],
): Stop {
  let stopped = false;
  let handlers: Handler[] = [];
  const heard = (): Promise<void> => {
    if (!stopped) listener();
    return Promise.resolve();
  };
  void Excel.run(async (context) => {
    handlers = add(context, heard);
    await context.sync();
  }).catch(() => {
    // An Excel without the event: the pane reads again when it is pressed.
  });
  return () => {
    stopped = true;
    for (const handler of handlers) handler.remove();
  };
}

/** By the ground of Office's own pane; light where it does not say. */
export function theme(): Theme {
  const { Office: office } = globalThis as { Office?: { context?: { officeTheme?: Partial<Office.OfficeTheme> } } };
  const ground = office?.context?.officeTheme?.bodyBackgroundColor;
  if (ground === undefined) return "light";
  const [red = 255, green = 255, blue = 255] = [1, 3, 5].map((at) => Number.parseInt(ground.slice(at, at + 2), 16));
  return 0.299 * red + 0.587 * green + 0.114 * blue < 128 ? "dark" : "light";
}

/** Office tells of no change in every Excel; what the system prefers goes with it in most. */
export function onTheme(listener: (theme: Theme) => void): Stop {
  const query = matchMedia("(prefers-color-scheme: dark)");
  const heard = (): void => {
    listener(theme());
  };
  query.addEventListener("change", heard);
  return () => {
    query.removeEventListener("change", heard);
  };
}
