import fc from 'fast-check';
import { expect, test } from 'vitest';
import { endings, FIRST_STEPS, meant, richNote, workings } from '../../testing/notes/rich-note.ts';
import { compiled } from '../../testing/notes/short.ts';
import { compileInside } from './compile.ts';
import { printSentence, printStep, printWorking } from './print.ts';
import { read } from './read.ts';

test('a printed working reads back as the same steps', () => {
  let printed = 0;
  fc.assert(
    fc.property(workings, (working) => {
      const inside = (text: string) => compileInside(read(richNote(text)), false);
      const { compiled: whole, steps: all } = inside(working);
      if (whole.routine === undefined) return;
      printed++;
      const steps = all.slice(FIRST_STEPS);
      expect(meant(inside(printWorking(steps)).steps.slice(FIRST_STEPS))).toEqual(meant(steps));
    }),
    { numRuns: 40 },
  );
  expect(printed).toBeGreaterThan(10);
}, 120_000);

test('a printed sentence of the ending reads back as the same sentence', () => {
  fc.assert(
    fc.property(endings, (ending) => {
      const first = (text: string) =>
        compileInside(read(richNote('1. Cut the packet.', text)), false).endings[0];
      const { sentence } = first(ending);
      expect(first(`- ${printSentence(sentence)}`)?.sentence).toEqual(sentence);
    }),
    { numRuns: 60 },
  );
}, 120_000);

test.each([
  [
    '1. You cut the packet at 3, then turn it over.',
    ['You cut the packet at 3.', 'You turn the packet over.'],
  ],
  [
    '1. Any number of times:\n   1. Cut the packet.\n   2. Turn over the top 2 together.',
    ['Any number of times: cut the packet; turn over the top 2 cards.'],
  ],
  [
    '1. The spectator names a number from 1 to 5, call it N.\n2. If N is even, cut the packet. Otherwise turn the packet over.',
    [
      'The spectator names a number from 1 to 5, call it N.',
      'If N is even: cut the packet; otherwise: turn the packet over.',
    ],
  ],
  ['1. Either cut the packet or do nothing.', ['Either: cut the packet, or do nothing.']],
])('%s is told in a line', (working, lines) => {
  expect(compiled(working).routine?.steps.map(printStep)).toEqual(lines);
});
