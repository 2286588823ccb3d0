/** Counts what jest's own JSON result says. */

/**
 * Passed and failed tests over all suites. Skipped and to-do tests count as neither; a suite that could not run counts
 * as one failure, and so does a run that left no result.
 */
export function tally(result) {
  if (result === undefined) return { passed: 0, failed: 1 };
  let passed = 0;
  let failed = 0;
  for (const suite of result.testResults) {
    const statuses = suite.assertionResults.map(({ status }) => status);
    const broken = statuses.filter((status) => status === "failed").length;
    passed += statuses.filter((status) => status === "passed").length;
    failed += suite.status === "failed" ? Math.max(1, broken) : broken;
  }
  return { passed, failed };
}

/** The full names of the tests that were not run. */
export function skipped(result) {
  return result.testResults.flatMap(({ assertionResults }) =>
    assertionResults
      .filter(({ status }) => ["pending", "skipped", "todo", "disabled"].includes(status))
      .map(({ fullName }) => fullName),
  );
}
