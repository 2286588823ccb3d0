/** The check of the sheet: every cell in which a function of ours gives an error, with the reason and the way there. */
import type { CellAddress } from "../../host/excel/address.js";
import type { Finding, SheetCheck } from "../../host/excel/reading.js";
import { button, element } from "../../page/frame/dom.js";

export interface SheetCheckView {
  readonly root: HTMLElement;
  readonly run: () => void;
}

/** A list that nobody reads to its end is cut, and says so. */
const most = 200;

export function sheetCheck(
  check: () => Promise<SheetCheck>,
  goTo: (cell: CellAddress) => Promise<void>,
): SheetCheckView {
  const outcome = element("p", { class: "gb-count", role: "status" });
  const list = element("ul", { class: "gb-findings" });
  const say = (words: string): void => {
    outcome.textContent = words;
  };
  const show = (result: SheetCheck): void => {
    say(summary(result));
    const entries = result.findings.slice(0, most).map((finding) => entry(finding));
    list.replaceChildren(...entries.map((child) => element("li", {}, [child])));
  };
  const busy = (): void => {
    say("Excel gave no answer: finish what is being typed in the cell, then press again.");
  };
  const entry = (finding: Finding): HTMLButtonElement => {
    const words = finding.error === "" ? finding.address : `${finding.address}: ${finding.error}`;
    const go = button("", () => void goTo(finding.cell).catch(busy), { title: `Go to ${finding.address}` });
    go.append(element("strong", {}, [words]), element("span", {}, [finding.message]));
    return go;
  };
  const run = (): void => {
    list.replaceChildren();
    say("Looking through the sheet…");
    check().then(show).catch(busy);
  };
  const press = button("Check the sheet", run, { class: "gb-filled" });
  return { root: element("section", { class: "gb-check", "aria-label": "Check" }, [press, outcome, list]), run };
}

function summary({ sheet, formulas, findings }: SheetCheck): string {
  if (formulas === 0) return `${sheet} holds no GREY function.`;
  const looked = `${sheet}: ${formulas} formula${formulas === 1 ? "" : "s"} with GREY functions, `;
  if (findings.length === 0) return `${looked}none with an error.`;
  const cells = `${findings.length} cell${findings.length === 1 ? "" : "s"} with an error`;
  return `${looked}${cells}${findings.length > most ? `; the first ${most}:` : "."}`;
}
