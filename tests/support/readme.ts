import { catalogue } from "../../src/functions/catalogue.js";
import { cautions } from "../../src/functions/cautions.js";
import { signature } from "../../src/functions/describe.js";

/** Markdown of the parts of the README that are made from the catalogue and the cautions, by the word in their marker. */
const PARTS: Readonly<Record<string, () => string>> = {
  functions: () => {
    const rows = catalogue.map((spec) => {
      const example = `\`${spec.example.formula.replaceAll("|", "\\|")}\` → ${spec.example.shows}`;
      return `| \`${signature(spec)}\` | ${spec.summary.replaceAll("|", "\\|")} | ${example} |`;
    });
    return ["| Function | What it gives | Example |", "| --- | --- | --- |", ...rows].join("\n");
  },
  cautions: () => cautions.map(({ title, text }, i) => `${i + 1}. **${title}.** ${text}`).join("\n"),
};

/** The README with its made parts as they should be now. */
export function currentReadme(readme: string): string {
  let text = readme;
  for (const [name, make] of Object.entries(PARTS)) {
    const marked = new RegExp(`(<!-- ${name}: [^>]*-->\\n)[^]*?(\\n?<!-- end of ${name} -->)`);
    if (!marked.test(text)) throw new Error(`README.md has lost its marker for ${name}`);
    text = text.replace(
      marked,
      (_, start: string) =>
        `${start}\n<!-- prettier-ignore-start -->\n\n${make()}\n\n<!-- prettier-ignore-end -->\n<!-- end of ${name} -->`,
    );
  }
  return text;
}
