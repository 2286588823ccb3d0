/** The command line's own words: help, version, the table of functions, and bad usage in one line. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { catalogue } from "../../src/functions/catalogue.js";
import { CLI } from "../support/calc.js";
import { root, runNode } from "../support/run.js";

test("--version is the package's", async () => {
  const { version } = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")) as { version: string };
  expect(await runNode([CLI, "--version"])).toEqual({ status: 0, stdout: `${version}\n`, stderr: "" });
});

test.each([[["--help"]], [["calc", "--help"]], [["recalc", "--help"]], [["functions", "-h"]], [["serve", "--help"]]])(
  "%j is help",
  async (args) => {
    const { status, stdout, stderr } = await runNode([CLI, ...args]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toMatch(/^Usage: greybody/);
  },
);

test("the help names every command", async () => {
  const { stdout } = await runNode([CLI, "--help"]);
  for (const command of ["calc", "recalc", "functions", "serve"])
    expect(stdout).toMatch(new RegExp(`^  ${command} `, "m"));
});

test.each([
  [[], /a command is missing/],
  [["corect"], /no command corect/],
  [["--wrong"], /--wrong/],
  [["calc", "--hlep"], /no option --hlep/],
  [["functions", "CORECTED"], /no function CORECTED\. Did you mean CORRECTED\?/],
  [["functions", "XYZXYZ"], /no function XYZXYZ/],
  [["functions", "ABOUT", "CRITERIA"], /too many arguments/],
  [["serve", "--port", "http"], /port/],
  [["serve", "--port", "70000"], /port/],
  [["serve", "--prt", "3000"], /--prt/],
])("%j is bad usage: one line, status 2", async (args, words) => {
  const { status, stdout, stderr } = await runNode([CLI, ...args]);
  expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
  expect(stderr).toMatch(words);
  expect(stderr).toMatch(/^greybody: .+\n$/);
});

test("functions lists the whole catalogue", async () => {
  const { status, stdout } = await runNode([CLI, "functions"]);
  expect(status).toBe(0);
  for (const { name, summary } of catalogue) {
    expect(stdout).toContain(summary);
    expect(stdout).toMatch(new RegExp(`^  GREY\\.${name} +\\S`, "m"));
  }
});

test("functions names the columns of a range, each with its unit", async () => {
  const { stdout } = await runNode([CLI, "functions", "CHECK"]);
  expect(stdout).toMatch(/^Columns of rows\n {2}asset_id /m);
  expect(stdout).toMatch(/^Names in job\n {2}date /m);
  expect(stdout).toMatch(/^ {2}left +reading of the left phase \(-40 to 1500 °C\)$/m);
});

test.each(["CORRECTED", "corrected", "grey.corrected"])("functions %s explains it", async (name) => {
  const { status, stdout } = await runNode([CLI, "functions", name]);
  expect(status).toBe(0);
  expect(stdout).toMatch(/^GREY\.CORRECTED\(apparent, emissivity, reflected, \[air_transmission\]/);
  expect(stdout).toMatch(/emissivity .*above 0, up to 1/);
  expect(stdout).toMatch(/air_transmission .*default 1/);
  expect(stdout).toMatch(/units .*"C", "F".*default "C"/);
  expect(stdout).toContain("=GREY.CORRECTED(");
});
