/** What `greybody recalc` does with its files: where it writes, what it says, how it ends. */
import { chmodSync, linkSync, readFileSync, statSync, symlinkSync, unlinkSync } from "node:fs";
import { Folder, recalc, textsOf, type ReportFile } from "../support/recalc.js";
import { makeWorkbook } from "../support/workbook-file.js";

/** Share of limit by hand: (80 − 40)/(90 − 40) = 0.8 and (65 − 40)/(90 − 40) = 0.5. */
const book = (first: number, second: number): Uint8Array =>
  makeWorkbook({
    sheets: [
      {
        name: "My route",
        rows:
          `<row r="1"><c r="A1"><v>80</v></c><c r="B1"><f>_xldudf_GREY_SHARE_OF_LIMIT(A1,90,40)</f><v>${first}</v></c></row>` +
          `<row r="2"><c r="A2"><v>65</v></c><c r="B2"><f>_xldudf_GREY_SHARE_OF_LIMIT(A2,90,40)</f><v>${second}</v></c></row>`,
      },
    ],
  });
const RIGHT = book(0.8, 0.5);
const TAMPERED = book(0.8, 0.55);

let folder: Folder;
beforeEach(() => (folder = new Folder()));
afterEach(() => folder.remove());

describe("bad usage: one line, status 2, nothing done", () => {
  test.each([
    [[], /where to write: -o OUT\.xlsx, or --in-place, or --check/],
    [["--check", "--in-place"], /only one of --in-place and --check/],
    [["-o", "out.xlsx", "--check"], /only one of -o and --check/],
    [["--check", "--tolerance", "-1"], /tolerance/],
    [["--check", "--tolerance", "much"], /tolerance/],
    [["--wrong"], /--wrong/],
    [["-o", "no-such-folder/out.xlsx"], /no folder/],
    [["--check", "--report", "no-such-folder/r.json"], /there is no folder no-such-folder/],
    [["--check", "--report", "."], /\. is a folder: name a file in it/],
    [["-o", "no-such-book.xlsm"], /a workbook \.xlsx stays one/],
  ])("%j", async (options, words) => {
    const file = folder.put("a.xlsx", TAMPERED);
    const { status, stdout, stderr } = await recalc([file, ...options]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toMatch(words);
    expect(stderr).toMatch(/^greybody: .+\n$/);
    expect(folder.names).toEqual(["a.xlsx"]);
  });

  test("no file", async () => {
    expect(await recalc(["--check"])).toMatchObject({ status: 2, stdout: "" });
  });
});

test("-o writes what is right and leaves the workbook that was read", async () => {
  const file = folder.put("a.xlsx", TAMPERED);
  const { status, stdout, stderr } = await recalc([file, "-o", folder.at("b.xlsx")]);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toMatch(/a\.xlsx: 2 formulas, 2 cells: 1 as saved, 1 different, 0 kept; written to .*b\.xlsx\n$/);
  expect(folder.read("a.xlsx")).toEqual(TAMPERED);
  expect(textsOf(folder.read("b.xlsx"))).toEqual(textsOf(RIGHT));
});

test("--in-place writes over it and keeps its mode; what is right is not written at all", async () => {
  const file = folder.put("a.xlsx", TAMPERED);
  chmodSync(file, 0o640);
  expect(await recalc([file, "--in-place"])).toMatchObject({ status: 0, stderr: "" });
  expect(textsOf(folder.read("a.xlsx"))).toEqual(textsOf(RIGHT));
  expect(statSync(file).mode & 0o777).toBe(0o640);
  const before = statSync(file).mtimeMs;
  const { stdout } = await recalc([file, "--in-place"]);
  expect(stdout).toMatch(/nothing to write/);
  expect(statSync(file).mtimeMs).toBe(before);
  expect(folder.names).toEqual(["a.xlsx"]);
});

test("--in-place through a link writes the file that it leads to", async () => {
  folder.put("a.xlsx", TAMPERED);
  symlinkSync("a.xlsx", folder.at("link.xlsx"));
  expect(await recalc([folder.at("link.xlsx"), "--in-place"])).toMatchObject({ status: 0 });
  expect(textsOf(folder.read("a.xlsx"))).toEqual(textsOf(RIGHT));
  expect(folder.names).toEqual(["a.xlsx", "link.xlsx"]);
});

test("-o never names a file that is read: by itself, another path, or a link", async () => {
  const file = folder.put("a.xlsx", TAMPERED);
  symlinkSync("a.xlsx", folder.at("soft.xlsx"));
  linkSync(file, folder.at("hard.xlsx"));
  for (const name of ["a.xlsx", "../" + folder.path.split("/").at(-1)! + "/a.xlsx", "soft.xlsx", "hard.xlsx", "."]) {
    const { status, stderr } = await recalc([file, "-o", `${folder.path}/${name}`]);
    expect({ name, status }).toEqual({ name, status: 2 });
    expect(stderr).toMatch(/--in-place/);
  }
  expect(folder.read("a.xlsx")).toEqual(TAMPERED);
  expect(await recalc([file, "--check", "--report", folder.at("soft.xlsx")])).toMatchObject({ status: 2 });
  expect(folder.read("a.xlsx")).toEqual(TAMPERED);
});

test("--check writes nothing and tells the cell, both values and the formula", async () => {
  const file = folder.put("a.xlsx", TAMPERED);
  const { status, stdout } = await recalc([file, "--check", "--report", folder.at("r.json")]);
  expect(status).toBe(1);
  expect(stdout).toMatch(
    /^ {2}'My route'!B2 {2}stored 0\.55 {2}recalculated 0\.5 {2}difference -0\.0\d+ {2}=_xldudf_GREY_SHARE_OF_LIMIT\(A2,90,40\)$/m,
  );
  expect(folder.read("a.xlsx")).toEqual(TAMPERED);
  const report = JSON.parse(readFileSync(folder.at("r.json"), "utf8")) as ReportFile;
  expect(Object.keys(report)).toEqual(["file", "cells", "summary"]);
  expect(report).toMatchObject({ file, summary: { formulas: 2, same: 1, changed: 1, kept: 0 } });
  expect(report.cells[1]).toEqual({
    sheet: "My route",
    cell: "B2",
    formula: "_xldudf_GREY_SHARE_OF_LIMIT(A2,90,40)",
    stored: 0.55,
    recalculated: 0.5,
    difference: 0.5 - 0.55,
    status: "changed",
  });
});

test("--check ends with 0 where all is right, and --tolerance says what that is", async () => {
  const right = folder.put("right.xlsx", RIGHT);
  const off = folder.put("off.xlsx", TAMPERED);
  expect(await recalc([right, "--check"])).toMatchObject({ status: 0 });
  expect(await recalc([off, "--check", "--tolerance", "0.08"])).toMatchObject({ status: 1 });
  expect(await recalc([off, "--check", "--tolerance", "0.1"])).toMatchObject({ status: 0 });
});

test("of several files each is done, and one that is not taken stops none", async () => {
  const files = [
    folder.put("a.xlsx", TAMPERED),
    folder.put("bad.xlsx", new TextEncoder().encode("no workbook")),
    folder.at("absent.xlsx"),
    folder.path,
    folder.put("c.xlsx", TAMPERED),
  ];
  const { status, stdout, stderr } = await recalc([...files, "-o", folder.at("out"), "--report", folder.at("r.json")]);
  expect(status).toBe(2);
  expect(stdout.trimEnd().split("\n")).toHaveLength(2);
  expect(stderr.trimEnd().split("\n")).toEqual([
    expect.stringMatching(/^greybody: .*bad\.xlsx: .*not an Excel workbook/),
    expect.stringMatching(/^greybody: .*absent\.xlsx: There is no such file\.$/),
    expect.stringMatching(/^greybody: .*: It is not a file\.$/),
  ]);
  for (const name of ["a.xlsx", "c.xlsx"]) expect(textsOf(folder.read(`out/${name}`))).toEqual(textsOf(RIGHT));
  const reports = JSON.parse(readFileSync(folder.at("r.json"), "utf8")) as ReportFile[];
  expect(reports.map(({ refused }) => refused !== undefined)).toEqual([false, true, true, true, false]);
});

test("two files of one name would be written over each other: refused before anything is done", async () => {
  const file = folder.put("a.xlsx", TAMPERED);
  const { status, stderr } = await recalc([file, file, "-o", folder.at("out")]);
  expect(status).toBe(2);
  expect(stderr).toMatch(/one name/);
});

test("what a killed run has left is taken away, and nothing else", async () => {
  const file = folder.put("a.xlsx", TAMPERED);
  const gone = ".a.xlsx.HOST.999999999.0123abcd.greybody-tmp";
  const { hostname } = await import("node:os");
  folder.put(gone.replace("HOST", hostname().replaceAll(/[^A-Za-z0-9-]/g, "-")), TAMPERED);
  folder.put(".b.xlsx.elsewhere.1.0123abcd.greybody-tmp", TAMPERED);
  await recalc([file, "--in-place"]);
  expect(folder.names).toEqual([".b.xlsx.elsewhere.1.0123abcd.greybody-tmp", "a.xlsx"]);
});

test("texts of strangers do not steer the terminal", async () => {
  const rows =
    '<row r="1"><c r="A1" t="str"><f>GREY.GRADE(30,"similar")&amp;"x"</f><v>a&#x9b;31m_x001B_[2J</v></c></row>';
  const file = folder.put("a.xlsx", makeWorkbook({ sheets: [{ name: "S", rows }] }));
  const { stdout } = await recalc([file, "--check"]);
  expect(stdout).toContain("recalculated");
  expect(stdout).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
  unlinkSync(file);
});

test("--volatile: NOW and TODAY as of now, with what depends on them; OFFSET keeps its value all the same", async () => {
  const rows =
    '<row r="1"><c r="A1"><f>TODAY()</f><v>1</v></c><c r="B1"><f>A1+1</f><v>2</v></c><c r="C1"><f>NOW()-TODAY()</f><v>7</v></c>' +
    '<c r="D1"><f>OFFSET(A1,0,0)+TODAY()*0</f><v>3</v></c><c r="E1"><f>2*3</f><v>5</v></c></row>';
  const file = folder.put("a.xlsx", makeWorkbook({ sheets: [{ name: "S", rows }] }));
  expect((await recalc([file, "--check"])).stdout).toMatch(/0 formulas/);
  const options = ["-o", folder.at("b.xlsx"), "--report", folder.at("r.json"), "--volatile"];
  expect(await recalc([file, ...options])).toMatchObject({ status: 0, stderr: "" });
  const { cells } = JSON.parse(readFileSync(folder.at("r.json"), "utf8")) as ReportFile;
  const value = (cell: string): unknown => cells.find((one) => one.cell === cell)?.recalculated;
  // Day 25,569 is 1 January 1970 (count of days from 1 January 1900 with its leap day that never was).
  const today = Math.floor((Date.now() - new Date().getTimezoneOffset() * 60_000) / 86_400_000) + 25_569;
  expect(Math.abs((value("A1") as number) - today)).toBeLessThanOrEqual(1);
  expect(value("B1")).toBe((value("A1") as number) + 1);
  expect(value("C1")).toBeGreaterThanOrEqual(0);
  expect(value("C1")).toBeLessThan(1);
  expect(value("D1")).toBe(3);
  expect(value("E1")).toBeUndefined();
});
