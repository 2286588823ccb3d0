import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { HINTS } from "../../src/functions/hints.js";

const core = join(__dirname, "../../src/core");

/** Every key that some file of the core or of the functions gives as a hint: `key: "…"`, or a key handed on as text. */
function keysIn(folder: string): string[] {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter(
    (file) => file.endsWith(".ts") && !file.startsWith("hints/"),
  );
  return files.flatMap((file) => {
    const text = readFileSync(join(folder, file), "utf8");
    return [
      ...text.matchAll(/key: "([a-z-]+)"/g),
      ...text.matchAll(/"((?:criteria|[a-z]+-needed|[a-z]+(?:-[a-z]+)+)-?[a-z-]*)"/g),
    ]
      .map((match) => match[1] ?? "")
      .filter((key) => key in HINTS || text.includes(`key: "${key}"`));
  });
}

describe("hints", () => {
  const used = new Set([...keysIn(core), ...keysIn(join(__dirname, "../../src/functions"))]);

  test.each([...used])("%s has a sentence", (key) => {
    expect(HINTS[key]).toBeDefined();
  });

  test.each(Object.keys(HINTS))("%s is used", (key) => {
    const sources = [core, join(__dirname, "../../src/functions")].flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: "utf8" })
        .filter((file) => file.endsWith(".ts") && !file.endsWith("hints.ts") && !file.startsWith("hints/"))
        .map((file) => readFileSync(join(folder, file), "utf8")),
    );
    expect(sources.some((text) => text.includes(`"${key}"`))).toBe(true);
  });

  test("each is one or more whole sentences", () => {
    const words = {
      temperature: () => "t",
      difference: () => "d",
      number: () => "n",
      percent: () => "p",
      length: () => "l",
      pressure: () => "k",
      speed: () => "s",
    };
    for (const sentence of Object.values(HINTS)) expect(sentence(words)).toMatch(/^[A-Zdntp].*[.?]$/s);
  });
});
