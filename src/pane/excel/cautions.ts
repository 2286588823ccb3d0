import { cautions } from "../../functions/cautions.js";
import { element } from "../../page/frame/dom.js";

/** What is always shown beside the numbers. */
export function cautionList(): HTMLElement {
  const entries = cautions.map(({ title, text }) => element("li", {}, [element("strong", {}, [`${title}. `]), text]));
  return element("section", { class: "gb-cautions", "aria-labelledby": "gb-cautions-title" }, [
    element("h2", { id: "gb-cautions-title" }, ["Cautions"]),
    element("ol", {}, entries),
  ]);
}
