import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_PILES } from './limits.ts';
import { printSetUp, readSetUp, type SetUpReading } from './setup.ts';
import { writeSetUp } from './setup-write.ts';

/** Items of one list, each at its place in a text that joins them with line ends. */
function items(...texts: string[]): { text: string; from: number }[] {
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
  'A-4 of hearts torn in half and stacked',
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
        const isClean = errors(reading).length === 0;
        if (isClean) clean++;
        expect(printSetUp(again)).toEqual(printed);
        expect(errors(again)).toEqual(errors(reading));
        expect(isClean ? meaning(again) : null).toEqual(isClean ? meaning(reading) : null);
      }),
      { numRuns: 400 },
    );
    // The pieces are chosen so that the law speaks of something.
    expect(clean).toBeGreaterThan(40);
  });

  test('a set-up written out card by card reads as the same piles with the same freedoms', () => {
    let clean = 0;
    fc.assert(
      fc.property(line, line, (packet, left) => {
        fc.pre(!/warm/.test(packet + left));
        const reading = readSetUp(items(`packet: ${packet}`, `left: ${left}`));
        fc.pre(errors(reading).length === 0);
        const written = writeSetUp(reading.cards, reading.setUp);
        fc.pre(written !== null);
        clean++;
        const again = readSetUp(items(...written));
        expect(errors(again)).toEqual([]);
        expect(again.cards).toEqual(reading.cards);
        expect(again.setUp.piles).toEqual(reading.setUp.piles);
        expect(byPlace(again.setUp.freedoms)).toEqual(byPlace(reading.setUp.freedoms));
      }),
      { numRuns: 80 },
    );
    expect(clean).toBeGreaterThan(60);
  });
});

/** Freedoms one card or place at a time, since one freedom over three cards is three freedoms over one; order is not. */
function byPlace(freedoms: SetUpReading['setUp']['freedoms']): string[] {
  return freedoms
    .flatMap((freedom): unknown[] => {
      if (freedom.free === 'attribute') return freedom.cards.map((card) => ({ ...freedom, cards: [card] }));
      if (freedom.free === 'order') return [freedom];
      return Array.from({ length: freedom.count }, (_, k) => ({
        ...freedom,
        from: freedom.from + k,
        count: 1,
      }));
    })
    .map((one) => JSON.stringify(one))
    .sort();
}

describe('hostile text', () => {
  const words = fc.constantFrom(
    ...[...PIECES, ...SETTINGS, ...JOINTS].flatMap((piece) => piece.split(/(?= )|(?<= )/)),
  );
  const soup = fc.array(
    fc.oneof({ weight: 5, arbitrary: words }, fc.string({ unit: 'binary', maxLength: 4 })),
    { maxLength: 30 },
  );
  const hostile = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc
      .tuple(fc.constantFrom('packet:', 'warm:', 'values:', 'Anna:', ''), soup)
      .map(([name, parts]) => name + parts.join('')),
  );

  test('never throws; every range lies in the text; printing is settled after once', () => {
    fc.assert(
      fc.property(fc.array(hostile, { maxLength: 4 }), (texts) => {
        const lines = items(...texts);
        const end = lines.at(-1);
        const most = end === undefined ? 0 : end.from + end.text.length;
        const reading = readSetUp(lines);
        for (const { range, fixes } of reading.diagnostics)
          for (const { from, to } of [range, ...fixes.map((fix) => fix.range)]) {
            expect(from).toBeGreaterThanOrEqual(0);
            expect(to).toBeGreaterThanOrEqual(from);
            expect(to).toBeLessThanOrEqual(most);
          }
        const printed = printSetUp(reading);
        expect(printSetUp(readSetUp(items(...printed)))).toEqual(printed);
      }),
      { numRuns: 300 },
    );
  });

  const long = (unit: string, length = 9_990): string =>
    unit.repeat(Math.ceil(length / unit.length)).slice(0, length);

  // Each takes some milliseconds; a reader that tried everything from every place would take minutes.
  test.each([
    '2S ',
    '9X ',
    '"',
    '“',
    '" ',
    ',',
    'red ',
    'red, ',
    'red and ',
    'alternately ',
    'alternately red, ',
    'A-',
    'a ',
    'ten of ',
    'face up ',
    '2S face up, ',
    '4 red cards in any order, then ',
    'each red or ',
    "'^",
    'twenty-',
    'hearts = ',
    'all ',
    'then ',
    '999999 cards, ',
    'full pack and ',
    '\u{1F0A1}',
    'e\u0301',
  ])(
    'a long line of %j',
    (unit) => {
      for (const name of ['packet: ', 'warm: ', 'values: '])
        expect(readSetUp(items(name + long(unit))).cards.length).toBeLessThanOrEqual(208);
    },
    5_000,
  );

  test('a line too long is not read at all', () => {
    const { diagnostics } = readSetUp(items(`packet: ${long('2S ', 1_000_000)}`));
    expect(diagnostics.map(({ code }) => code)).toEqual(['set-up-line-long']);
  });

  test('very many lines', () => {
    const texts = Array.from({ length: 20_000 }, (_, k) => `word${k}: 3 redd cards, hartes ${k}`);
    const reading = readSetUp(items(...texts));
    expect(reading.piles.length).toBeLessThanOrEqual(MOST_PILES);
    expect(reading.lines).toHaveLength(20_000);
  }, 20_000);
});
