/** @typedef {{ passed: number, failed: number, skipped: number }} Counts */

/**
 * Tests in Vitest's JSON report. A file that fails without a failed test did not load or set up, and counts as a failure.
 * @param {{ testResults: { status: string, assertionResults: { status: string }[] }[] } | null} report
 * @returns {Counts}
 */
export function vitestCounts(report) {
  const files = report?.testResults ?? [];
  const outcomes = files.flatMap((file) => file.assertionResults.map((test) => test.status));
  const broken = files.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  );
  const passed = outcomes.filter((status) => status === 'passed').length;
  const failed = outcomes.filter((status) => status === 'failed').length;
  return { passed, failed: failed + broken.length, skipped: outcomes.length - passed - failed };
}

/**
 * Tests in Playwright's JSON report. What failed at first is a failure, whatever came after.
 * @param {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number } } | null} report
 * @returns {Counts}
 */
export function playwrightCounts(report) {
  if (report === null) return { passed: 0, failed: 0, skipped: 0 };
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky, skipped };
}

/**
 * What a part of the run comes to: where its commands failed, or its runner found no test, and no test is to blame, that
 * is one failure.
 * @param {Counts | null} counted by its runner; null for a part that runs no tests
 * @param {boolean} ok whether every command of the part ended well
 * @returns {Counts}
 */
export function countsOfPart(counted, ok) {
  const { passed, failed, skipped } = counted ?? { passed: 0, failed: 0, skipped: 0 };
  const ranNothing = counted !== null && passed + failed === 0;
  return { passed, failed: failed === 0 && (!ok || ranNothing) ? 1 : failed, skipped };
}
