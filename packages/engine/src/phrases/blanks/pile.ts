import { trouble } from '../../base/diagnostic.ts';
import { defineBlank, type BlankReading } from '../blank.ts';
import { numberIn, type Token } from '../tokens.ts';
import type { Names, PileRef } from '../values.ts';
import { printNumber, readNumber } from './number.ts';

// Words that read badly without their article; other names of piles are names.
const NOUNS = new Set(
  'packet pack deck pile table hand pocket envelope heap stock rest box ring tail left right counter discard part'.split(
    ' ',
  ),
);

/** The hidden number that counts through the piles of a `For each pile:` block; no word can be its name. */
export function eachCounter(stem: string): string {
  return `that ${stem}`;
}

export function printPile(ref: PileRef): string {
  if (typeof ref !== 'string') {
    const counter = eachCounter(ref.stem);
    if (typeof ref.n !== 'number' && ref.n.var === counter) return counter;
    return `${ref.stem} ${printNumber(ref.n)}`;
  }
  const last = ref.split(' ').at(-1) as string;
  return NOUNS.has(last) ? `the ${ref}` : ref;
}

interface KnownPile {
  readonly name: string;
  readonly words: readonly string[];
}

// A list of names never changes, so it is sorted by first word once and not looked through for every word of a note.
const BY_FIRST_WORD = new WeakMap<readonly string[], ReadonlyMap<string, readonly KnownPile[]>>();

function pilesOn(word: string, piles: readonly string[]): readonly KnownPile[] {
  let index = BY_FIRST_WORD.get(piles);
  if (index === undefined) {
    const all = new Map<string, KnownPile[]>();
    for (const name of piles) {
      const words = name.toLowerCase().split(' ');
      const same = all.get(words[0]);
      if (same === undefined) all.set(words[0], [{ name, words }]);
      else same.push({ name, words });
    }
    BY_FIRST_WORD.set(piles, (index = all));
  }
  return index.get(word) ?? [];
}

function knownPiles(tokens: readonly Token[], at: number, names: Names): BlankReading<PileRef>[] {
  const stem = tokens[at]?.text;
  if (stem === undefined) return [];
  const readings: BlankReading<PileRef>[] = [];
  const alike = pilesOn(stem, names.piles);
  for (const { name, words } of alike)
    if (words.every((word, i) => tokens[at + i]?.text === word))
      readings.push({ value: name, next: at + words.length });
  readings.sort((a, b) => b.next - a.next);
  if (stem === 'that' && !tokens[at].quoted) {
    const counter = eachCounter(tokens[at + 1]?.text ?? '');
    if (names.numbers.includes(counter))
      readings.push({ value: { stem: tokens[at + 1].text, n: { var: counter } }, next: at + 2 });
  }
  if (alike.some(({ words }) => words.length > 1))
    for (const { value, next } of readNumber(tokens, at + 1, names))
      if (typeof value !== 'number') readings.push({ value: { stem, n: value }, next });
  return readings;
}

// Words that say where or how in other sentences; as names of new piles they would make those read in two ways.
const RESERVED = new Set(
  'top bottom middle place order turn back it them half each every any card cards anywhere'.split(' '),
);

/** Two words, or a word and a number, that could be meant as a pile's name. */
function likeName(tokens: readonly Token[], at: number): number {
  const token = tokens[at];
  if (token === undefined || (!token.quoted && !/^\p{L}/u.test(token.text)) || RESERVED.has(token.text))
    return 0;
  return numberIn(tokens[at + 1]) !== undefined ? 2 : 1;
}

export const pile = defineBlank<PileRef>({
  type: 'pile',
  what: 'the name of a pile',
  read: (tokens, at, names) => {
    const known = knownPiles(tokens, at, names);
    const length = likeName(tokens, at);
    if (known.length > 0 || length === 0) return known;
    const name = tokens
      .slice(at, at + length)
      .map((t) => t.text)
      .join(' ');
    return [
      {
        value: name,
        next: at + length,
        trouble: trouble('unknown-pile', { pile: name, known: names.piles }),
      },
    ];
  },
  print: printPile,
  samples: ['packet', 'pile 2', 'left'],
});

/** Where cards are put: a pile that exists, or the name of a new one. */
export const newPile = defineBlank<PileRef>({
  type: 'newpile',
  what: 'a pile, or the name of a new one',
  read: (tokens, at, names) => {
    const readings = knownPiles(tokens, at, names);
    const length = likeName(tokens, at);
    const name = tokens
      .slice(at, at + length)
      .map((t) => t.text)
      .join(' ');
    if (length > 0 && !readings.some((r) => r.next === at + length))
      readings.push({ value: name, next: at + length });
    return readings;
  },
  print: printPile,
  samples: ['packet', 'table', 'pile 3', 'north'],
});
