import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Budget } from '../packages/engine/src/base/budget.ts';
import { CLAIMS } from '../packages/engine/src/claims/index.ts';
import { MOVES } from '../packages/engine/src/moves/index.ts';
import { Lexicon } from '../packages/engine/src/note/lexicon.ts';
import { SAMPLE_NAMES } from '../packages/engine/src/phrases/blank.ts';
import { tokenize } from '../packages/engine/src/phrases/tokens.ts';
import type { Names } from '../packages/engine/src/phrases/values.ts';

/** Which tests speak of which modules: test files by the id of a move or a form of ending. */
export type TestUses = ReadonlyMap<string, readonly string[]>;

// Names that sentences in tests use, beside those of the samples.
const NAMES: Names = {
  ...SAMPLE_NAMES,
  piles: [
    ...SAMPLE_NAMES.piles,
    ...['pile', 'heap', 'hand'].flatMap((stem) => [1, 2, 3, 4].map((n) => `${stem} ${n}`)),
    'hand',
    'pocket',
    'discard',
    'tail',
    'ring',
    'heap',
  ],
  numbers: [...SAMPLE_NAMES.numbers, 'm', 's', 'x', 'y', 'v', 'w'],
};

// Sentences are short; this only bounds what a strange text may cost.
const MOST_WORK = 100_000;

/** Reads the texts within the tests of a package as sentences and notes which modules read them. */
export function usesInTests(root: string, folders: readonly string[]): TestUses {
  const moves = new Lexicon(MOVES);
  const claims = new Lexicon(CLAIMS);
  const uses = new Map<string, string[]>();
  for (const folder of folders)
    for (const file of testsIn(join(root, folder), folder)) {
      const ids = new Set<string>();
      for (const sentence of sentencesIn(readFileSync(join(root, file), 'utf8'))) {
        const tokens = tokenize(sentence);
        for (const lexicon of [moves, claims])
          for (const { owner, match } of lexicon.find(tokens, NAMES, new Budget(MOST_WORK)))
            if (match.troubles.length === 0) ids.add(owner.id);
      }
      for (const id of ids) uses.set(id, [...(uses.get(id) ?? []), file]);
    }
  return uses;
}

function testsIn(folder: string, name: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => {
      const path = `${name}/${entry.name}`;
      if (entry.isDirectory()) return testsIn(join(folder, entry.name), path);
      return entry.name.endsWith('.test.ts') ? [path] : [];
    })
    .sort();
}

const TEXTS = /'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/g;

/** What may be a sentence: texts of a program, line by line, without the marks of lists; a blank filled in is a 3. */
export function sentencesIn(program: string): ReadonlySet<string> {
  const found = new Set<string>();
  for (const [, single, double, template] of program.matchAll(TEXTS)) {
    const text = (single ?? double ?? template ?? '').replace(/\\n/g, '\n').replace(/\$\{[^}]*\}/g, '3');
    for (const line of text.split('\n')) {
      const sentence = line.replace(/^\s*(?:\d+\.|[-*])\s+/, '').replace(/^[^:]{0,40}: (?=[a-z])/, '');
      for (const part of sentence.split(/; |, then /)) {
        const clean = part.trim().replace(/\.$/, '');
        if (/^\p{L}.* /u.test(clean)) found.add(clean);
      }
    }
  }
  return found;
}

/** Files of a test run, by the runner's JSON report, in which something ran and nothing failed. */
export function filesPassed(report: string): ReadonlySet<string> {
  interface File {
    readonly name: string;
    readonly status: string;
    readonly assertionResults?: readonly { readonly status: string }[];
  }
  const { testResults = [] } = JSON.parse(report) as { readonly testResults?: readonly File[] };
  return new Set(
    testResults
      .filter(
        ({ status, assertionResults = [] }) =>
          status === 'passed' && assertionResults.some((one) => one.status === 'passed'),
      )
      .map(({ name }) => name),
  );
}
