/**
 * Names, ids and argument order of worksheet functions never change after 0.1.0, because workbooks hold them. The list was
 * written when the set stood whole; a new function is added to it with the release that brings it.
 */
import { catalogue } from "../../src/functions/catalogue.js";
import frozen from "./frozen.json";

const written: Readonly<Record<string, string>> = frozen;

test.each(Object.entries(written))("GREY.%s(%s)", (name, args) => {
  const spec = catalogue.find((one) => one.name === name);
  expect(spec?.args.map((arg) => (arg.optional === true ? `[${arg.name}]` : arg.name)).join(", ")).toBe(args);
});

test("no function is missing from the list", () => {
  expect(catalogue.map((spec) => spec.name)).toEqual(Object.keys(written));
});
