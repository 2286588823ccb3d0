/** What an add-in's manifest says, read from its text. Whether the text is well formed, the schema's test tells. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** What stands between its tags where that is plain text. */
  readonly text: string;
}

/** All elements in their order, comments left out, names without their prefix. */
export function elementsOf(xml: string): Element[] {
  const plain = xml.replaceAll(/<!--[^]*?-->/g, "");
  return [...plain.matchAll(/<(?:\w+:)?(\w+)((?:\s+[\w:]+="[^"]*")*)\s*(?:\/>|>([^<]*))/g)].map(
    ([, name = "", attributes = "", text = ""]) => ({
      name,
      attributes: Object.fromEntries(
        [...attributes.matchAll(/([\w:]+)="([^"]*)"/g)].map(([, key = "", value = ""]) => [key, value]),
      ),
      text: text.trim(),
    }),
  );
}

/** The text of the first element of this name, with its tags. */
export function partOf(xml: string, name: string): string {
  return new RegExp(`<${name}[\\s>][^]*?</${name}>`).exec(xml)?.[0] ?? "";
}
