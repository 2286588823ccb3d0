import Ajv from "ajv";
import { readFileSync } from "node:fs";
import path from "node:path";
import { catalogue } from "../../src/functions/catalogue.js";
import { argumentFacts } from "../../src/functions/describe.js";
import { metadata } from "../support/excel-runtime.js";
import { root } from "../support/run.js";
import schema from "./functions-json.schema.json";

test("functions.json is what Excel asks for, one function for each of the catalogue", () => {
  const validate = new Ajv().compile(schema);
  expect([validate(metadata), validate.errors]).toEqual([true, null]);
  expect(metadata.functions.map(({ id, name }) => [id, name])).toEqual(catalogue.map(({ name }) => [name, name]));
});

test("names are told apart and required arguments come first", () => {
  expect(new Set(metadata.functions.map(({ name }) => name)).size).toBe(metadata.functions.length);
  for (const { name, parameters } of metadata.functions) {
    expect([name, new Set(parameters.map((parameter) => parameter.name)).size]).toEqual([name, parameters.length]);
    const optional = parameters.map((parameter) => parameter.optional === true);
    expect([name, optional]).toEqual([name, [...optional].sort()]);
  }
});

test("every argument's description has its unit, range, choices and default, and whether it may be left out", () => {
  for (const [index, { args }] of catalogue.entries()) {
    const described = metadata.functions[index]!.parameters;
    expect(described.map(({ name, optional }) => [name, optional === true])).toEqual(
      // What another argument may name as sought must not be asked for before the call: Excel would refuse to send it.
      args.map(({ name, optional, soughtBy }) => [name, optional === true || soughtBy !== undefined]),
    );
    for (const [position, argument] of args.entries()) {
      for (const fact of argumentFacts(argument)) expect(described[position]!.description).toContain(fact);
    }
  }
});

test("every function asks for its address and has its place on the help page", () => {
  const help = readFileSync(path.join(root, "dist/excel/help.html"), "utf8");
  for (const { name, helpUrl } of metadata.functions) {
    expect(helpUrl).toBe(`https://localhost:3000/help.html#${name}`);
    expect(help).toContain(` id="${name}"`);
  }
  expect(metadata).toMatchObject({
    allowErrorForDataTypeAny: true,
    functions: catalogue.map(() => ({ options: { requiresAddress: true } })),
  });
});
