/** AUDIT of what reports mark, write in words or leave unsaid: invented rows, numbers by hand. */
import { AUDIT } from "../../src/functions/audit-call.js";
import { cellText } from "../../src/functions/check-names.js";
import type { Cell } from "../../src/functions/contract.js";

function audited(
  headers: readonly string[],
  rows: readonly (readonly Cell[])[],
  job: readonly (readonly Cell[])[] = [],
) {
  return (show: string): Cell[] =>
    AUDIT.evaluate([[headers], rows, job.length > 0 ? job : null, show, null]).map(([cell = null]) => cell);
}

const BASIC = ["apparent", "emissivity", "reflected", "air_transmission", "stated_temp"] as const;

test("a reading marked as beyond the range, and stated so, is no fault of method and no proof; stated as a value it is one", () => {
  const show = audited(BASIC, [
    [">150", 0.95, 22, 1, ">155"],
    [">150", 0.95, 22, 1, "155"],
  ]);
  expect(show("method")).toEqual(["sound", "reading at the camera's limit given as a value"]);
  expect(show("verdict")).toEqual(["cannot be reproduced", "cannot be reproduced"]);
});

test("its reference is read within the range and worked out all the same", () => {
  // A black body: what is read is what it is.
  const show = audited(
    [...BASIC, "reference_apparent", "stated_reference_temp"],
    [
      [">150", 1, 22, 1, ">150", "52.0", "52.0"],
      [">150", 1, 22, 1, ">150", "52.0", "58.0"],
    ],
  );
  expect(show("number").map((words) => cellText(words).split("; ")[1])).toEqual([
    "reference temperature: reproduced",
    expect.stringContaining("reference temperature: not reproduced") as string,
  ]);
});

test("a rise whose reference nobody names is subtracted over what fits, and never graded", () => {
  const headers = ["stated_temp", "stated_reference_temp", "surrounding_air", "stated_rise", "stated_grade"];
  const show = audited(headers, [
    ["60.0", "40.0", "25.0", "20.0", 4],
    ["60.0", "40.0", "25.0", "35.0", 3],
    ["42.9", "41.5", "25.0", "4.1", 2],
  ]);
  expect(show("number")).toEqual([
    "reproduced over similar, which is not stated",
    "reproduced over ambient, which is not stated",
    "not reproduced, no usual slip",
  ]);
  expect(show("values")[2]).toBe("rise 4.1 K stated, 1.4 K recomputed: not reproduced, no usual slip");
  expect(show("grade").every((words) => cellText(words).startsWith("cannot be checked: needs reference"))).toBe(true);
});

test("about 60 is known to 5 K, which is more than a camera's own: the grade is undecided", () => {
  // Of 11.7 K the edges are 4 and 15 K (ANSI/NETA ATS-2003, table 100.18).
  const headers = [
    "apparent",
    "reference_apparent",
    "emissivity",
    "reflected",
    "air_transmission",
    "reference",
    "load",
  ];
  const row = [1, 22, 1, "similar", 50, "11.7", 2] as const;
  const show = audited(
    [...headers, "stated_rise", "stated_grade"],
    [
      ["~60", "48.3", ...row],
      ["60.0", "48.3", ...row],
    ],
  );
  expect(show("consequence")).toEqual([
    expect.stringMatching(/^undecided: grade 2 of 4 at 11.7 K ± (?:[5-9]|1\d)/),
    expect.stringMatching(/^grade unchanged: grade 2 of 4 at 11.7 K ± [0-4]\./),
  ]);
});

test("grades in the words of the criteria are read; other words are stated and not judged", () => {
  const show = audited(
    ["stated_rise", "reference", "load", "stated_grade"],
    [
      ["8.9", "similar", 50, "Probable"],
      ["8.9", "similar", 50, "Serious fault"],
      ["8.9", "similar", 50, "Intermediate"],
    ],
  );
  expect(show("grade")).toEqual([
    "follows",
    "does not follow: the stated rise is grade 2 of 4",
    'not judged: "Intermediate": no word of the criteria',
  ]);
  expect(cellText(show("consequence")[2])).not.toContain("no grade stated");
  const turned = audited(
    ["stated_rise", "reference", "load", "stated_grade"],
    [["8.9", "similar", 50, "Probable"]],
    [["grades_count", "1 = worst"]],
  );
  expect(turned("grade")).toEqual(["follows"]);
});

test("oxidised copper is no bare metal: 0.65 is what tables have for it (EMISSIVITY gives the source)", () => {
  const show = audited(
    [...BASIC, "material"],
    [
      ["58.0", 0.65, 22, 1, "70.5", "copper, oxidised"],
      ["58.0", 0.65, 22, 1, "70.5", "copper, polished"],
    ],
  );
  expect(show("method").map((words) => cellText(words).includes("bare metal"))).toEqual([false, true]);
});

test("what is given and cannot be is not called unstated; a dash is nothing", () => {
  const show = audited(BASIC, [
    ["58.0", 95, 22, 1, "59.6"],
    ["-", "n/a", "—", "", "-"],
  ]);
  expect(show("missing")[0]).toContain("emissivity 95 cannot be: in per cent?");
  expect(show("method")[0]).toBe("sound");
  expect(show("verdict")[1]).toBe("");
});
