import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  claimTable,
  claimTables,
  exitOf,
  laidCards,
  readClaim,
  slotView,
} from '../../testing/claim-tables.ts';
import { namesFor, type LaidCard, type Table } from '../../testing/packets.ts';
import type { Exit } from './claim.ts';
import { holds, type Formula } from './formula.ts';
import { CLAIMS } from './index.ts';
import { meaningOf, type Sentence } from './sentence.ts';
import { simplify } from './simplify.ts';

function claimed(text: string, table: Table): Sentence {
  const found = CLAIMS.flatMap((claim) =>
    readClaim(claim, text, namesFor(table)).map((args): Sentence => ({
      says: 'claim',
      claim: claim.id,
      args,
    })),
  );
  if (found.length === 0) throw new Error(`nobody reads "${text}"`);
  return found[0];
}

function isAffine(formula: Formula): boolean {
  const parts = formula.is === 'and' ? formula.parts : [formula];
  return parts.every((part) => part.is === 'equal' || part.is === 'known');
}

function meant(
  sentence: Sentence,
  table: Table,
  start?: Exit['start'],
): { formula: Formula; vacuous: boolean } {
  const meaning = meaningOf(sentence, exitOf(table, start));
  if (!meaning.ok) throw new Error(JSON.stringify(meaning.error));
  return { formula: meaning.value.formula, vacuous: meaning.value.vacuous === true };
}

function saysOf(sentence: Sentence, table: Table, start?: Exit['start']): boolean {
  return holds(meant(sentence, table, start).formula, slotView(laidCards(table)));
}

const upTo = (by: 'cut' | 'turn', part: Sentence): Sentence => ({ says: 'up to', by, pile: 'packet', part });

const EIGHT = claimTable('AC 4H 7S 10D KC 3H 6S 9D');
const PILES = claimTable('pile 1: AC 4H 7S 10D; pile 2: KC 3H(chosen) 6S 9D');

describe('what linear algebra can decide', () => {
  test.each([
    'All cards face the same way.',
    'Every red card faces one way and every black card the other.',
    'All but the ace face the same way.',
    'All but 4 cards face the same way.',
    'All but 3 cards are face down.',
    'The 10D is the only card facing the other way.',
    'Exactly the red cards are face up.',
    'Exactly 3 cards are face up.',
    'Exactly half of the red cards are face up.',
    'An even number of hearts are face up.',
    'As many red cards are face up as black cards are face down.',
    'There are 2 more face-up cards than face-down cards.',
    'Every pair differs in colour.',
    'Every pair from the bottom agrees in parity.',
    'Every mirror pair is a pair of mates.',
    'Every four has one of each suit.',
    'Each half has one of each suit.',
    'Exactly one of every pair is face up.',
    'Each half is all of one suit.',
    'Every pair totals 14.',
    'Every pair has the same total.',
    'The face-up cards total 20.',
    'No two neighbours agree in colour.',
    'The suits repeat every 4.',
    'The colours alternate.',
    'The values go up by 3.',
    'The packet reads AC 4H 7S 10D KC 3H 6S 9D.',
    'The packet is back in its starting order.',
    'The top card is a red ace.',
    'The 10D is 3 places below the AC.',
    'Going round, the AC is 5 places below the 10D.',
    'The 3H lies at the place of its value.',
  ])('%s', (text) => {
    expect(isAffine(meant(claimed(text, EIGHT), EIGHT).formula)).toBe(true);
  });

  test.each([
    'The values ascend.',
    'At least 3 cards are face up.',
    'Every pair differs in suit.',
    'Exactly 1 card faces the other way.',
  ])('%s is no equation', (text) => {
    expect(isAffine(meant(claimed(text, EIGHT), EIGHT).formula)).toBe(false);
  });

  test.each([
    'The colours have separated into the piles.',
    'Each pile has one of each suit.',
    'The top cards of the piles are mates.',
    'The chosen card is in pile 2.',
    'The chosen card is the only card facing the other way.',
    'There are as many red cards in pile 1 as black cards in pile 2.',
    'Pile 1 and pile 2 have the same total.',
    'The top card of each pile is a club.',
    'Every pair from the top of pile 1 and the bottom of pile 2 agrees in value.',
  ])('%s (two piles)', (text) => {
    expect(isAffine(meant(claimed(text, PILES), PILES).formula)).toBe(true);
  });

  test.each([
    ['turn', 'All cards are face up.'],
    ['turn', 'Exactly the red cards are face up.'],
    ['turn', 'All but the ace are face down.'],
    ['turn', 'Exactly 4 cards are face up.'],
    ['turn', 'All cards face the same way.'],
    ['cut', 'The colours alternate.'],
    ['cut', 'Exactly 3 cards are face up.'],
  ] as const)('up to a %s: %s', (by, text) => {
    expect(isAffine(meant(upTo(by, claimed(text, EIGHT)), EIGHT).formula)).toBe(true);
  });

  test('two facts of two values: denied, and exactly when', () => {
    const red = claimed('The top card is red.', EIGHT);
    const up = claimed('The bottom card is face up.', EIGHT);
    for (const sentence of [
      { says: 'not', part: red },
      { says: 'exactly when', left: red, right: up },
      { says: 'not', part: { says: 'exactly when', left: { says: 'not', part: red }, right: up } },
    ] satisfies Sentence[])
      expect(meant(sentence, EIGHT).formula).toMatchObject({ is: 'equal', mod: 2 });
  });

  test('what a cut makes different stays a choice of several', () => {
    const formula = meant(
      upTo('cut', claimed('The packet reads AC 4H 7S 10D KC 3H 6S 9D.', EIGHT)),
      EIGHT,
    ).formula;
    expect(formula.is === 'or' && formula.parts.length).toBe(8);
  });

  test('the starting order up to a cut is the order going round', () => {
    for (const text of [
      'The packet is back in its starting order.',
      'The packet is in the reverse of its starting order.',
    ]) {
      const formula = meant(upTo('cut', claimed(text, EIGHT)), EIGHT).formula;
      expect(isAffine(formula)).toBe(true);
      expect(formula.is === 'and' && formula.parts.length).toBe(64);
    }
  });
});

describe('combinations', () => {
  const red = (table: Table): Sentence => claimed('All red cards are face up.', table);
  const joker = (table: Table): Sentence => claimed('Every 3 is face up.', { ...table, numbers: {} });

  test('vacuous parts make a vacuous whole as the rules say', () => {
    const table = claimTable('AC 4H');
    const some = red(table);
    const none = claimed('Every king is face up.', table);
    const vacuous = (sentence: Sentence): boolean => meant(sentence, table).vacuous;
    expect(vacuous(none)).toBe(true);
    expect(vacuous({ says: 'and', parts: [none, some] })).toBe(false);
    expect(vacuous({ says: 'or', parts: [none, none] })).toBe(true);
    expect(vacuous({ says: 'not', part: none })).toBe(true);
    expect(vacuous({ says: 'if', when: none, then: some })).toBe(false);
    expect(vacuous({ says: 'if', when: some, then: none })).toBe(true);
    expect(vacuous({ says: 'exactly when', left: none, right: some })).toBe(false);
    expect(vacuous(upTo('turn', none))).toBe(true);
  });

  test('a trouble of a part is the trouble of the whole', () => {
    const table = claimTable('pile 1: r; pile 2: b');
    const top = claimed('The top card is red.', table);
    const whole = meaningOf({ says: 'or', parts: [red(table), top] }, exitOf(table));
    expect(whole).toEqual({
      ok: false,
      error: { code: 'which-pile', facts: { piles: ['pile 1', 'pile 2'] } },
    });
  });

  test('rank words of one card', () => {
    expect(() => joker(EIGHT)).toThrow('nobody reads');
  });
});

const TEXTS = [
  'The top card is red.',
  'All red cards are face up.',
  'The colours alternate.',
  'Exactly 2 cards are face up.',
  'At least 2 red cards are face down.',
  'Every pair differs in suit.',
  'All cards face the same way.',
  'Exactly the red cards are face up.',
  'The values ascend.',
  'Exactly 1 card faces the other way.',
  'The packet is back in its starting order.',
  'The face-up cards total 8.',
];

/** Only a packet, so that every sentence means something. */
const packets: fc.Arbitrary<Table> = claimTables.map((table) => {
  const [cards] = table.piles.values();
  return { ...table, piles: new Map([['packet', cards]]) };
});

const sentences: fc.Arbitrary<Sentence> = fc.letrec<{ any: Sentence }>((tie) => ({
  any: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.constantFrom(...TEXTS).map((text) => claimed(text, EIGHT)),
    fc.record({
      says: fc.constantFrom('and', 'or'),
      parts: fc.array(tie('any'), { minLength: 1, maxLength: 3 }),
    }),
    fc.record({ says: fc.constant('not' as const), part: tie('any') }),
    fc.record({ says: fc.constant('if' as const), when: tie('any'), then: tie('any') }),
    fc.record({ says: fc.constant('exactly when' as const), left: tie('any'), right: tie('any') }),
    fc.record({
      says: fc.constant('up to' as const),
      by: fc.constantFrom('cut', 'turn'),
      pile: fc.constant('packet'),
      part: tie('any'),
    }),
  ),
})).any;

/** What a sentence says of a packet, by cutting and turning it over in earnest. */
function plainly(sentence: Sentence, cards: readonly LaidCard[], rest: Table): boolean {
  switch (sentence.says) {
    case 'claim':
      return saysOf(sentence, { ...rest, piles: new Map([['packet', cards]]) }, exitOf(rest).start);
    case 'and':
      return sentence.parts.every((part) => plainly(part, cards, rest));
    case 'or':
      return sentence.parts.some((part) => plainly(part, cards, rest));
    case 'not':
      return !plainly(sentence.part, cards, rest);
    case 'if':
      return !plainly(sentence.when, cards, rest) || plainly(sentence.then, cards, rest);
    case 'exactly when':
      return plainly(sentence.left, cards, rest) === plainly(sentence.right, cards, rest);
    case 'up to': {
      const others =
        sentence.by === 'cut'
          ? cards.map((_, c) => [...cards.slice(c), ...cards.slice(0, c)])
          : [cards, cards.toReversed().map(turned)];
      return others.some((other) => plainly(sentence.part, other, rest));
    }
  }
}

function turned({ card, bits }: LaidCard): LaidCard {
  const next = new Set(bits);
  if (!next.delete('up')) next.add('up');
  return { card, bits: next };
}

test('a sentence says what its parts say of the packet cut and turned over in earnest', () => {
  fc.assert(
    fc.property(sentences, packets, (sentence, table) => {
      const cards = table.piles.get('packet') ?? [];
      expect(saysOf(sentence, table)).toBe(plainly(sentence, cards, table));
    }),
    { numRuns: 150 },
  );
});

test('simplifying twice changes nothing more', () => {
  fc.assert(
    fc.property(sentences, packets, (sentence, table) => {
      const { formula } = meant(sentence, table);
      const again = simplify(formula, exitOf(table).cards);
      expect(isAffine(again)).toBe(isAffine(formula));
      expect(holds(again, slotView(laidCards(table)))).toBe(holds(formula, slotView(laidCards(table))));
    }),
    { numRuns: 50 },
  );
});

test('a full pack up to a cut', () => {
  const ranks = 'A 2 3 4 5 6 7 8 9 10 J Q K'.split(' ');
  const names = 'CHSD'.split('').flatMap((suit) => ranks.map((rank) => rank + suit));
  const pack = claimTable(names.join(' '));
  const back = meant(upTo('cut', claimed(`The packet reads ${names.join(' ')}.`, pack)), pack).formula;
  expect(back.is === 'or' && back.parts.length).toBe(52);
});
