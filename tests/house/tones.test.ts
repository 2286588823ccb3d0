/** The colours stand in one file for every host, and the frame's style sheet says the same. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { darkTones, lightTones, type Tones } from "../../src/host/tones.js";
import { root } from "../support/run.js";

const css = readFileSync(path.join(root, "src/pane/styles/tokens.css"), "utf8");
const [light = "", dark = ""] = css.split("@media (prefers-color-scheme: dark)");

function told(part: string): Record<string, string> {
  return Object.fromEntries([...part.matchAll(/--([\w-]+): (#\w+);/g)].map(([, name, colour]) => [name!, colour!]));
}

test.each([
  ["light", light, lightTones],
  ["dark", dark, darkTones],
])("the frame in %s", (_, part, tones: Tones) => {
  const { paper, ink, muted, accent, line, trouble, computed } = tones;
  expect(told(part)).toMatchObject({ paper, ink, muted, accent, line, trouble, soft: computed });
});
