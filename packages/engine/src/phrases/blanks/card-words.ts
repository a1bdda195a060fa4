import { trouble, type Trouble } from '../../base/diagnostic.ts';
import { parseCardName, parseRank, parseSuit, printCardName, RANKS, sameCard } from '../../cards/names.ts';
import type { Token } from '../tokens.ts';
import type { KindTest, Names } from '../values.ts';

/** Tests found from a token on; a list without tests means any card. */
export interface TestsReading {
  readonly tests: readonly KindTest[];
  /** Index of the first token after them. */
  readonly next: number;
  readonly trouble?: Trouble;
}

export function attributeTest(attribute: string, ...values: (string | number)[]): KindTest {
  return { test: 'attribute', attribute, values };
}

export function bitTest(bit: string): KindTest {
  return { test: 'bit', bit };
}

/** The same test denied, or no longer denied. */
export function denied(test: KindTest): KindTest {
  const { not, ...plain } = test;
  return not === true ? plain : { ...plain, not: true };
}

// In this order a noun phrase says them; what is no noun comes before the noun.
const ORDER = ['own', 'value', 'parity', 'colour', 'court', 'suit', 'rank'];

function orderOf(test: KindTest): string {
  if (test.test === 'card') return '9';
  if (test.test === 'bit') return test.bit === 'up' ? '0' : test.bit === 'end' ? '1' : `2 ${test.bit}`;
  const place = ORDER.indexOf(test.attribute);
  return place > 0 ? `4 ${place}` : `3 ${test.attribute}`;
}

/** The tests in their usual order, none twice. */
export function inOrder(tests: readonly KindTest[]): KindTest[] {
  const once = new Map(tests.map((test) => [JSON.stringify(test), test] as const));
  return [...once.values()].sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : orderOf(a) > orderOf(b) ? 1 : 0));
}

export function wordAt(tokens: readonly Token[], at: number): string {
  const token = tokens[at];
  return token === undefined || token.quoted ? '' : token.text;
}

/** How many tokens a name of one or several words takes here; 0 when it does not stand here. */
export function nameLength(tokens: readonly Token[], at: number, name: string): number {
  const words = name.toLowerCase().split(' ');
  return words.every((word, i) => wordAt(tokens, at + i) === word) ? words.length : 0;
}

/** An attribute of one's own that a card has or has not, such as `warm`. */
export function isYesNo(values: readonly (string | number)[]): boolean {
  return values.every((value) => value === 'yes' || value === 'no');
}

/** `face up`, `red`, `odd`, `chosen`, `warm`: a word that goes before `cards` and after `are`. */
export function readAdjective(tokens: readonly Token[], at: number, names: Names): TestsReading | null {
  const word = wordAt(tokens, at);
  const found = (test: KindTest, length = 1): TestsReading => ({ tests: [test], next: at + length });
  if (word === 'face') {
    if (wordAt(tokens, at + 1) === 'up') return found(bitTest('up'), 2);
    return wordAt(tokens, at + 1) === 'down' ? found(denied(bitTest('up')), 2) : null;
  }
  if (word === 'red' || word === 'black') return found(attributeTest('colour', word));
  if (word === 'odd' || word === 'even') return found(attributeTest('parity', word));
  for (const mark of names.marks) {
    const length = nameLength(tokens, at, mark);
    if (length > 0) return found(bitTest(mark), length);
  }
  for (const [name, values] of Object.entries(names.attributes)) {
    const length = isYesNo(values) ? nameLength(tokens, at, name) : 0;
    if (length > 0) return found(attributeTest(name, 'yes'), length);
  }
  const owners = Object.entries(names.attributes).filter(
    ([, values]) => !isYesNo(values) && values.some((value) => typeof value === 'string' && value === word),
  );
  return owners.length === 1 ? found(attributeTest(owners[0][0], word)) : null;
}

const RANK_NOUNS: ReadonlyMap<string, string> = new Map(
  'ace two deuce three four five six seven eight nine ten jack knave queen king'
    .split(' ')
    .flatMap((word): [string, string][] => {
      const rank = parseRank(word) as string;
      return [
        [word, rank],
        [`${word}s`, rank],
        [`${word}es`, rank],
      ];
    }),
);
const SUIT_NOUN = /^(club|heart|spade|diamond)s?$/;

function readOneNoun(tokens: readonly Token[], at: number, names: Names): TestsReading | null {
  const word = wordAt(tokens, at);
  const follows = wordAt(tokens, at + 1);
  const counted = follows === 'card' || follows === 'cards' ? 1 : 0;
  const found = (test: KindTest, next = at + 1): TestsReading => ({ tests: [test], next });
  if (word === 'card' || word === 'cards') return { tests: [], next: at + 1 };
  if (/^(court|picture)s?$/.test(word)) return found(attributeTest('court', 'court'), at + 1 + counted);
  if (word === 'spot' && counted === 1) return found(attributeTest('court', 'spot'), at + 2);
  if (SUIT_NOUN.test(word)) return found(attributeTest('suit', parseSuit(word) as string));
  const rank = RANK_NOUNS.get(word);
  const isSuited = follows === 'of' && parseSuit(wordAt(tokens, at + 2)) !== null;
  if (rank !== undefined && !isSuited) return found(attributeTest('rank', rank));
  if (word === 'jokers' && names.cards.includes('joker')) return found({ test: 'card', name: 'joker' });
  return null;
}

/** `cards`, `hearts`, `aces`, `aces or kings`, `court cards`. */
export function readNoun(tokens: readonly Token[], at: number, names: Names): TestsReading | null {
  return readEither(tokens, at, (from) => readOneNoun(tokens, from, names));
}

/** The same kind of word several times with `or` between: one test with several values. */
export function readEither(
  tokens: readonly Token[],
  at: number,
  one: (at: number) => TestsReading | null,
): TestsReading | null {
  let found = one(at);
  while (found !== null && wordAt(tokens, found.next) === 'or') {
    const more = one(found.next + 1);
    const [a] = found.tests;
    const [b] = more?.tests ?? [];
    if (more === null || a?.test !== 'attribute' || b?.test !== 'attribute' || a.attribute !== b.attribute)
      break;
    found = { tests: [attributeTest(a.attribute, ...a.values, ...b.values)], next: more.next };
  }
  return found;
}

/** Adjectives and a noun: `face-up red hearts`, `chosen card`. */
export function readNounPhrase(tokens: readonly Token[], at: number, names: Names): TestsReading | null {
  const tests: KindTest[] = [];
  let next = at;
  for (;;) {
    // A noun first: `court` and ranks are never adjectives.
    const noun = readNoun(tokens, next, names);
    if (noun !== null) return { tests: inOrder([...tests, ...noun.tests]), next: noun.next };
    const adjective = readAdjective(tokens, next, names);
    if (adjective === null) return null;
    tests.push(...adjective.tests);
    next = adjective.next;
  }
}

/** One card by its name: `10C`, `10♣`, `ten of clubs`, `"lamp"`, `joker`; with a trouble when the set-up has no such card. */
export function readCard(tokens: readonly Token[], at: number, names: Names): TestsReading | null {
  const token = tokens[at];
  if (token === undefined) return null;
  const found = (name: string, next: number): TestsReading => ({ tests: [{ test: 'card', name }], next });
  const unknown = (name: string, next: number): TestsReading => ({
    ...found(name, next),
    trouble: trouble('unknown-card', { card: name }),
  });
  if (token.quoted) {
    const name = names.cards.find((known) => known.toLowerCase() === token.text);
    return name === undefined ? unknown(token.text, at + 1) : found(name, at + 1);
  }
  const joker = names.cards.find((known) => /joker$/i.test(known) && nameLength(tokens, at, known) > 0);
  if (joker !== undefined) return found(joker, at + nameLength(tokens, at, joker));
  for (const length of [3, 2, 1]) {
    const parts = tokens.slice(at, at + length);
    const isOne = length === 2 && (parts[1]?.from === token.to || /^[♠♥♦♣♤♡♢♧]$/u.test(parts[1]?.text ?? ''));
    const joined = isOne ? parts.map((t) => t.text).join('') : '';
    const text = length === 2 ? joined : parts.map((t) => t.text).join(' ');
    const card = parts.length < length || parts.some((t) => t.quoted) ? null : parseCardName(text);
    if (card === null) continue;
    const name = names.cards.find((known) => {
      const other = parseCardName(known);
      return other !== null && sameCard(card, other);
    });
    return name === undefined ? unknown(printCardName(card), at + length) : found(name, at + length);
  }
  return null;
}

/** A card's name as a note writes it. */
export function printCard(name: string): string {
  return parseCardName(name) !== null || name.endsWith('joker') ? name : `"${name}"`;
}

/** A rank of digits, `a 7`, which only a predicate can mean. */
export function readRankNumber(tokens: readonly Token[], at: number): TestsReading | null {
  const rank = RANKS.find((known) => /\d/.test(known) && known === wordAt(tokens, at));
  return rank === undefined ? null : { tests: [attributeTest('rank', rank)], next: at + 1 };
}
