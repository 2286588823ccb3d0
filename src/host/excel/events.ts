/** What Excel tells of itself. */
/// <reference types="office-js" />
import type { Stop } from "../port.js";

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
