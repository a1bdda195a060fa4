import { defineBlank, type BlankReading } from '../blank.ts';
import type { Token } from '../tokens.ts';
import type { Groups, Names, NumberRef, PileRef } from '../values.ts';
import { printNumber, readNumber } from './number.ts';
import { pile, printPile } from './pile.ts';
import { wordAt } from './card-words.ts';

type End = 'top' | 'bottom';
type Said = { readonly next: number; readonly make: (tail: Tail) => Groups };
interface Tail {
  readonly pile: PileRef;
  readonly from: End;
  readonly round: boolean;
}

const PARTS = ['half', 'third', 'quarter'];

/** Stems of numbered piles, and the words that mean them when no pile has that stem itself. */
export function readStem(
  tokens: readonly Token[],
  at: number,
  names: Names,
): { stem: string; next: number } | null {
  const word = wordAt(tokens, at).replace(/s$/, '');
  const stems = names.piles.flatMap((name) => /^(\S+) \d+$/.exec(name)?.[1] ?? []);
  if (word !== '' && stems.includes(word)) return { stem: word, next: at + 1 };
  return word === 'pile' || word === 'heap' || word === 'hand' ? { stem: 'pile', next: at + 1 } : null;
}

/** What follows `every`: how the cards are taken together. */
function readTogether(tokens: readonly Token[], at: number, names: Names): Said[] {
  const word = (i: number): string => wordAt(tokens, at + i);
  const blocks = (size: NumberRef, next: number): Said => ({
    next,
    make: (tail) => ({ groups: 'blocks', size, from: tail.from, pile: tail.pile }),
  });
  const found: Said[] = [];
  if (word(0) === 'pair') {
    if (word(1) === 'half' && word(3) === 'apart')
      found.push({ next: at + 4, make: (tail) => ({ groups: 'halfway', pile: tail.pile }) });
    if (word(1) === 'of' && word(2) === 'neighbours') found.push(neighbours(at + 3));
    if (word(1) === 'from' && word(3) === 'of') found.push(...readAcross(tokens, at + 2, names));
    found.push(blocks(2, word(1) === 'of' && word(2) === 'cards' ? at + 3 : at + 1));
  }
  if ((word(0) === 'two' || word(0) === '2') && word(1) === 'neighbours') found.push(neighbours(at + 2));
  if (word(0) === 'mirror' && word(1) === 'pair')
    found.push({ next: at + 2, make: (tail) => ({ groups: 'mirror', pile: tail.pile }) });
  if (PARTS.includes(word(0)))
    found.push({
      next: at + 1,
      make: (tail) => ({ groups: 'parts', parts: PARTS.indexOf(word(0)) + 2, pile: tail.pile }),
    });
  const counted = (word(0) === 'block' || word(0) === 'set') && word(1) === 'of' ? at + 2 : at;
  for (const { value, next } of readNumber(tokens, counted, names))
    found.push(blocks(value, wordAt(tokens, next) === 'cards' ? next + 1 : next));
  return found;
}

function neighbours(next: number): Said {
  return { next, make: ({ round, pile: where }) => ({ groups: 'neighbours', round, pile: where }) };
}

/** `top of pile 1 and the bottom of pile 2`. */
function readAcross(tokens: readonly Token[], at: number, names: Names): Said[] {
  const first = wordAt(tokens, at);
  if (first !== 'top' || wordAt(tokens, at + 1) !== 'of') return [];
  return pile.read(tokens, at + 2, names).flatMap((one) => {
    const second = wordAt(tokens, one.next + 1);
    const isJoined = wordAt(tokens, one.next) === 'and' && wordAt(tokens, one.next + 2) === 'of';
    if (!isJoined || (second !== 'top' && second !== 'bottom')) return [];
    return pile.read(tokens, one.next + 3, names).map((two): Said => ({
      next: two.next,
      // A pile blank only ever reads a pile.
      make: () => ({
        groups: 'across',
        pile: one.value as PileRef,
        other: two.value as PileRef,
        opposite: second === 'bottom',
      }),
    }));
  });
}

/** `of pile 2`, `from the bottom`, `going round`, in any order. */
function readTails(
  tokens: readonly Token[],
  at: number,
  names: Names,
): (Tail & { next: number; trouble?: BlankReading['trouble'] })[] {
  let tail: Tail & { next: number; trouble?: BlankReading['trouble'] } = {
    pile: 'packet',
    from: 'top',
    round: false,
    next: at,
  };
  const all = [tail];
  for (;;) {
    const word = wordAt(tokens, tail.next);
    const after = wordAt(tokens, tail.next + 1);
    if (word === 'from' && (after === 'top' || after === 'bottom'))
      tail = { ...tail, from: after, next: tail.next + 2 };
    else if (word === 'going' && after === 'round') tail = { ...tail, round: true, next: tail.next + 2 };
    else if (word === 'of' || word === 'in') {
      const [found] = pile.read(tokens, tail.next + 1, names);
      if (found === undefined) return all;
      const { value, ...rest } = found;
      // A pile blank only ever reads a pile.
      tail = { ...tail, ...rest, pile: value as PileRef };
    } else return all;
    all.unshift(tail);
  }
}

// Many at once: `mirror cards differ`.
const MIRRORED = ['mirror cards', 'mirror pairs', 'cards in mirror places', 'cards in mirror positions'].map(
  (words) => words.split(' '),
);

function readGroups(tokens: readonly Token[], at: number, names: Names): BlankReading<Groups>[] {
  const word = wordAt(tokens, at);
  const mirrored = MIRRORED.find((words) => words.every((one, i) => wordAt(tokens, at + i) === one));
  if (mirrored !== undefined)
    return [{ value: { groups: 'mirror', pile: 'packet' }, next: at + mirrored.length }];
  if (word !== 'every' && word !== 'each') return [];
  const readings = readTogether(tokens, at + 1, names).flatMap(({ next, make }) =>
    readTails(tokens, next, names).map(({ next: end, trouble, ...tail }): BlankReading<Groups> => ({
      value: make(tail),
      next: end,
      ...(trouble === undefined ? {} : { trouble }),
    })),
  );
  const stem = readStem(tokens, at + 1, names);
  if (stem !== null) readings.push({ value: { groups: 'piles', stem: stem.stem }, next: stem.next });
  return readings.sort((a, b) => b.next - a.next);
}

function printGroups(value: Groups): string {
  const where = 'pile' in value && value.pile !== 'packet' ? ` of ${printPile(value.pile)}` : '';
  switch (value.groups) {
    case 'blocks': {
      const block = value.size === 2 ? 'every pair' : `every block of ${printNumber(value.size)}`;
      return block + where + (value.from === 'bottom' ? ' from the bottom' : '');
    }
    case 'parts':
      return `each ${PARTS[value.parts - 2]}${where}`;
    case 'mirror':
      return `every mirror pair${where}`;
    case 'halfway':
      return `every pair half a packet apart${where}`;
    case 'neighbours':
      return `every pair of neighbours${where}${value.round ? ' going round' : ''}`;
    case 'across':
      return `every pair from the top of ${printPile(value.pile)} and the ${value.opposite ? 'bottom' : 'top'} of ${printPile(value.other)}`;
    case 'piles':
      return `each ${value.stem}`;
    case 'ends':
    case 'end':
    case 'spots':
      // This blank reads no places.
      throw new Error(`groups that are ${value.groups}`);
  }
}

/** Cards taken together, in the singular: `every pair`, `every block of 4`, `every mirror pair`, `each pile`. */
export const groups = defineBlank<Groups>({
  type: 'groups',
  what: 'cards taken together: "every pair", "every block of 4", "every mirror pair", "each pile", "each half"',
  read: readGroups,
  print: printGroups,
  samples: [
    { groups: 'blocks', size: 2, from: 'top', pile: 'packet' },
    { groups: 'blocks', size: 4, from: 'top', pile: 'packet' },
    { groups: 'blocks', size: 2, from: 'bottom', pile: 'pile 2' },
    { groups: 'blocks', size: { var: 'n' }, from: 'top', pile: 'packet' },
    { groups: 'parts', parts: 2, pile: 'packet' },
    { groups: 'parts', parts: 4, pile: 'pile 1' },
    { groups: 'mirror', pile: 'packet' },
    { groups: 'halfway', pile: 'packet' },
    { groups: 'neighbours', round: false, pile: 'packet' },
    { groups: 'neighbours', round: true, pile: 'pile 1' },
    { groups: 'across', pile: 'pile 1', other: 'pile 2', opposite: false },
    { groups: 'across', pile: 'left', other: 'right', opposite: true },
    { groups: 'piles', stem: 'pile' },
  ],
});
