/** Which workbook the page opens: the demo route, or with ?book=NAME the description books/NAME.json beside the page. */
import type { BookDescription } from "../templates/contract.js";
import { templates } from "../templates/registry.js";

export async function chooseBook(): Promise<BookDescription> {
  const name = new URLSearchParams(location.search).get("book");
  if (name === null) return demo();
  if (!/^[\w-]+$/.test(name)) throw new Error(`"${name}" is no name of a book: letters, digits, - and _ only.`);
  const answer = await fetch(`books/${name}.json`);
  if (!answer.ok) throw new Error(`There is no book "${name}" here (${String(answer.status)}).`);
  return (await answer.json()) as BookDescription;
}

function demo(): BookDescription {
  const first = templates.find((template) => template.demo !== undefined);
  if (first?.demo === undefined) throw new Error("No template has a demo.");
  return first.demo("C");
}
