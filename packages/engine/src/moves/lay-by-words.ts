import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { PileRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { carry } from '../pictures/actions.ts';
import { cellName } from './cells.ts';
import { PILE } from './handling.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type LayByWordsArgs = { pile: PileRef; words: readonly string[] };

/** The two cells of each letter, letters in the order in which they are first read; row and column from 1. */
function cellsOf(words: readonly string[]): (readonly (readonly [number, number])[])[] {
  const cells = new Map<string, (readonly [number, number])[]>();
  words.forEach((word, row) => {
    [...word.toLowerCase()].filter(isLetter).forEach((letter, column) => {
      cells.set(letter, [...(cells.get(letter) ?? []), [row + 1, column + 1]]);
    });
  });
  return [...cells.values()];
}

function isLetter(c: string): boolean {
  return /\p{L}/u.test(c);
}

/** What keeps words from being a key: every letter has two cells, and no two letters have theirs in the same two rows. */
function faults(words: readonly string[]): Trouble[] {
  const cells = cellsOf(words);
  const lengths = new Set(words.map((word) => [...word].filter(isLetter).length));
  const rows = new Set(cells.map((two) => two.map(([row]) => row).join()));
  const isKey = lengths.size === 1 && cells.every((two) => two.length === 2) && rows.size === cells.length;
  return isKey ? [] : [trouble('not-a-key', { words: [...words] })];
}

/** S21: pairs laid out by words, the two cards of a pair where the two letters of a sort stand. */
export const layByWords = defineMove<LayByWordsArgs>({
  id: 'lay-by-words',
  procedures: ['S21'],
  hands: 'deal',
  title: 'lay out pairs by words',
  phrases: [
    phrase(`(lay out|lay) ${PILE} [out] [in pairs] by the words {words:allwords}`),
    phrase(`(lay|lay out) the pairs [of {pile:pile}] [out] by the words {words:allwords}`),
  ],
  defaults: { pile: 'packet' },
  help: 'The words are thought written in rows one below the other. Two cards at a time come off the top and go where the two letters of a sort stand, the letters taken as they are first read.',
  caution:
    'Every letter stands there twice, and no two letters in the same two rows: then two rows that are named tell the pair.',
  synonyms: ['key of letters', 'pair code'],
  brings: ({ words }) => ({
    piles: cellsOf(words)
      .flatMap((two) => two.map(([row, column]) => cellName(row, column)))
      .sort(),
  }),
  check: ({ words }) => faults(words),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const size = pileSize(args.pile, view);
    const cells = cellsOf(args.words).flat();
    if (cells.length !== size) {
      const rows = args.words.length;
      return stuck('rows-do-not-fit', { pile, size, rows, columns: cells.length / rows });
    }
    const actions = cells.map(([row, column]) => carry(pile, 0, 1, cellName(row, column), 0));
    return [{ key: 'laid', actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2 3 4 5 6',
      sentence: 'Lay out the packet by the words "eel" and "loo".',
      choices: [],
      after: 'cell 1 1: 1; cell 1 2: 2; cell 1 3: 3; cell 2 1: 4; cell 2 2: 5; cell 2 3: 6',
    },
    {
      before: '1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20',
      sentence: 'Lay the pairs out by the words "mutus", "nomen", "dedit" and "cocis".',
      choices: [],
      after:
        'cell 1 1: 1; cell 1 2: 3; cell 1 3: 5; cell 1 4: 4; cell 1 5: 7; cell 2 1: 9; cell 2 2: 11; cell 2 3: 2; cell 2 4: 13; cell 2 5: 10; cell 3 1: 15; cell 3 2: 14; cell 3 3: 16; cell 3 4: 17; cell 3 5: 6; cell 4 1: 19; cell 4 2: 12; cell 4 3: 20; cell 4 4: 18; cell 4 5: 8',
      source: 'common practice, no source: the key mutus nomen dedit cocis',
    },
  ],
});
