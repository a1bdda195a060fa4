/**
 * @typedef {object} Tally
 * @property {number} passed
 * @property {number} failed
 * @property {number} skipped
 */

/**
 * A step that is one check: it passed or it did not.
 *
 * @param {number} code the step's exit code
 * @returns {Tally}
 */
export function tallyOfStep(code) {
  return { passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, skipped: 0 };
}

/**
 * The tests of a run, from the test runner's JSON report.
 *
 * A run never counts as clean unless it ended with 0 and ran something: a file that could not be loaded, an error outside every
 * test, a missing or broken report, and a run without any test each count as one failure.
 *
 * @param {number} code the runner's exit code
 * @param {string | undefined} report the report's text, undefined when none was written
 * @returns {Tally}
 */
export function tallyOfTests(code, report) {
  const files = filesOf(report);
  const tally = { passed: 0, failed: 0, skipped: 0 };
  for (const file of files) {
    const tests = file.assertionResults ?? [];
    for (const { status } of tests) {
      if (status === 'passed') tally.passed += 1;
      else if (status === 'failed') tally.failed += 1;
      else tally.skipped += 1;
    }
    const failedInside = tests.some(({ status }) => status === 'failed');
    if (file.status === 'failed' && !failedInside) tally.failed += 1;
  }
  if (tally.failed === 0 && (code !== 0 || tally.passed === 0)) tally.failed = 1;
  return tally;
}

/**
 * The tests of a run in the browser, from its runner's JSON report. A test that passed only at a second try counts as failed.
 *
 * A run never counts as clean unless it ended with 0 and ran something.
 *
 * @param {number} code the runner's exit code
 * @param {string | undefined} report the report's text, undefined when none was written
 * @returns {Tally}
 */
export function tallyOfBrowser(code, report) {
  const { expected = 0, unexpected = 0, flaky = 0, skipped = 0 } = statsOf(report);
  const tally = { passed: expected, failed: unexpected + flaky, skipped };
  if (tally.failed === 0 && (code !== 0 || tally.passed === 0)) tally.failed = 1;
  return tally;
}

/**
 * @param {string | undefined} report
 * @returns {{ expected?: number, unexpected?: number, flaky?: number, skipped?: number }}
 */
function statsOf(report) {
  if (report === undefined) return {};
  try {
    return JSON.parse(report).stats ?? {};
  } catch {
    return {};
  }
}

/**
 * @param {string | undefined} report
 * @returns {{ status: string, assertionResults?: { status: string }[] }[]}
 */
function filesOf(report) {
  if (report === undefined) return [];
  try {
    return JSON.parse(report).testResults ?? [];
  } catch {
    return [];
  }
}
