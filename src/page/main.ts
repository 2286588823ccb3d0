/** The page: opens a described workbook in the grid, with the engine in a worker. */
import "../pane/styles/tokens.css";
import "./styles/layout.css";
import "./styles/narrow.css";
import "./styles/grid.css";
import "./styles/panel.css";
import "./styles/files.css";
import { catalogue } from "../functions/catalogue.js";
import { catchUncaught, trouble } from "./frame/trouble.js";
import { openPage } from "./open.js";
import { chooseBook } from "./which-book.js";

const root = document.getElementById("gb-root");
if (root === null) throw new Error("The page has no place for the workbook.");
const line = trouble();
document.body.prepend(line.root);
const starting = (detail: unknown): void => {
  line.report("The workbook could not be opened. Reload the page; if that does not help, this is the reason:", detail);
};

// Univer throws some of its troubles past everybody; once the workbook is open they are no reason to give it up.
catchUncaught((detail) => {
  if (globalThis.greybody === undefined) starting(detail);
});
chooseBook()
  .then((book) => openPage({ root, book, specs: catalogue, report: line.report }))
  .then((handle) => {
    globalThis.greybody = handle;
  })
  .catch(starting);
