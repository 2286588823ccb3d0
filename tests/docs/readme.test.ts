import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { currentReadme } from "../support/readme.js";

const path = join(__dirname, "../../README.md");

test("the function table and the cautions of the README are those of the code (npm run readme)", () => {
  const readme = readFileSync(path, "utf8");
  if (process.env.GREYBODY_WRITE_README === "1") writeFileSync(path, currentReadme(readme));
  expect(readFileSync(path, "utf8")).toBe(currentReadme(readme));
});
