import { exactFigures, longestSilence } from './exact-search.ts';
import { dealAndRiffle, everyOrder, notedCard, turnover } from './scenarios.ts';
import { compiled } from './subjects.ts';
import { drawn, ms } from './tables.ts';
import type { Target } from './targets.ts';

/** Long enough for every table to have been looked at, or for the search to be in full swing. */
const AFTER_MS = 700;

/** The complete search: its pace, what it keeps, and how soon it stops when it is told to. */
export function exactSuite(): Target[] {
  const figures = exactFigures(compiled(everyOrder(8)));
  console.log(
    `\ncomplete search, 8 different cards under cut and turn over two: ${figures.tables.toLocaleString('en')} tables, ` +
      `${figures.successors.toLocaleString('en')} successors`,
  );
  const texts: readonly (readonly [string, string])[] = [
    ['turnover, 52 cards', turnover(52)],
    ['deal and riffle, 52 cards, 13 kinds', dealAndRiffle(52, 13)],
    ['one noted card in 52', notedCard(52)],
    ['complete search, 8 different cards', everyOrder(8)],
    ['complete search, 10 different cards, stopped', everyOrder(10)],
  ];
  const silences = texts.map(([name, text]) => {
    // Once to warm up: a program just started is slow at everything.
    longestSilence(text, AFTER_MS);
    return { name, silence: longestSilence(text, AFTER_MS) };
  });
  console.log(
    `\n${drawn(
      ['longest stretch between two questions whether to go on', 'ms'],
      silences.map(({ name, silence }) => [name, ms(silence)]),
    )}`,
  );
  return [
    {
      what: 'complete search: successors in a second',
      limit: 1_000_000,
      unit: '',
      found: figures.successorsPerSecond,
      atLeast: true,
    },
    { what: 'complete search: memory for a table', limit: 64.5, unit: 'bytes', found: figures.bytesPerTable },
    {
      what: 'stops when told to, at the latest after',
      limit: 50,
      unit: 'ms',
      found: Math.max(...silences.map(({ silence }) => silence)),
    },
  ];
}
