/** Office itself: whether the page stands in Excel, its pane, its ribbon. */
/// <reference types="office-js" />

/** True in Excel; false where the page was opened as a plain page, or Office's script did not come. */
export async function readyInExcel(): Promise<boolean> {
  if (!("Office" in globalThis)) return false;
  const { host } = await Office.onReady();
  return host === Office.HostType.Excel;
}

/** Runs the ribbon's command of this name (manifest.xml, FunctionName), with the pane open beside. */
export function onCommand(name: string, run: () => void): void {
  Office.actions.associate(name, (event: Office.AddinCommands.Event) => {
    // The ribbon waits for the event, whatever becomes of the pane.
    void Office.addin
      .showAsTaskpane()
      .then(run)
      .finally(() => {
        event.completed();
      });
  });
}
