import { defineBlank, type BlankReading } from '../blank.ts';
import { numberIn, ordinalAt, printOrdinal, type Token } from '../tokens.ts';
import type { Names, NumberRef, PlaceRef } from '../values.ts';
import { printOrdinalRef, readOrdinal } from './number.ts';

/** An ordinal with `from the bottom` or not, after a noun that may stand between. */
function readNth(
  tokens: readonly Token[],
  at: number,
  names: Names,
  nouns: readonly string[],
): BlankReading<PlaceRef>[] {
  const word = (i: number): string => tokens[i]?.text ?? '';
  return readOrdinal(tokens, at, names).flatMap(({ value, next }) => {
    const after = nouns.includes(word(next)) ? next + 1 : next;
    const readings: BlankReading<PlaceRef>[] = [];
    for (const end of ['bottom', 'top'] as const)
      if (word(after) === 'from' && word(after + 1) === end)
        readings.push({ value: { end, n: value }, next: after + 2 });
    readings.push({ value: { end: 'top', n: value }, next: after });
    return readings;
  });
}

const INNER: readonly PlaceRef[] = [
  { end: 'top', n: 5 },
  { end: 'bottom', n: 2 },
  { end: 'top', n: { var: 'n' } },
];

/** Where a card is put: `the top`, `the bottom`, `the 5th place`. */
export const spot = defineBlank<PlaceRef>({
  type: 'spot',
  what: 'where it goes: "the top", "the bottom", "the 5th place from the bottom"',
  read: (tokens, at, names) => {
    const end = tokens[at]?.text;
    if (end === 'top' || end === 'bottom') return [{ value: { end, n: 1 }, next: at + 1 }];
    return readNth(tokens, at, names, ['place', 'position']);
  },
  print: ({ end, n }) => {
    if (n === 1) return `the ${end}`;
    return `the ${printOrdinalRef(n)} place${end === 'bottom' ? ' from the bottom' : ''}`;
  },
  samples: [{ end: 'top', n: 1 }, { end: 'bottom', n: 1 }, ...INNER],
});

/** A card called by its number, which `the top card` is not: `the 3rd card`. */
export const nthcard = defineBlank<PlaceRef>({
  type: 'nthcard',
  what: 'a place by its number, such as "the 3rd card" or "the 2nd card from the bottom"',
  read: (tokens, at, names) => readNth(tokens, at, names, ['card']),
  print: ({ end, n }) => `the ${printOrdinalRef(n)} card${end === 'bottom' ? ' from the bottom' : ''}`,
  samples: INNER,
});

const WORDS = [
  '',
  '',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
  'thirteenth',
];

/** The number of `every second`, `every other`, `every 3rd`; 1 for `every`. */
export const nth = defineBlank<NumberRef>({
  type: 'nth',
  what: 'which in turn: "second", "other", "3rd"',
  read: (tokens, at) => {
    if (tokens[at]?.text === 'other') return [{ value: 2, next: at + 1 }];
    const ordinal = ordinalAt(tokens, at);
    return ordinal === undefined || ordinal.n < 2 ? [] : [{ value: ordinal.n, next: at + ordinal.length }];
  },
  print: (n) => (typeof n === 'number' ? WORDS[n] || printOrdinal(n) : printOrdinalRef(n)),
  samples: [2, 3, 14],
});

/** A quoted word, spelled letter by letter. */
export const word = defineBlank<string>({
  type: 'word',
  what: 'a word in quotes, such as "lamp"',
  read: (tokens, at) => {
    const token = tokens[at];
    return token?.quoted === true && lettersIn(token.text) > 0 ? [{ value: token.text, next: at + 1 }] : [];
  },
  print: (text) => `"${text}"`,
  samples: ['lamp', 'three of hearts'],
});

/** How many cards spelling takes: one for each letter, none for spaces and signs. */
export function lettersIn(text: string): number {
  return [...text].filter((c) => /\p{L}/u.test(c)).length;
}

/** An order of numbered things, first to last: `2, 3, 1`. */
export const sequence = defineBlank<readonly number[]>({
  type: 'sequence',
  what: 'an order, such as "2, 3, 1"',
  read: (tokens, at) => {
    const list: number[] = [];
    const readings: BlankReading<readonly number[]>[] = [];
    for (let i = at; ; i++) {
      const n = numberIn(tokens[i]);
      if (n === undefined) break;
      list.push(n);
      readings.unshift({ value: [...list], next: i + 1 });
    }
    return readings;
  },
  print: (list) => list.join(', '),
  samples: [[1], [2, 1], [3, 1, 2], [2, 3, 1]],
});
