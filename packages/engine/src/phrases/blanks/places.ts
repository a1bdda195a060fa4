import { defineBlank, type BlankReading } from '../blank.ts';
import type { Token } from '../tokens.ts';
import type { Groups, Names, PileRef, PlaceRef, Spot } from '../values.ts';
import { readStem } from './groups.ts';
import { place, printNumber, readNumber } from './number.ts';
import { pile, printPile } from './pile.ts';
import { wordAt } from './card-words.ts';

type Trouble = BlankReading['trouble'];

// More places than a sentence names; keeps hostile text from costing time.
const MOST_PLACES = 12;

/** `top cards of pile 1 and pile 2`, `bottom cards of the piles`. */
function readEnds(tokens: readonly Token[], at: number, names: Names): BlankReading<Groups>[] {
  const end = wordAt(tokens, at);
  if (
    (end !== 'top' && end !== 'bottom') ||
    wordAt(tokens, at + 1) !== 'cards' ||
    wordAt(tokens, at + 2) !== 'of'
  )
    return [];
  const readings: BlankReading<Groups>[] = [];
  const all = wordAt(tokens, at + 3) === 'all' ? 1 : 0;
  const stem = wordAt(tokens, at + 3 + all).endsWith('s') ? readStem(tokens, at + 3 + all, names) : null;
  if (stem !== null) readings.push({ value: { groups: 'ends', end, stem: stem.stem }, next: stem.next });
  const spots: Spot[] = [];
  let trouble: Trouble;
  for (let next = at + 3; spots.length < MOST_PLACES;) {
    const [found] = pile.read(tokens, next, names);
    if (found === undefined) break;
    // A pile blank only ever reads a pile.
    spots.push({ place: { end, n: 1 }, pile: found.value as PileRef });
    trouble ??= found.trouble;
    if (spots.length > 1) readings.unshift(reading(spots, found.next, trouble));
    next = wordAt(tokens, found.next) === 'and' ? found.next + 1 : found.next;
  }
  return readings;
}

/** `top 4 cards`, `bottom 2 cards of pile 1`: one group. */
function readEnd(tokens: readonly Token[], at: number, names: Names): BlankReading<Groups>[] {
  const word = wordAt(tokens, at);
  if (word !== 'top' && word !== 'bottom') return [];
  const end: 'top' | 'bottom' = word;
  return readNumber(tokens, at + 1, names).flatMap(({ value: size, next }): BlankReading<Groups>[] => {
    if (wordAt(tokens, next) !== 'cards') return [];
    const of = wordAt(tokens, next + 1);
    const inPile = of === 'of' || of === 'in' ? pile.read(tokens, next + 2, names) : [];
    return [
      // A pile blank only ever reads a pile.
      ...inPile.map(({ value, ...rest }) => ({
        ...rest,
        value: { groups: 'end' as const, end, size, pile: value as PileRef },
      })),
      { value: { groups: 'end', end, size, pile: 'packet' }, next: next + 1 },
    ];
  });
}

function reading(spots: readonly Spot[], next: number, trouble: Trouble): BlankReading<Groups> {
  return {
    value: { groups: 'spots', spots: [...spots] },
    next,
    ...(trouble === undefined ? {} : { trouble }),
  };
}

/** `top card of pile 1 and the 2nd card of pile 2`; a place without a pile is in the pile named next. */
function readList(tokens: readonly Token[], at: number, names: Names): BlankReading<Groups>[] {
  const readings: BlankReading<Groups>[] = [];
  const found: { place: PlaceRef; pile?: PileRef }[] = [];
  let trouble: Trouble;
  for (let next = at; found.length < MOST_PLACES;) {
    const [where] = place.read(tokens, next, names);
    if (where === undefined) break;
    next = wordAt(tokens, where.next) === 'cards' ? where.next + 1 : where.next;
    const word = wordAt(tokens, next);
    const [of] = word === 'of' || word === 'in' ? pile.read(tokens, next + 1, names) : [];
    // A place blank only ever reads a place, a pile blank a pile.
    found.push({
      place: where.value as PlaceRef,
      ...(of === undefined ? {} : { pile: of.value as PileRef }),
    });
    if (of !== undefined) next = of.next;
    trouble ??= of?.trouble;
    if (found.length > 1) {
      let named: PileRef = 'packet';
      const spots = found.map((_, i): Spot => {
        const spot = found[found.length - 1 - i];
        named = spot.pile ?? named;
        return { place: spot.place, pile: named };
      });
      readings.unshift(reading(spots.reverse(), next, trouble));
    }
    if (wordAt(tokens, next) !== 'and') break;
    next++;
  }
  return readings;
}

function printPlaces(value: Groups): string {
  if (value.groups === 'ends') return `the ${value.end} cards of the ${value.stem}s`;
  if (value.groups === 'end') {
    const where = value.pile === 'packet' ? '' : ` of ${printPile(value.pile)}`;
    return `the ${value.end} ${printNumber(value.size)} cards${where}`;
  }
  // This blank reads no other groups.
  if (value.groups !== 'spots') throw new Error(`places that are ${value.groups}`);
  const [{ place: first }] = value.spots;
  const isEnds = first.n === 1 && value.spots.every(({ place: p }) => p.n === 1 && p.end === first.end);
  if (isEnds)
    return `the ${first.end} cards of ${value.spots.map((spot) => printPile(spot.pile)).join(' and ')}`;
  return value.spots.map((spot) => `${place.print(spot.place)} of ${printPile(spot.pile)}`).join(' and ');
}

/** Two or more places: `the top cards of pile 1 and pile 2`, `the top cards of the piles`, `the top 4 cards`. */
export const places = defineBlank<Groups>({
  type: 'places',
  what: 'two or more places: "the top cards of the piles", "the top 4 cards", "the top card of pile 1 and the 2nd card of pile 2"',
  read: (tokens, at, names) =>
    [...readEnds(tokens, at, names), ...readEnd(tokens, at, names), ...readList(tokens, at, names)].sort(
      (a, b) => b.next - a.next,
    ),
  print: printPlaces,
  samples: [
    { groups: 'ends', end: 'top', stem: 'pile' },
    { groups: 'ends', end: 'bottom', stem: 'pile' },
    { groups: 'end', end: 'top', size: 4, pile: 'packet' },
    { groups: 'end', end: 'bottom', size: { var: 'n' }, pile: 'pile 1' },
    {
      groups: 'spots',
      spots: [
        { place: { end: 'top', n: 1 }, pile: 'pile 1' },
        { place: { end: 'top', n: 1 }, pile: 'pile 2' },
      ],
    },
    {
      groups: 'spots',
      spots: [
        { place: { end: 'top', n: 1 }, pile: 'left' },
        { place: { end: 'bottom', n: 1 }, pile: 'right' },
      ],
    },
    {
      groups: 'spots',
      spots: [
        { place: { end: 'top', n: 2 }, pile: 'packet' },
        { place: { end: 'top', n: { var: 'n' } }, pile: 'packet' },
        { place: { end: 'bottom', n: 3 }, pile: 'pile 3' },
      ],
    },
  ],
});
