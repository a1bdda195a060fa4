import { parseRank, rankWord } from '../../cards/names.ts';
import { numberIn, type Token } from '../tokens.ts';
import type { KindTest, Names } from '../values.ts';
import {
  attributeTest,
  bitTest,
  denied,
  inOrder,
  printCard,
  readAdjective,
  readCard,
  readEither,
  readNounPhrase,
  readRankNumber,
  wordAt,
  type TestsReading,
} from './card-words.ts';

// More than anybody says in one breath; keeps hostile text from costing time.
const MOST_JOINED = 4;

/** `of season spring`, `of value 7 or 8`: an attribute called by name. */
function readOf(tokens: readonly Token[], at: number, names: Names): TestsReading | null {
  if (wordAt(tokens, at) !== 'of') return null;
  const attribute = wordAt(tokens, at + 1);
  const own = Object.hasOwn(names.attributes, attribute) ? names.attributes[attribute] : undefined;
  if (attribute !== 'value' && own === undefined) return null;
  return readEither(tokens, at + 2, (from) => {
    const number = numberIn(tokens[from]);
    const isNumber = number !== undefined && (own === undefined || own.includes(number));
    const word = own?.find((value) => value === wordAt(tokens, from));
    const value = isNumber ? number : word;
    return value === undefined ? null : { tests: [attributeTest(attribute, value)], next: from + 1 };
  });
}

function readTurned(tokens: readonly Token[], at: number): TestsReading | null {
  const said = ['turned', 'end', 'for', 'end'].every((word, i) => wordAt(tokens, at + i) === word);
  return said ? { tests: [bitTest('end')], next: at + 4 } : null;
}

function readOne(tokens: readonly Token[], at: number, names: Names): TestsReading[] {
  const isDenied = wordAt(tokens, at) === 'not';
  const from = isDenied ? at + 1 : at;
  const found = [
    readNounPhrase(tokens, from, names),
    readCard(tokens, from, names),
    readOf(tokens, from, names),
    readTurned(tokens, from),
    readEither(tokens, from, (i) => readAdjective(tokens, i, names)),
    readRankNumber(tokens, from),
  ].filter((reading) => reading !== null);
  if (!isDenied) return found.filter(({ tests }) => tests.length > 0);
  return found
    .filter(({ tests }) => tests.length === 1)
    .map((reading) => ({ ...reading, tests: reading.tests.map(denied) }));
}

/** What is said of cards: `face up`, `not red`, `a heart`, `face up and red`; longest first. */
export function readPredicate(
  tokens: readonly Token[],
  at: number,
  names: Names,
  most = MOST_JOINED,
): TestsReading[] {
  const readings = readOne(tokens, at, names).flatMap((first) => {
    const more =
      most > 1 && wordAt(tokens, first.next) === 'and'
        ? readPredicate(tokens, first.next + 1, names, most - 1)
        : [];
    const joined = more.map((second): TestsReading => ({
      ...first,
      ...second,
      tests: inOrder([...first.tests, ...second.tests]),
    }));
    return [...joined, first];
  });
  return readings.sort((a, b) => b.next - a.next);
}

export type Number = 'one' | 'many';

function rankNoun(rank: string | number, number: Number): string {
  const parsed = parseRank(String(rank));
  // Every rank a test can hold was read from a word of the trade.
  const word = parsed === null ? String(rank) : rankWord(parsed);
  if (number === 'one') return word;
  return word === 'six' ? 'sixes' : `${word}s`;
}

/** The noun of a test that has one: `heart`, `aces`, `court cards`. */
export function nounOf(test: KindTest, number: Number): string | null {
  if (test.test !== 'attribute') return null;
  const or = (words: readonly string[]): string => words.join(' or ');
  switch (test.attribute) {
    case 'suit':
      return or(test.values.map((suit) => (number === 'many' ? String(suit) : String(suit).slice(0, -1))));
    case 'rank':
      return or(test.values.map((rank) => rankNoun(rank, number)));
    case 'court':
      return or(test.values.map((value) => `${value} ${number === 'many' ? 'cards' : 'card'}`));
    default:
      return null;
  }
}

/** The adjective of a test that has one: `face-up`, `red`, `chosen`; null for several values. */
export function adjectiveOf(test: KindTest): string | null {
  if (test.test === 'bit') return test.bit === 'end' ? null : test.bit;
  if (test.test === 'card') return null;
  if (test.attribute === 'colour' || test.attribute === 'parity') return test.values.join(' or ');
  return test.values.length === 1 && test.values[0] === 'yes' ? test.attribute : null;
}

function printTest(test: KindTest, number: Number): string {
  if (test.test === 'bit' && test.bit === 'up') return test.not === true ? 'face down' : 'face up';
  const not = test.not === true ? 'not ' : '';
  if (test.test === 'card') return `${not}the ${printCard(test.name)}`;
  const noun = nounOf(test, number);
  if (noun !== null) {
    const words =
      number === 'many'
        ? noun
        : noun.replace(
            /(^|or )(?=([aeiou])?)/g,
            (start, _or, vowel) => `${start}a${vowel === undefined ? '' : 'n'} `,
          );
    return not + words;
  }
  const adjective = adjectiveOf(test);
  if (adjective !== null) return not + adjective;
  if (test.test === 'bit') return `${not}turned end for end`;
  return `${not}of ${test.attribute} ${test.values.join(' or ')}`;
}

/** The same in words, after `is` or `are`. */
export function printPredicate(tests: readonly KindTest[], number: Number): string {
  return tests.map((test) => printTest(test, number)).join(' and ');
}
