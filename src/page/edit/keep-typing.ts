/**
 * What a person is typing stays. The grid reads the cell under its editor anew whenever cells are written, also while it is
 * typed into: a table that grows below the last entry, or a result that comes in, then took the first letters away.
 */
import type { Injector } from "@univerjs/core";
import { IEditorBridgeService } from "@univerjs/sheets-ui";

export function keepTyping(injector: Injector): void {
  const editor = injector.get(IEditorBridgeService);
  const refresh = editor.refreshEditCellState.bind(editor);
  editor.refreshEditCellState = () => {
    if (!editor.isVisible().visible) refresh();
  };
}
