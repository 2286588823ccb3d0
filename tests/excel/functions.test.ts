import Ajv from "ajv";
import { readFileSync } from "node:fs";
import path from "node:path";
import { runInNewContext } from "node:vm";
import { catalogue } from "../../src/functions/catalogue.js";
import { root } from "../support/run.js";
import schema from "./functions-json.schema.json";

interface Metadata {
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly parameters: readonly { readonly name: string; readonly optional?: boolean }[];
  }[];
}

type Associated = (...args: readonly unknown[]) => readonly (readonly unknown[])[];

const read = (file: string): string => readFileSync(path.join(root, "dist/excel", file), "utf8");

/** Excel's own error class, as the documentation describes it. */
class ExcelError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
};

/** The functions that the built script ties to their names, run as Excel's runtime would run it. */
function associated(): ReadonlyMap<string, Associated> {
  const functions = new Map<string, Associated>();
  const associate = (id: string, run: Associated): void => void functions.set(id, run);
  runInNewContext(read("functions.js"), { CustomFunctions: { associate, Error: ExcelError, ErrorCode } });
  return functions;
}

const metadata = JSON.parse(read("functions.json")) as Metadata;

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

test("every function of functions.json is associated", () => {
  expect([...associated().keys()].sort()).toEqual(metadata.functions.map(({ id }) => id).sort());
});

describe("CORRECTED as Excel calls it", () => {
  const corrected: Associated = (...args) => {
    const run = associated().get("CORRECTED");
    if (run === undefined) throw new Error("CORRECTED is not associated.");
    return run(...args);
  };

  // Value: issue 2, "Done when" 2.
  test("a left-out argument arrives as null and takes its default", () => {
    const [[value] = []] = corrected(
      [[58]],
      [[0.85]],
      [[22]],
      [[0.98]],
      [[20]],
      null,
      null,
      null,
      null,
      null,
      null,
      null,
    );
    expect(value).toBeCloseTo(64.1319672049731, 9);
  });

  test("an error keeps its kind and carries our message", () => {
    const [[error] = []] = corrected([[58]], [[95]], [[22]]);
    expect(error).toBeInstanceOf(ExcelError);
    const { code, message } = error as ExcelError;
    expect([code, message]).toEqual(["#VALUE!", expect.stringMatching(/emissivity.*95/)]);
  });

  test("an error that comes in passes through, row by row", () => {
    const rows = corrected([[58], [new ExcelError("#DIV/0!")]], [[0.95]], [[22]]);
    expect(rows.map(([cell]) => (cell instanceof ExcelError ? cell.code : typeof cell))).toEqual(["number", "#DIV/0!"]);
  });
});
