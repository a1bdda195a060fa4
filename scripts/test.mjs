// `npm test`: everything that has to hold, from a bare clone. All steps run even when one fails; the last line sums them up.
// Names of steps may be given to run only those: `node scripts/test.mjs types unit`.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensure } from './ensure.mjs';
import { buildCli, buildWeb, run, tool } from './run.mjs';
import { tallyOfBrowser, tallyOfStep, tallyOfTests } from './tally.mjs';

/**
 * To add a step, add a line: its name, how to run it, and, where it runs tests, the report from which they are counted.
 *
 * @typedef {{ name: string, command: string[], cwd?: string, report?: string, tally?: typeof tallyOfTests }} Step
 *
 * @param {string} reports a folder for reports
 * @returns {Step[]}
 */
const steps = (reports) => [
  { name: 'types', command: [tool('typescript'), '-b'] },
  { name: 'lint', command: [tool('oxlint')] },
  { name: 'format', command: [tool('prettier'), '--check', '.'] },
  { name: 'docs', command: [tool('tsx'), 'scripts/generate-docs.ts', '--check'] },
  {
    name: 'unit',
    command: [
      tool('vitest'),
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${join(reports, 'unit.json')}`,
    ],
    report: join(reports, 'unit.json'),
  },
  // After the unit tests: the page of coverage names tests, and these must have passed.
  {
    name: 'coverage',
    command: [tool('tsx'), 'scripts/generate-docs.ts', '--check', '--ran', join(reports, 'unit.json')],
  },
  { name: 'build', ...buildCli },
  { name: 'web build', ...buildWeb },
  { name: 'chromium', command: ['scripts/chromium.mjs'] },
  {
    name: 'browser',
    command: [tool('playwright'), 'test', '--reporter=list,json'],
    cwd: buildWeb.cwd,
    report: join(reports, 'browser.json'),
    tally: tallyOfBrowser,
  },
];

function main() {
  if (!ensure()) {
    console.log('0 passed, 1 failed');
    return 1;
  }
  const reports = mkdtempSync(join(tmpdir(), 'foregone-test-'));
  // Where the browser tests' runner writes its report; it takes this from nowhere else.
  process.env.PLAYWRIGHT_JSON_OUTPUT_NAME = join(reports, 'browser.json');
  try {
    return runSteps(steps(reports), process.argv.slice(2));
  } finally {
    rmSync(reports, { recursive: true, force: true });
  }
}

/**
 * @param {Step[]} all
 * @param {string[]} names those to run; none means all
 */
function runSteps(all, names) {
  const unknown = names.filter((name) => !all.some((step) => step.name === name));
  if (unknown.length > 0) {
    console.error(
      `No step is called ${unknown.join(', ')}. There are: ${all.map(({ name }) => name).join(', ')}.`,
    );
    return 64;
  }
  const chosen = names.length === 0 ? all : all.filter(({ name }) => names.includes(name));
  const width = Math.max(...chosen.map(({ name }) => name.length));
  let passed = 0;
  let failed = 0;
  for (const step of chosen) {
    process.stdout.write(`${step.name.padEnd(width)}  `);
    const { code, output, seconds } = run(step.command, { cwd: step.cwd });
    const tally =
      step.report === undefined ? tallyOfStep(code) : (step.tally ?? tallyOfTests)(code, textOf(step.report));
    passed += tally.passed;
    failed += tally.failed;
    const tests =
      step.report === undefined
        ? ''
        : `  ${tally.passed} passed, ${tally.failed} failed${tally.skipped > 0 ? `, ${tally.skipped} skipped` : ''}`;
    console.log(`${tally.failed === 0 ? 'ok    ' : 'FAILED'}  ${seconds.toFixed(1).padStart(6)} s${tests}`);
    if (tally.failed > 0) console.log(`\n${output.trimEnd()}\n`);
  }
  console.log(`${passed} passed, ${failed} failed`);
  return failed === 0 ? 0 : 1;
}

/** @param {string} file */
function textOf(file) {
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined;
}

process.exitCode = main();
