/** The workbook's shared strings (ECMA-376 part 1, 18.4): each text once, in the order of first use. */
import { element, MAIN, textElement, XML_HEAD } from "./element.js";

export class SharedStrings {
  private readonly places = new Map<string, number>();
  private uses = 0;

  place(text: string): number {
    this.uses++;
    let place = this.places.get(text);
    if (place === undefined) this.places.set(text, (place = this.places.size));
    return place;
  }

  xml(): string {
    const items = [...this.places.keys()].map((text) => element("si", {}, textElement("t", text)));
    return XML_HEAD + element("sst", { xmlns: MAIN, count: this.uses, uniqueCount: items.length }, ...items);
  }
}
