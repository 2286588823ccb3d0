/** What a grade asks for: the house matrix, and a workbook's own. */
import { matrixNamed, ownMatrix, priority } from "../../../src/core/severity/priority.js";
import { refusal } from "../../support/refusal.js";

const house = matrixNamed("House");
const own = ownMatrix([
  { grade: 2, priorities: ["later", "soon", "now "] },
  { grade: 0, priorities: ["-", "-", "-"] },
]);

it("the worst grade asks for the same everywhere, a lower one for more where more hangs on the asset", () => {
  // Ours, as laid down before the code.
  expect([1, 2, 3].map((criticality) => priority(4, criticality, house))).toEqual(Array(3).fill("act now"));
  expect([1, 2, 3].map((criticality) => priority(2, criticality, house))).toEqual([
    "plan a repair",
    "plan a repair",
    "repair at the next stop",
  ]);
});

it("grade and criticality are whole numbers of their range", () => {
  for (const grade of [-1, 5, NaN]) expect(refusal(() => priority(grade, 1, house)).argument).toBe("grade");
  expect(refusal(() => priority(2.5, 1, house)).hint?.key).toBe("whole-number");
  for (const criticality of [0, 4]) expect(refusal(() => priority(1, criticality, house)).argument).toBe("criticality");
});

it("a workbook's own has the grades that it has", () => {
  expect(priority(2, 3, own)).toBe("now");
  const wrong = refusal(() => priority(4, 1, own));
  expect([wrong.code, wrong.hint?.key, wrong.hint?.values?.has]).toEqual(["REFUSED", "grade-not-in-matrix", "2, 0"]);
  expect(refusal(() => matrixNamed("theirs")).allowed).toEqual(["house"]);
});

it.each([
  [{ grade: 5, priorities: ["a", "b", "c"] }, "matrix-grade"],
  [{ grade: 1.5, priorities: ["a", "b", "c"] }, "matrix-grade"],
  [{ grade: 1, priorities: ["a", "b", "c"] }, "matrix-twice"],
  [{ grade: 2, priorities: ["a", "b"] }, "matrix-words"],
  [{ grade: 2, priorities: ["a", " ", "c"] }, "matrix-words"],
])("%j in the second row is refused", (row, key) => {
  const wrong = refusal(() => ownMatrix([{ grade: 1, priorities: ["a", "b", "c"] }, row]));
  expect([wrong.hint?.key, wrong.hint?.values?.row]).toEqual([key, 2]);
});
