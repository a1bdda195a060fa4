import { defineBlank, type Blank, type BlankReading } from '../blank.ts';
import type { Token } from '../tokens.ts';
import type { Kind, KindTest, Names } from '../values.ts';
import { adjectiveOf, nounOf, printPredicate, readPredicate, type Number } from './predicate.ts';
import {
  attributeTest,
  bitTest,
  denied,
  inOrder,
  printCard,
  readCard,
  readNounPhrase,
  wordAt,
  type TestsReading,
} from './card-words.ts';

export function asBlankReading({ tests, ...rest }: TestsReading): BlankReading<Kind> {
  return { ...rest, value: { tests } };
}

/** `cards`, `face-up red cards`, `hearts that are not chosen`, `the 10C`; longest first. */
export function readKind(tokens: readonly Token[], at: number, names: Names): BlankReading<Kind>[] {
  const readings: TestsReading[] = [];
  const noun = readNounPhrase(tokens, at, names);
  if (noun !== null) {
    const word = wordAt(tokens, noun.next);
    const verb = wordAt(tokens, noun.next + 1);
    const said =
      word === 'of'
        ? noun.next
        : (word === 'that' || word === 'which') && (verb === 'are' || verb === 'is')
          ? noun.next + 2
          : -1;
    if (said >= 0)
      for (const clause of readPredicate(tokens, said, names))
        readings.push({ ...clause, tests: inOrder([...noun.tests, ...clause.tests]) });
    readings.push(noun);
  }
  const card = readCard(tokens, at, names);
  if (card !== null) readings.push(card);
  return readings.map(asBlankReading);
}

const NOUNS = ['rank', 'suit', 'court'];

/** A noun phrase without its article. */
export function printKind({ tests }: Kind, number: Number): string {
  const [first] = tests;
  if (tests.length === 1 && first.test === 'card' && first.not !== true)
    return `${number === 'many' ? 'the ' : ''}${printCard(first.name)}`;
  const isNoun = (test: KindTest, attribute: string): boolean =>
    test.test === 'attribute' && test.attribute === attribute && test.not !== true;
  const named = NOUNS.flatMap((attribute) => tests.find((test) => isNoun(test, attribute)) ?? [])[0];
  const before: string[] = [];
  const after: KindTest[] = [];
  for (const test of tests) {
    const adjective = adjectiveOf(test);
    const isUp = test.test === 'bit' && test.bit === 'up';
    const isSeveral = test.test === 'attribute' && test.values.length > 1;
    if (test === named) continue;
    if (isUp) before.push(test.not === true ? 'face-down' : 'face-up');
    else if (adjective !== null && test.not !== true && !isSeveral) before.push(adjective);
    else after.push(test);
  }
  const noun = named === undefined ? null : nounOf(named, number);
  const words = [...before, noun ?? (number === 'many' ? 'cards' : 'card')].join(' ');
  if (after.length === 0) return words;
  return `${words} that ${number === 'many' ? 'are' : 'is'} ${printPredicate(after, number)}`;
}

export const CLASS_SAMPLES: readonly Kind[] = [
  { tests: [attributeTest('colour', 'red')] },
  { tests: [bitTest('up')] },
  { tests: [denied(bitTest('up')), attributeTest('colour', 'red')] },
  { tests: [attributeTest('suit', 'hearts')] },
  { tests: [attributeTest('rank', 'A')] },
  { tests: [attributeTest('rank', 'A', 'K')] },
  { tests: [attributeTest('rank', '6')] },
  { tests: [attributeTest('court', 'court')] },
  { tests: [attributeTest('court', 'spot')] },
  { tests: [attributeTest('parity', 'odd')] },
  { tests: [attributeTest('warm', 'yes')] },
  { tests: [denied(attributeTest('warm', 'yes'))] },
  { tests: [attributeTest('season', 'spring')] },
  { tests: [attributeTest('value', 7)] },
  { tests: [bitTest('chosen')] },
  { tests: [bitTest('end')] },
  { tests: [bitTest('up'), attributeTest('colour', 'black'), attributeTest('rank', '7')] },
  { tests: [denied(bitTest('chosen')), attributeTest('suit', 'spades')] },
  { tests: [{ test: 'card', name: '10C' }] },
  { tests: [{ test: 'card', name: 'lamp' }] },
];
export const KIND_SAMPLES: readonly Kind[] = [{ tests: [] }, ...CLASS_SAMPLES];

function kindBlank(type: string, what: string, number: Number, least: 0 | 1): Blank {
  return defineBlank<Kind>({
    type,
    what,
    read: (tokens, at, names) =>
      readKind(tokens, at, names).filter(({ value }) => value.tests.length >= least),
    print: (kind) => printKind(kind, number),
    samples: least === 0 ? KIND_SAMPLES : CLASS_SAMPLES,
  });
}

const EXAMPLES = '"red cards", "face-down hearts", "aces", "cards that are not chosen", "the 10C"';

/** Several cards: `red cards`, `the 10C`. */
export const kind = kindBlank('kind', `which cards: "cards", ${EXAMPLES}`, 'many', 0);

/** The same in the singular, without an article: `red card`, `10C`. */
export const oneKind = kindBlank(
  'onekind',
  'which card: "card", "red card", "chosen card", "ace", "10C"',
  'one',
  0,
);

/** As `onekind`, but not any card. */
export const oneOfClass = kindBlank(
  'oneclass',
  'which card: "red card", "chosen card", "ace", "10C"',
  'one',
  1,
);

/** As `kind`, but not every card. */
export const someCards = kindBlank('class', `which cards: ${EXAMPLES}`, 'many', 1);

/** Several cards with their article: `the red cards`, `the 10C`. */
export const those = defineBlank<Kind>({
  type: 'those',
  what: `which cards: "the cards", ${EXAMPLES}`,
  read: readKind,
  print: (value) => `the ${printKind(value, 'many')}`.replace('the the ', 'the '),
  samples: KIND_SAMPLES,
});
