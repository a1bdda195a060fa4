// `npm run docs` writes the pages that are made from the modules; `npm run docs:check` (`--check`) says whether they are up to date
// and whether every module has all its parts. `--ran REPORT` also asks the unit tests' report whether the tests it names ran and passed.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CLAIMS } from '../packages/engine/src/claims/index.ts';
import { MOVES } from '../packages/engine/src/moves/index.ts';
import { MESSAGES } from '../packages/engine/src/note/messages/index.ts';
import { coverageOf, coveragePage, gapsIn, strayNames, testsIn } from './generate-coverage.ts';
import { missingParts } from './generate-completeness.ts';
import { endingsPage } from './generate-endings.ts';
import { messagesPage } from './generate-messages.ts';
import { movesPage } from './generate-moves.ts';
import { readShelf } from './generate-shelf.ts';
import { filesPassed, usesInTests } from './generate-test-uses.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

function main(parameters: readonly string[]): number {
  const { notes, unread } = readShelf(join(root, 'notes'));
  const coverage = coverageOf(notes, usesInTests(join(root, 'packages/engine'), ['src', 'testing']));
  const faults = [
    ...missingParts(MOVES, CLAIMS, MESSAGES),
    ...unread.map((file) => `notes/${file} is not understood`),
    ...strayNames((file) => existsSync(join(root, 'packages/engine', file))),
    ...gapsIn(coverage),
    ...notRun(testsIn(coverage), parameters),
  ];
  const pages: Readonly<Record<string, string>> = {
    'docs/generated/moves.md': movesPage(),
    'docs/generated/endings.md': endingsPage(),
    'docs/generated/messages.md': messagesPage(),
    'docs/coverage.md': coveragePage(coverage),
  };
  const stale = Object.entries(pages).filter(([path, made]) => made !== textOf(path));
  if (parameters.includes('--check'))
    faults.push(...stale.map(([path]) => `${path} is not up to date: npm run docs`));
  else
    for (const [path, made] of stale) {
      mkdirSync(dirname(join(root, path)), { recursive: true });
      writeFileSync(join(root, path), made);
      console.log(`${path} written`);
    }
  faults.forEach((line) => console.error(line));
  return faults.length > 0 ? 1 : 0;
}

/** Tests named by the page of coverage that did not run or did not pass, by the report given after `--ran`. */
function notRun(tests: readonly string[], parameters: readonly string[]): string[] {
  const at = parameters.indexOf('--ran');
  if (at < 0) return [];
  const report = textAt(parameters[at + 1] ?? '');
  const passed = report === undefined ? new Set<string>() : filesPassed(report);
  return tests
    .map((file) => `packages/engine/${file}`)
    .filter((file) => ![...passed].some((one) => one.endsWith(`/${file}`)))
    .map((file) => `${file} is named by docs/coverage.md, and no test of it ran and passed`);
}

function textOf(path: string): string | undefined {
  return textAt(join(root, path));
}

function textAt(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    // A page that was never written is not up to date.
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}

process.exitCode = main(process.argv.slice(2));
