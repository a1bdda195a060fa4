import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printSetUp, readSetUp, type SetUpReading } from './setup.ts';

/** Items of one list, each at its place in a text that joins them with line ends. */
export function items(...texts: string[]): { text: string; from: number }[] {
  let from = 3;
  return texts.map((text) => {
    const item = { text, from };
    from += text.length + 3;
    return item;
  });
}

const PIECES = [
  '2S',
  '9H^',
  "KD'",
  '4C',
  '10♣',
  'ten of clubs',
  '"lamp"',
  '"Rose"',
  'joker',
  'red joker',
  'A-K of spades',
  'K-J of hearts',
  '2D to 4D',
  '4 red cards',
  '3 black queens',
  'any 8 red',
  '16 cards',
  'a card',
  'an ace',
  'seven odd court cards',
  '4 "lamp"',
  '2 jokers',
  '2 face-up cards',
  '3 face-down red',
  '5 warm cards',
  '2 non-warm cards',
  'full pack',
  'shuffled pack',
  'all spades',
  'the 4 aces',
  'rest of the pack',
  'other hearts',
  'new pack order',
  'full pack in Si Stebbins order from 4H',
  '13 cards in Eight Kings order',
  '10 cards alternately red and black',
  '9 cards alternately red face up and black face down',
  '6 red cards alternately odd and even and court',
  'alternately red and black, 4 cards',
  'clubs hearts spades diamonds repeated, 12 cards',
  'red odd repeated 3 times',
  'red face up black repeated, 7 cards',
  'face up face down face down repeated, 9 cards',
  '"lamp" red repeated, 5 cards',
  'red black alternately, 8 in all',
  'red black black',
  'odd red even black face up',
  '8 cards, each red or black',
  '3 red cards, each an ace or a king',
  '4 cards each odd or even',
  '8 cards and their mates in mirror order',
  '2S 3S and their mates in the same order',
  '3 hearts, each followed by its mate',
  'A-4 of clubs and their mates side by side',
];
const SETTINGS = [
  'face up',
  'face-down',
  'face up or down as they like',
  'alternately face up and face down',
  'every second card face up',
  'in any order',
  'shuffled',
  'turned end for end',
  'all face up',
  'all in any order',
  'these in any order',
  'these alternately face down and face up',
  'from two packs',
];
const JOINTS = [' ', ', ', ' and ', ', then ', ' then ', '; ', ' with ', ', and '];

const line = fc
  .array(
    fc.tuple(
      fc.constantFrom(...JOINTS),
      fc.oneof(
        { weight: 3, arbitrary: fc.constantFrom(...PIECES) },
        { weight: 2, arbitrary: fc.constantFrom(...SETTINGS) },
      ),
    ),
    {
      minLength: 1,
      maxLength: 6,
    },
  )
  .map((parts) => parts.map(([joint, piece], k) => (k === 0 ? piece : joint + piece)).join(''));

const extra = fc.constantFrom(
  [],
  ['warm: hearts, diamonds, "lamp"'],
  ['values: "lamp" 3, courts 10, aces 14'],
  ['season: hearts = spring, "Rose" = summer', 'table: empty'],
  ['left hand: 3 cards, "key"'],
  ['Anna: 7H 8H', 'pile two: 2 aces'],
  ['colour: "lamp" = red, joker = black'],
);

/** What a reading means, its places in the text left out. */
function meaning({ cards, setUp, piles, attributes }: SetUpReading): unknown {
  return { cards, setUp, piles, attributes };
}

function errors(reading: SetUpReading): string[] {
  return reading.diagnostics.filter(({ severity }) => severity === 'error').map(({ code }) => code);
}

describe('read and print', () => {
  test('what is printed reads as the same set-up, and prints the same again', () => {
    let clean = 0;
    fc.assert(
      fc.property(line, extra, (text, more) => {
        const texts = [`packet: ${text}`, ...more, ...(/warm/.test(text) ? ['warm: hearts, diamonds'] : [])];
        const reading = readSetUp(items(...texts));
        const printed = printSetUp(reading);
        const again = readSetUp(items(...printed));
        expect(printSetUp(again)).toEqual(printed);
        expect(errors(again)).toEqual(errors(reading));
        if (errors(reading).length === 0) clean++;
        // oxlint-disable-next-line vitest/no-conditional-expect
        if (errors(reading).length === 0) expect(meaning(again)).toEqual(meaning(reading));
      }),
      { numRuns: 2000 },
    );
    // The pieces are chosen so that the law speaks of something.
    expect(clean).toBeGreaterThan(200);
  });
});
