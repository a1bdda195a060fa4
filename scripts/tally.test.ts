import { describe, expect, test } from 'vitest';
import { tallyOfBrowser, tallyOfStep, tallyOfTests } from './tally.mjs';

const file = (status: string, ...tests: string[]) => ({
  status,
  assertionResults: tests.map((each) => ({ status: each })),
});
const report = (...files: object[]) => JSON.stringify({ testResults: files });

test('a step passes exactly when it ends with 0', () => {
  expect(tallyOfStep(0)).toEqual({ passed: 1, failed: 0, skipped: 0 });
  expect(tallyOfStep(2)).toEqual({ passed: 0, failed: 1, skipped: 0 });
});

describe('tests', () => {
  test('are added up over files', () => {
    const text = report(
      file('passed', 'passed', 'passed', 'skipped'),
      file('failed', 'passed', 'failed', 'failed'),
    );
    expect(tallyOfTests(1, text)).toEqual({ passed: 3, failed: 2, skipped: 1 });
  });

  test('all passing is clean', () => {
    expect(tallyOfTests(0, report(file('passed', 'passed')))).toEqual({ passed: 1, failed: 0, skipped: 0 });
  });

  test('a file that could not be loaded counts as one failure', () => {
    const text = report(file('passed', 'passed'), file('failed'));
    expect(tallyOfTests(1, text)).toEqual({ passed: 1, failed: 1, skipped: 0 });
  });

  test('a run that ended badly with nothing to show for it counts as one failure', () => {
    expect(tallyOfTests(1, report(file('passed', 'passed')))).toEqual({ passed: 1, failed: 1, skipped: 0 });
  });

  test.each([
    ['no report', undefined],
    ['a broken report', '{"testRes'],
    ['a report without tests', report()],
    ['nothing but skipped tests', report(file('passed', 'skipped'))],
  ])('%s counts as one failure even when the runner ended with 0', (_what, text) => {
    expect(tallyOfTests(0, text)).toMatchObject({ passed: 0, failed: 1 });
  });
});

describe('a run in the browser', () => {
  const report = (stats: object) => JSON.stringify({ stats });

  test.each<[string, number, string | undefined, object]>([
    [
      'clean',
      0,
      report({ expected: 5, unexpected: 0, flaky: 0, skipped: 1 }),
      { passed: 5, failed: 0, skipped: 1 },
    ],
    [
      'a failure',
      1,
      report({ expected: 4, unexpected: 1, flaky: 0, skipped: 0 }),
      { passed: 4, failed: 1, skipped: 0 },
    ],
    [
      'a second try',
      0,
      report({ expected: 4, unexpected: 0, flaky: 2, skipped: 0 }),
      { passed: 4, failed: 2, skipped: 0 },
    ],
    ['an error outside every test', 1, report({ expected: 4 }), { passed: 4, failed: 1, skipped: 0 }],
    ['no test', 0, report({}), { passed: 0, failed: 1, skipped: 0 }],
    ['no report', 0, undefined, { passed: 0, failed: 1, skipped: 0 }],
    ['a broken report', 0, '{', { passed: 0, failed: 1, skipped: 0 }],
  ])('%s', (_what, code, text, tally) => {
    expect(tallyOfBrowser(code, text)).toEqual(tally);
  });
});
