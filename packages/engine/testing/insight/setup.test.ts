import { describe, expect, test } from 'vitest';
import { countPackets, setUpsFrom, withCards } from '../../src/insight/start/set-up-search.ts';
import { faultsOf, mendingExchange } from '../../src/insight/start/faults.ts';
import { startNeed } from '../../src/insight/start/start-need.ts';
import type { Card } from '../../src/cards/card.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { readSetUp } from '../../src/note/setup.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import type { Routine } from '../../src/routine/routine.ts';
import { orders } from '../published/structures.ts';
import { holdsAlways } from './altered.ts';

function routineOf(setUp: string, working: readonly string[], ending: string): Routine {
  const steps = working.map((sentence, i) => `${i + 1}. ${sentence}`).join('\n');
  const text = `## Set-up\n\n- packet: ${setUp}\n\n## Working\n\n${steps}\n\n## Ending\n\n- ${ending}\n`;
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  return routine;
}

function hand(text: string): readonly Card[] {
  const { cards, diagnostics } = readSetUp([{ text: `packet: ${text}`, from: 0 }]);
  if (diagnostics.some(({ severity }) => severity === 'error')) throw new Error(JSON.stringify(diagnostics));
  return cards;
}

function needOf(routine: Routine) {
  const need = startNeed(routine, DEFAULT_LIMITS);
  if (need === null) throw new Error('no equations');
  return need;
}

const ROUTINES: readonly (readonly [string, Routine])[] = [
  [
    'pairs out of a mirror',
    routineOf('AC 2H 3S 3D 2C AS, face down', ['Milk the packet.'], 'Every pair agrees in value.'),
  ],
  [
    'alternating, cut and riffled',
    routineOf(
      '6 cards alternately red and black, face down',
      ['Cut the packet.', 'Deal any number of cards to the table and riffle the two packets together.'],
      'Every pair differs in colour.',
    ),
  ],
  [
    'sums',
    routineOf('AC 6H 2S 5D 3C 4S, face down', ['Out-faro the packet.'], 'Every mirror pair totals 7.'),
  ],
  [
    'one of each suit',
    routineOf('AC 2H 3S 4D, face down', ['Cut the packet.'], 'Every four has one of each suit.'),
  ],
  [
    'mates in a mirror',
    routineOf('AC 2H 3S 3C 2D AS, face down', ['Milk the packet.'], 'Every pair is a pair of mates.'),
  ],
  [
    'blocks of three that show three kinds',
    routineOf('AC 2H 3S AS 2D 3C, face down', ['Milk the packet.'], 'Every three has one of each value.'),
  ],
  [
    'face up somewhere',
    routineOf(
      'AC face down, 2H 3S face up, 4D face down',
      ['Turn over the top 2 cards.'],
      'Exactly 1 red card is face up.',
    ),
  ],
];

describe.each(ROUTINES)('%s', (_name, routine) => {
  const need = needOf(routine);
  const laid = orders(routine.cards).map((cards) => withCards(routine, cards));
  const good = laid.filter((one) => holdsAlways(one));

  test('as many packets as trying them all finds', { timeout: 60_000 }, () => {
    expect(countPackets(need)?.orders).toBe(BigInt(good.length));
  });

  test('faults are found in just the packets that fail', { timeout: 60_000 }, () => {
    for (const one of laid.filter((_, i) => i % 7 === 0)) {
      const order = one.cards.map(({ name }) => name).join(' ');
      expect(`${order} ${faultsOf(needOf(one)).length === 0}`).toBe(`${order} ${holdsAlways(one)}`);
    }
  });

  test('some are found among its own cards', () => {
    const found = setUpsFrom(routine, routine.cards, DEFAULT_LIMITS);
    if (!found.ok) throw new Error(found.error.code);
    expect(found.value.length).toBeGreaterThan(0);
    for (const one of found.value) expect(holdsAlways(one.routine)).toBe(true);
  });
});

describe('a full pack', () => {
  // Counted by hand: so many ways to lay the classes, times all orders within them.
  const factorial = (n: number): bigint => (n < 2 ? 1n : BigInt(n) * factorial(n - 1));
  const riffled = [
    'Cut the packet.',
    'Deal any number of cards to the table and riffle the two packets together.',
  ];
  test.each([
    [
      'alternately',
      '52 cards alternately red and black',
      riffled,
      'Every pair differs in colour.',
      2n * factorial(26) ** 2n,
    ],
    [
      'mates in a mirror',
      'A-K of clubs, A-K of hearts, K-A of diamonds, K-A of spades',
      ['Milk the packet.'],
      'Every pair is a pair of mates.',
      factorial(26) * 2n ** 26n,
    ],
    [
      'suits coming round',
      'clubs hearts spades diamonds repeated, 52 cards',
      riffled,
      'Every four has one of each suit.',
      factorial(4) * factorial(13) ** 4n,
    ],
  ] as const)('%s', (_name, cards, working, ending, orders) => {
    expect(countPackets(needOf(routineOf(`${cards}, face down`, working, ending)))?.orders).toBe(orders);
  });
});

describe('one fault', () => {
  test('an exchange that mends a packet', () => {
    const [, alternating] = ROUTINES[1];
    const need = needOf(withCards(alternating, hand('AH 2S 4H 3S 5D 6C')));
    expect(mendingExchange(need)).toBeNull();
    const spoilt = withCards(alternating, hand('AH 2S 3D 5D 4C 6C'));
    expect(mendingExchange(needOf(spoilt))).toEqual([3, 4]);
  });
});

describe('cards at hand', () => {
  const [, alternating] = ROUTINES[1];

  test('some of a full pack', () => {
    const found = setUpsFrom(alternating, hand('full pack in any order, face down'), DEFAULT_LIMITS);
    if (!found.ok) throw new Error(found.error.code);
    const [best] = found.value;
    expect(best.for).toBe('looks');
    const colours = best.cards.map(({ attributes }) => attributes.colour);
    expect(colours.every((colour, i) => i === 0 || colour !== colours[i - 1])).toBe(true);
    for (const one of found.value) expect(holdsAlways(one.routine)).toBe(true);
    // No two neighbours of one value, which would look laid out.
    const values = best.cards.map(({ attributes }) => attributes.value);
    expect(values.every((value, i) => i === 0 || value !== values[i - 1])).toBe(true);
  });

  test('why there is none', () => {
    const few = setUpsFrom(alternating, hand('AH 2H 3S'), DEFAULT_LIMITS);
    expect(few).toEqual({ ok: false, error: { code: 'set-up-too-few', facts: { places: 6, cards: 3 } } });
    const red = setUpsFrom(alternating, hand('AH 2H 3H 4H 5S 6S'), DEFAULT_LIMITS);
    expect(red).toEqual({
      ok: false,
      error: { code: 'set-up-none-for', facts: { sentence: 'Every pair differs in colour' } },
    });
  });

  test('the first fault is at the cards that clash', () => {
    const cards = hand('AH 2S 3S 4H 5D 6C');
    const faults = faultsOf(needOf(withCards(alternating, cards)));
    expect(faults.length).toBeGreaterThan(0);
    const isTrue = faults.every(({ slots }) => slots.length === 2);
    expect(isTrue).toBe(true);
    for (const { slots } of faults) {
      const [a, b] = slots.map((slot) => cards[slot].attributes.colour);
      const apart = Math.abs(slots[0] - slots[1]);
      expect(a === b).toBe(apart % 2 === 1);
    }
  });
});
