/** The page of the shared runtime in Excel: the pane, beside the functions that src/host/excel/functions.ts ties to it. */
import "../styles/tokens.css";
import "./pane.css";
import { blankErrors } from "../../host/excel/build.js";
import { excelHost } from "../../host/excel/host.js";
import { keptMessages } from "../../host/excel/messages.js";
import { onCommand, readyInExcel } from "../../host/excel/office.js";
import { Reading } from "../../host/excel/reading.js";
import type { Theme } from "../../host/port.js";
import { type MountedPane, mountPane } from "../mount.js";
import { dressPage } from "../theme.js";
import type { Way } from "../ways.js";

const place = document.getElementById("gb-root");
if (place === null) throw new Error("The page has no place for the pane.");

let pane: MountedPane | undefined;
let asked: Way | undefined;
const ask = (way: Way): void => {
  asked = way;
  pane?.show(way);
};
// Before Office is asked: a press on the ribbon may be what opens this page.
if ("Office" in globalThis) {
  onCommand("newRoute", () => {
    ask("start");
  });
  onCommand("checkSheet", () => {
    ask("check");
  });
}

void readyInExcel().then((inExcel) => {
  if (!inExcel) {
    place.textContent = "This page was opened outside Excel: the pane and its reading of the workbook work there.";
    return;
  }
  const reading = new Reading(keptMessages, blankErrors);
  const port = excelHost(keptMessages, blankErrors);
  const dress = (theme: Theme): void => {
    dressPage(document.documentElement, theme);
  };
  dress(port.theme());
  port.onTheme(dress);
  pane = mountPane(place, {
    port,
    announces: true,
    lookThrough: () => reading.check(),
    ...(asked === undefined ? {} : { first: asked }),
  });
});
