/**
 * The page of the shared runtime in Excel: the pane, beside the functions that src/host/excel/functions.ts ties to it.
 * Its first form; the pane that Excel and the page share takes its place.
 */
import "../styles/tokens.css";
import "../../page/styles/panel.css";
import "./pane.css";
import { catalogue } from "../../functions/catalogue.js";
import { blankErrors } from "../../host/excel/build.js";
import { keptMessages } from "../../host/excel/messages.js";
import { onCommand, readyInExcel } from "../../host/excel/office.js";
import { goTo, onSelection, Reading } from "../../host/excel/reading.js";
import { element } from "../../page/frame/dom.js";
import { functionList } from "../../page/frame/function-list.js";
import { cautionList } from "./cautions.js";
import { selectedCell } from "./selected-cell.js";
import { sheetCheck } from "./sheet-check.js";

const root = document.getElementById("gb-root");
if (root === null) throw new Error("The page has no place for the pane.");

const reading = new Reading(keptMessages, blankErrors);
const cell = selectedCell(() => reading.selected());
const check = sheetCheck(() => reading.check(), goTo);
const workbook = element("div", {}, [cell.root, check.root]);
const outside = element("p", { class: "gb-outside" }, [
  "This page was opened outside Excel: its functions and its reading of the workbook work there.",
]);

root.replaceChildren(
  element("main", { class: "gb-panel gb-excel" }, [
    element("h1", {}, ["Greybody"]),
    workbook,
    outside,
    element("h2", {}, ["Functions"]),
    functionList(catalogue),
    cautionList(),
  ]),
);
outside.hidden = true;
// Before Office is asked: a press on the ribbon may be what opens this page.
if ("Office" in globalThis) onCommand("checkSheet", check.run);

void readyInExcel().then(async (inExcel) => {
  workbook.hidden = !inExcel;
  outside.hidden = inExcel;
  if (!inExcel) return;
  keptMessages.onChange(cell.refresh);
  cell.refresh();
  await onSelection(cell.refresh);
});
