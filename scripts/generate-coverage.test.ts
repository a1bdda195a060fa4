import { expect, test } from 'vitest';
import { ENDINGS, PREDICTIONS } from './catalogue-endings.ts';
import { STRUCTURES } from './catalogue-structures.ts';
import { PROCEDURES } from './catalogue.ts';
import { coverageOf, coveragePage, gapsIn, strayNames, testsIn, type Row } from './generate-coverage.ts';
import { shelfNote, type ShelfNote } from './generate-shelf.ts';
import { filesPassed, sentencesIn } from './generate-test-uses.ts';

function note(file: string, setUp: string, working: string, ending: string, more = ''): ShelfNote {
  const text = `# ${file}\n\n## Set-up\n\n- packet: ${setUp}\n\n## Working\n\n${working}\n\n## Ending\n\n- ${ending}\n${more}`;
  const found = shelfNote(file, text);
  if (found === null) throw new Error(`not understood: ${text}`);
  return found;
}

const TURNOVER = note(
  'turnover.md',
  '8 cards alternately red and black, face down',
  '1. Any number of times:\n   1. Cut the packet.\n   2. Turn over the top 2 together.',
  'Exactly 4 cards are red.',
  '\n## Prediction\n\nFour.\n',
);
const FAR = note(
  'faro.md',
  'A-9 of clubs, face down',
  '1. Cut the packet at 4.\n2. Out-faro the packet.',
  'The top card is the AC or all cards are face down.',
);
const COVERAGE = coverageOf([TURNOVER, FAR], new Map([['cut', ['src/moves/cutting.test.ts']]]));

function row(rows: readonly Row[], key: string): { notes: string[]; modules: string[] } {
  const found = rows.find((one) => one.key === key);
  return {
    notes: (found?.notes ?? []).map(({ file }) => file),
    modules: (found?.modules ?? []).map(({ id }) => id),
  };
}

test('the catalogue has every heading once, in order', () => {
  const keys = PROCEDURES.map(({ key }) => key);
  expect(keys.filter((key) => key !== 'P43b')).toEqual(Array.from({ length: 78 }, (_, i) => `P${i + 1}`));
  expect(keys.indexOf('P43b')).toBe(keys.indexOf('P43') + 1);
  expect(STRUCTURES.map(({ key }) => key)).toEqual(Array.from({ length: 26 }, (_, i) => `S${i + 1}`));
  expect(ENDINGS.map(({ key }) => key)).toEqual(Array.from({ length: 20 }, (_, i) => `C${i + 1}`));
  expect(PREDICTIONS.length).toBeGreaterThan(10);
});

test('moves inside blocks count, and what is done tells procedures of one move apart', () => {
  expect(row(COVERAGE.procedures, 'P1')).toEqual({ notes: ['turnover.md'], modules: ['cut'] });
  expect(row(COVERAGE.procedures, 'P2').notes).toEqual(['faro.md']);
  expect(row(COVERAGE.procedures, 'P5').notes).toEqual(['turnover.md']);
  expect(row(COVERAGE.procedures, 'P52').notes).toEqual([]);
  expect(row(COVERAGE.procedures, 'P53').notes).toEqual(['faro.md']);
});

test('endings inside joined sentences count, predictions only where one is written', () => {
  expect(row(COVERAGE.endings, 'C4').notes).toEqual(['turnover.md']);
  expect(row(COVERAGE.endings, 'C3').notes).toEqual(['faro.md']);
  expect(row(COVERAGE.predictions, 'count').notes).toEqual(['turnover.md']);
  expect(row(COVERAGE.predictions, 'exact card').notes).toEqual([]);
});

test('a structure is known by what the ending needs, or by what uses it', () => {
  const turned = note(
    'turned.md',
    '8 cards alternately red and black, face down',
    '1. Any number of times:\n   1. Cut the packet.\n   2. Turn over the top 2 together.\n2. Deal the packet into a pile, turning every second card.',
    'Every red card faces one way and every black card the other.',
  );
  const coverage = coverageOf([turned, FAR], new Map());
  expect(row(coverage.structures, 'S6').notes).toEqual(['turned.md']);
  expect(row(coverage.structures, 'S7').notes).toEqual(['turned.md']);
  expect(row(coverage.structures, 'S26').notes).toEqual(['turned.md']);
  expect(row(coverage.structures, 'S2')).toEqual({
    notes: [],
    modules: ['src/structures/forms/mirrored.ts'],
  });
});

test('a note whose ending can fail rests on nothing', () => {
  const three = note(
    'three.md',
    '8 cards alternately red and black, face down',
    '1. Any number of times:\n   1. Turn over the top 3 together.\n2. Deal the packet into a pile, turning every second card.',
    'Every red card faces one way and every black card the other.',
  );
  const coverage = coverageOf([three], new Map());
  expect(coverage.structures.filter(({ notes }) => notes.length > 0)).toEqual([]);
});

test('windows that differ and sums that differ are found in the cards themselves', () => {
  const lamps = (cards: string): ShelfNote =>
    note(
      'lamps.md',
      `${cards}, face down`,
      '1. Cut the packet, in secret.\n2. See whether the top card is red, call it J.\n3. See whether the 2nd card is red, call it K.\n4. See whether the 3rd card is red, call it L.\n5. You transfer 0 to 7 cards from the top to the bottom.',
      'All cards are face down.',
    );
  const of = (cards: string): string[] => row(coverageOf([lamps(cards)], new Map()).structures, 'S17').notes;
  expect(of('QH AD 2D 3S 4D 5C 6S 7C')).toEqual(['lamps.md']);
  expect(of('QH AD 3S 4S 2D 5H 6S 7C')).toEqual([]);
});

test('a line without a module, a note or a test is a gap', () => {
  const gaps = gapsIn(COVERAGE);
  expect(gaps).toContain('P3 (cut off a packet, nothing completed) has no note');
  expect(gaps).toContain('S2 (mirrored) has no note');
  expect(gaps).toContain('exact card (the very card) has no note');
  expect(gaps.some((gap) => gap.startsWith('P1 '))).toBe(false);
});

test('tests named on the page are those that have to pass', () => {
  expect(testsIn(COVERAGE)).toContain('src/moves/cutting.test.ts');
  const report = JSON.stringify({
    testResults: [
      { name: '/a/good.test.ts', status: 'passed', assertionResults: [{ status: 'passed' }] },
      {
        name: '/a/bad.test.ts',
        status: 'failed',
        assertionResults: [{ status: 'passed' }, { status: 'failed' }],
      },
      { name: '/a/skipped.test.ts', status: 'passed', assertionResults: [{ status: 'skipped' }] },
    ],
  });
  expect([...filesPassed(report)]).toEqual(['/a/good.test.ts']);
});

test('a note that is not understood is none', () => {
  expect(shelfNote('a.md', '## Working\n\n1. Juggle.\n')).toBeNull();
});

test('names that are not there are told', () => {
  expect(strayNames(() => true)).toEqual([]);
  expect(strayNames((file) => !file.endsWith('stacks.test.ts'))).toEqual([
    'the catalogue names src/cards/stacks.test.ts at S13',
  ]);
});

test('sentences are found in the texts of a program', () => {
  const program =
    "play('Cut the packet.', `Deal ${n} cards; milk the packet.`, \"1. Cut.\\n2. It's cut at 8.\")";
  expect([...sentencesIn(program)]).toEqual([
    'Cut the packet',
    'Deal 3 cards',
    'milk the packet',
    "It's cut at 8",
  ]);
});

test('the page shows modules, notes and tests, and what is empty', () => {
  const page = coveragePage(COVERAGE);
  expect(page).toContain(
    '| P1 | complete cut | [complete cut](generated/moves.md#complete-cut) | [turnover.md](../notes/turnover.md) | 4 examples, [cutting](../packages/engine/src/moves/cutting.test.ts) |',
  );
  expect(page).toContain('- P3 (cut off a packet, nothing completed) has no note');
});
