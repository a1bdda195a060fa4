import { MOVES } from '../../src/moves/index.ts';
import { printCardName, RANKS, SUITS } from '../../src/cards/names.ts';
import { CLAIMS } from '../../src/claims/index.ts';
import { BLANKS } from '../../src/phrases/blanks.ts';
import { matchPhrase } from '../../src/phrases/phrase.ts';
import { tokenize } from '../../src/phrases/tokens.ts';
import { SAMPLE_NAMES } from '../../src/phrases/blank.ts';
import type { Args, Names } from '../../src/phrases/values.ts';
import type {
  EachStep,
  EitherStep,
  IfStep,
  MoveStep,
  NumberTest,
  RepeatStep,
  Routine,
  Sentence,
  Step,
  Times,
} from '../../src/routine/routine.ts';
import { parseTable, readAs } from '../packets.ts';

/** Routines written down in a test: sentences for the moves, functions for what holds them together. */

const NOWHERE = { number: '', range: { from: 0, to: 0 } };

const NAMES: Names = {
  ...SAMPLE_NAMES,
  cards: [
    ...SAMPLE_NAMES.cards,
    ...RANKS.flatMap((rank) => SUITS.map((suit) => printCardName({ rank, suit }))),
  ],
  piles: [
    ...SAMPLE_NAMES.piles,
    'hand',
    'rest',
    'upper',
    'lower',
    'pocket',
    ...Array.from({ length: 60 }, (_, i) => `pile ${i + 1}`),
    ...Array.from({ length: 16 }, (_, i) => `cell ${(i >> 2) + 1} ${(i & 3) + 1}`),
  ],
};

const read = new Map<string, MoveStep>();

/** The one move that a sentence is. */
export function move(sentence: string): MoveStep {
  let step = read.get(sentence);
  if (step === undefined) read.set(sentence, (step = readMove(sentence)));
  return step;
}

function readMove(sentence: string): MoveStep {
  const found = MOVES.flatMap((m) =>
    readAs(m, sentence, NAMES).map((args) => ({ move: m.id, args: inOrder(args) })),
  );
  const different = new Set(found.map((f) => JSON.stringify(f)));
  if (different.size !== 1)
    throw new Error(`"${sentence}" is read as ${[...different].join(', ') || 'nothing'}`);
  return { do: 'move', ...found[0], who: 'spectator', secret: false, ...NOWHERE };
}

/** The one claim that a sentence is. */
export function claim(sentence: string): Sentence {
  const tokens = tokenize(sentence);
  const found = CLAIMS.flatMap((c) =>
    c.phrases.flatMap((phrase) => {
      const match = matchPhrase(phrase, tokens, NAMES, BLANKS);
      if (match === null || match.troubles.length > 0) return [];
      return [{ says: 'claim' as const, claim: c.id, args: inOrder({ ...c.defaults, ...match.args }) }];
    }),
  );
  const different = new Set(found.map((f) => JSON.stringify(f)));
  if (different.size !== 1)
    throw new Error(`"${sentence}" is read as ${[...different].join(', ') || 'nothing'}`);
  return found[0];
}

/** So that the same args are the same text. */
function inOrder(args: Args): Args {
  return Object.fromEntries(Object.entries(args).sort(([a], [b]) => (a < b ? -1 : 1)));
}

type Written = string | Step;

export function steps(...list: readonly Written[]): Step[] {
  return list.map((step) => (typeof step === 'string' ? move(step) : step));
}

export function repeat(times: Times, ...body: readonly Written[]): RepeatStep {
  return { do: 'repeat', times, who: 'spectator', body: steps(...body), ...NOWHERE };
}

export function anyTimes(...body: readonly Written[]): RepeatStep {
  return repeat({ of: 'any' }, ...body);
}

export function either(...branches: readonly (readonly Written[])[]): EitherStep {
  return { do: 'either', who: 'spectator', branches: branches.map((b) => steps(...b)), ...NOWHERE };
}

export function forEach(stem: string, counter: string, ...body: readonly Written[]): EachStep {
  return { do: 'each', stem, counter, body: steps(...body), ...NOWHERE };
}

export function whenever(
  test: Omit<NumberTest, 'test'>,
  then: readonly Written[],
  otherwise: readonly Written[] = [],
): IfStep {
  const when: NumberTest = { test: 'number', ...test };
  return { do: 'if', when, then: steps(...then), otherwise: steps(...otherwise), ...NOWHERE };
}

/** A routine on a table such as `1 2 3^; left: 4 5`, without an ending. */
export function working(table: string, ...list: readonly Written[]): Routine {
  const { piles } = parseTable(table);
  const laid = [...piles].map(([name, cards]) => ({ name, cards }));
  return {
    title: '',
    cards: laid.flatMap(({ cards }) => cards.map(({ card }) => card)),
    setUp: {
      piles: laid.map(({ name, cards }) => ({
        name,
        cards: cards.map(({ card, bits }) => ({
          card: card.id,
          up: bits.has('up') ? 1 : 0,
          end: bits.has('end') ? 1 : 0,
        })),
      })),
      freedoms: [],
    },
    steps: steps(...list),
    endings: [],
  };
}

/** `1 2 3 ... n`. */
export function numbered(n: number): string {
  return Array.from({ length: n }, (_, i) => i + 1).join(' ');
}
