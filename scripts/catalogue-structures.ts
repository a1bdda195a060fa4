import type { Card } from '../packages/engine/src/cards/card.ts';
import type { Heading } from './catalogue.ts';
import type { ShelfNote } from './generate-shelf.ts';

/**
 * A structure. A note rests on it where the engine recognises it in what an ending needs at some moment of the working, or where `rests`
 * says so: for structures that no equations tell.
 */
export interface StructureHeading extends Heading {
  readonly rests?: (note: ShelfNote) => boolean;
  /** Forms of ending that state it, and moves that bring it about or use it. */
  readonly endings?: readonly string[];
  readonly moves?: readonly string[];
  /** Source files besides that say or recognise it, in packages/engine. */
  readonly files?: readonly string[];
  /** Tests of the structure itself, from packages/engine. */
  readonly tests: readonly string[];
}

const WHO_KEEPS = 'testing/published/who-keeps-what.test.ts';
const CONVERSIONS = 'testing/published/conversions.test.ts';
const SHELF = 'testing/shelf.test.ts';

const has = ({ steps }: ShelfNote, ...ids: readonly string[]): boolean =>
  steps.some(({ move }) => ids.includes(move));
const claims = ({ endings }: ShelfNote, ...ids: readonly string[]): boolean =>
  ids.some((id) => endings.has(id));

/** The cards of the first pile, from the top. */
function firstPile({ routine }: ShelfNote): Card[] {
  return (routine.setUp.piles[0]?.cards ?? []).map(({ card }) => routine.cards[card]);
}

/** Whether the colours of so few cards in a row as could tell the places of a pile apart do tell them, all round. */
function everyWindowDiffers(note: ShelfNote): boolean {
  if (note.routine.setUp.freedoms.length > 0) return false;
  const colours = firstPile(note).map(({ attributes: { colour } }) => colour);
  if (colours.length < 8 || new Set(colours).size !== 2) return false;
  const length = Math.ceil(Math.log2(colours.length));
  const windows = colours.map((_, i) =>
    Array.from({ length }, (_unused, k) => colours[(i + k) % colours.length]).join(),
  );
  return new Set(windows).size === colours.length;
}

/** Whether no two pairs of the first pile add up to the same. */
function sumsDiffer(note: ShelfNote): boolean {
  const values = firstPile(note).map(({ attributes: { value } }) => Number(value));
  const sums = values.flatMap((a, i) => values.slice(0, i).map((b) => a + b));
  return values.length > 3 && sums.every(Number.isFinite) && new Set(sums).size === sums.length;
}

/** Whether the set-up leaves open which card of a class lies where the class is said: several cards of one kind and no more known. */
function leavesClassFree({ routine, proved }: ShelfNote): boolean {
  const kinds = new Map<string, number>();
  for (const { name, attributes } of routine.cards)
    if (attributes.rank === undefined && Object.keys(attributes).length > 0)
      kinds.set(name, (kinds.get(name) ?? 0) + 1);
  return proved && kinds.size > 1 && [...kinds.values()].some((n) => n > 1);
}

export const STRUCTURES: readonly StructureHeading[] = [
  { key: 'S1', title: 'alternating', endings: ['alternate'], tests: [WHO_KEEPS, CONVERSIONS] },
  { key: 'S2', title: 'mirrored', tests: [WHO_KEEPS, CONVERSIONS] },
  { key: 'S3', title: 'cyclic mirror', tests: [WHO_KEEPS] },
  { key: 'S4', title: 'half-offset', tests: [WHO_KEEPS, CONVERSIONS] },
  { key: 'S5', title: 'adjacent pairs', endings: ['agree', 'differ'], tests: [WHO_KEEPS, CONVERSIONS] },
  {
    key: 'S6',
    title: 'face and class alternate',
    moves: ['deal-turning', 'turn-alternate', 'cut-turn'],
    tests: [WHO_KEEPS, 'testing/published/turning.test.ts'],
  },
  { key: 'S7', title: 'class shown by face', endings: ['two-ways'], tests: [WHO_KEEPS, CONVERSIONS] },
  {
    key: 'S8',
    title: 'period k, or one of each in every block',
    endings: ['one-of-each', 'repeat'],
    tests: [WHO_KEEPS, 'testing/published/riffles.test.ts'],
  },
  {
    key: 'S9',
    title: 'balance of counts',
    endings: ['as-many', 'difference', 'same-number'],
    tests: ['src/moves/compositions.test.ts'],
  },
  {
    key: 'S10',
    title: 'as many face up at odd places as at even',
    moves: ['deal-turning', 'turn-alternate'],
    tests: [WHO_KEEPS],
  },
  {
    key: 'S11',
    title: 'parity of a place',
    rests: (note) => note.proved && note.certain.has('S11') && claims(note, 'place-is'),
    endings: ['place-is', 'card-is'],
    tests: [WHO_KEEPS],
  },
  {
    key: 'S12',
    title: 'distance from the key',
    rests: (note) => note.proved && claims(note, 'distance', 'next-to', 'between'),
    endings: ['distance', 'next-to', 'between'],
    tests: [WHO_KEEPS],
  },
  {
    key: 'S13',
    title: 'cyclic stack',
    endings: ['steps'],
    tests: [WHO_KEEPS, 'src/cards/stacks.test.ts'],
  },
  {
    key: 'S14',
    title: 'sums to the same with the mate',
    rests: (note) => note.proved && note.certain.has('S14') && claims(note, 'same-total', 'group-total'),
    endings: ['same-total', 'group-total'],
    tests: [CONVERSIONS],
  },
  {
    key: 'S15',
    title: 'fixed sums',
    rests: (note) => note.proved && claims(note, 'total-is', 'group-total'),
    endings: ['total-is', 'group-total'],
    moves: ['cross-out'],
    tests: ['src/moves/compositions.test.ts'],
  },
  {
    key: 'S16',
    title: 'place written in digits',
    rests: (note) => note.proved && has(note, 'gather-with') && has(note, 'say-pile'),
    moves: ['gather-with', 'say-pile', 'faro'],
    tests: ['testing/published/pile-tricks.test.ts', 'testing/published/faro.test.ts'],
  },
  {
    key: 'S17',
    title: 'every window differs',
    rests: (note) => note.proved && everyWindowDiffers(note) && has(note, 'see-card'),
    moves: ['see-card'],
    tests: [SHELF],
  },
  {
    key: 'S18',
    title: 'rising sequences',
    rests: (note) => note.proved && has(note, 'riffle', 'riffle-together') && claims(note, 'reads', 'runs'),
    moves: ['riffle'],
    tests: ['testing/published/riffles.test.ts'],
  },
  {
    key: 'S19',
    title: 'reversal does not depend on the number',
    rests: (note) => note.proved && has(note, 'count-and-transfer', 'count-and-note'),
    moves: ['count-and-transfer', 'count-and-note'],
    tests: ['testing/published/transfers.test.ts'],
  },
  {
    key: 'S20',
    title: 'a number less its digits',
    rests: ({ steps, proved }) =>
      proved && steps.some(({ move, args }) => move === 'reckon' && args.op === 'digits'),
    moves: ['reckon'],
    tests: ['src/moves/choosing.test.ts'],
  },
  {
    key: 'S21',
    title: 'pairs laid by a key of letters',
    rests: (note) => note.proved && has(note, 'lay-by-words'),
    moves: ['lay-by-words'],
    tests: ['src/moves/laws.test.ts'],
  },
  {
    key: 'S22',
    title: 'sums that tell both',
    rests: (note) => note.proved && has(note, 'reckon') && sumsDiffer(note),
    moves: ['reckon'],
    endings: ['total-is'],
    tests: [SHELF],
  },
  {
    key: 'S23',
    title: 'walks that merge',
    rests: ({ steps, proved }) => proved && steps.filter(({ move }) => move === 'walk-values').length > 1,
    moves: ['walk-values'],
    tests: ['testing/published/kruskal.test.ts'],
  },
  {
    key: 'S24',
    title: 'exchanges followed',
    rests: (note) => note.proved && has(note, 'swap-cards', 'exchange-piles') && has(note, 'note-card'),
    moves: ['swap-cards', 'exchange-piles'],
    tests: [SHELF],
  },
  {
    key: 'S25',
    title: 'one end differs',
    rests: (note) =>
      note.proved && has(note, 'rotate-card', 'rotate-packet') && claims(note, 'only-other-way'),
    moves: ['rotate-card', 'rotate-packet'],
    tests: [WHO_KEEPS],
  },
  {
    key: 'S26',
    title: 'order within a class is free',
    rests: leavesClassFree,
    files: ['src/note/setup-counts.ts', 'src/note/setup-patterns.ts'],
    tests: ['src/note/setup.test.ts'],
  },
];
