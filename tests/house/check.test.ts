import { runNode } from "../support/run.js";

// One test a step, so that what the house asks for is counted with everything else.
test.each(["types", "lint", "format", "arrows", "unused", "licences"])(
  "npm run check -- %s finds nothing",
  async (step) => {
    const { status, stdout, stderr } = await runNode(["src/scripts/check.mjs", step]);
    expect(status === 0 ? "" : stdout + stderr).toBe("");
  },
  600_000,
);

test("a step that does not exist is bad usage", async () => {
  const { status, stderr } = await runNode(["src/scripts/check.mjs", "everything"]);
  expect([status, stderr]).toEqual([
    2,
    'There is no step "everything", only types, lint, format, arrows, unused, licences.\n',
  ]);
});
