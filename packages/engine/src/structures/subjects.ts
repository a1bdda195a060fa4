import { primeAbove, isPrime } from '../base/echelon.ts';
import type { Card } from '../cards/card.ts';
import { shortName } from '../cards/show.ts';
import { among, binary, bitMeasure, indicator, isCardNumber, numeric, xor } from '../claims/measures.ts';
import type { Measure } from '../claims/formula.ts';
import { printKind } from '../phrases/blanks/kind.ts';
import type { Kind } from '../phrases/values.ts';
import { ENDS_WORDS, FACING_WORDS, joinedWords, nounWords, type Subject } from './subject.ts';

/** What may change about a card besides its place, in some routine. */
export interface Handled {
  readonly up: boolean;
  readonly end: boolean;
  readonly marks: readonly string[];
  /** Cards that sentences call by name. */
  readonly named: readonly string[];
  /** The card that alone points its own way at the start. */
  readonly oddEnd: Card | null;
  /** Whether there are ever two piles. */
  readonly parts: boolean;
}

/** In what order attributes are looked at; those of one's own come first, since they were declared for a reason. */
const USUAL = ['colour', 'suit', 'value', 'parity', 'court', 'rank'];
const PLURALS: Readonly<Record<string, string>> = { parity: 'parities' };

/** Everything whose structures are looked for in a routine with these cards. */
export function subjectsFor(cards: readonly Card[], handled: Handled): Subject[] {
  const names = [...new Set(cards.flatMap((card) => Object.keys(card.attributes)))];
  const own = names.filter((name) => !USUAL.includes(name));
  const attributes = [...own, ...USUAL.filter((name) => names.includes(name))];
  const subjects: Subject[] = [];
  const partitions = new Set<string>();
  for (const attribute of attributes) {
    const values = cards.map((card) => card.attributes[attribute]);
    const distinct = [...new Set(values)];
    // Whoever lacks it cannot be alike or not in it.
    if (distinct.length < 2 || values.some((value) => value === undefined)) continue;
    // The same classes under another name, as rank and value are.
    const partition = values.map((value) => distinct.indexOf(value)).join();
    if (!partitions.has(partition)) {
      partitions.add(partition);
      subjects.push(classSubject(attribute, distinct as (string | number)[], cards));
      if (handled.up && distinct.length === 2) subjects.push(joinedSubject(attribute, cards));
      if (handled.up) subjects.push(...countSubjects(attribute, distinct as (string | number)[], cards));
      if (handled.parts && distinct.length === 2)
        subjects.push(partSubject(attribute, distinct[0] as string | number, cards));
    }
    if (distinct.every((value) => typeof value === 'number')) {
      subjects.push(...numberSubjects(attribute, distinct));
      if (handled.up) subjects.push(...upTotal(attribute, values as number[]));
    }
  }
  if (handled.up) subjects.push(FACING, upCount(cards));
  if (handled.end) subjects.push(ENDS);
  for (const mark of handled.marks) subjects.push(markSubject(mark, cards));
  const followed = singlesOf(cards, handled, own);
  for (const one of followed) if (one.mark === null) subjects.push(cardSubject(one));
  followed.forEach((one, i) => followed.slice(i + 1).forEach((other) => subjects.push(twoCards(one, other))));
  if (handled.end) {
    const { oddEnd } = handled;
    const odd =
      oddEnd === null
        ? []
        : [{ words: `the ${shortName(oddEnd)}`, mark: null, measure: isCardNumber(oddEnd.id) }];
    for (const one of [...odd, ...followed]) subjects.push(oneOff(one));
  }
  return subjects;
}

/** One card that is followed: by a mark, by name, or because it alone is of its kind, in an attribute of the note's own. */
interface Single {
  readonly words: string;
  /** The mark it bears; null where it is known otherwise. */
  readonly mark: string | null;
  readonly measure: Measure;
}

// More cards than that nobody keeps apart.
const MOST_SINGLES = 4;

function singlesOf(
  cards: readonly Card[],
  { marks, named }: Handled,
  own: readonly string[],
): readonly Single[] {
  const found = new Map<string, Single>();
  const add = (words: string, kind: Kind, mark: string | null = null): void => {
    const measure = indicator(kind);
    if (!found.has(measure.id)) found.set(measure.id, { words, mark, measure });
  };
  for (const mark of marks) add(`the ${mark} card`, { tests: [{ test: 'bit', bit: mark }] }, mark);
  for (const name of named)
    if (cards.filter((card) => card.name === name).length === 1)
      add(`the ${name}`, { tests: [{ test: 'card', name }] });
  for (const attribute of own) {
    const values = cards.map((card) => card.attributes[attribute]);
    const distinct = [...new Set(values)];
    if (distinct.length > MOST_COUNTED) continue;
    for (const value of distinct)
      if (value !== undefined && values.filter((other) => other === value).length === 1) {
        const kind: Kind = { tests: [{ test: 'attribute', attribute, values: [value] }] };
        add(`the ${printKind(kind, 'one')}`, kind);
      }
  }
  return [...found.values()].slice(0, MOST_SINGLES);
}

/** Where one card lies. */
function cardSubject({ words, measure }: Single): Subject {
  const noun = words.replace(/^the /, '');
  return {
    id: `card ${noun}`,
    is: 'count',
    words: nounWords(noun),
    measures: [measure],
    p: 2,
    joinsFacing: false,
    single: true,
  };
}

function twoCards(one: Single, other: Single): Subject {
  return {
    id: `${one.words} and ${other.words}`,
    is: 'two cards',
    words: { ...nounWords(`${one.words} and ${other.words}`), alike: one.words, opposite: other.words },
    measures: [one.measure, other.measure],
    p: 2,
    joinsFacing: false,
  };
}

function oneOff({ words, measure }: Single): Subject {
  return {
    id: `ends but for ${words}`,
    is: 'one off',
    words: { ...nounWords(words), alike: words },
    measures: [xor(bitMeasure('end'), measure)],
    p: 2,
    joinsFacing: false,
  };
}

function classSubject(
  attribute: string,
  values: readonly (string | number)[],
  cards: readonly Card[],
): Subject {
  return {
    id: attribute,
    is: 'class',
    words: nounWords(attribute, PLURALS[attribute]),
    measures:
      values.length === 2
        ? [binary(attribute, cards)]
        : values.map((value) => indicator({ tests: [{ test: 'attribute', attribute, values: [value] }] })),
    p: 2,
    joinsFacing: false,
    ...(values.length === 2
      ? { ones: printKind({ tests: [{ test: 'attribute', attribute, values: [values[1]] }] }, 'many') }
      : {}),
  };
}

function joinedSubject(attribute: string, cards: readonly Card[]): Subject {
  return {
    id: `${attribute} with facing`,
    is: 'class',
    words: joinedWords(attribute),
    measures: [xor(bitMeasure('up'), binary(attribute, cards))],
    p: 2,
    joinsFacing: true,
  };
}

/** Numbers for sums, in a field that no sum of two leaves, and for steps where counting round makes a field. */
function numberSubjects(attribute: string, values: readonly number[]): Subject[] {
  if (values.some((value) => !Number.isInteger(value) || value < 0)) return [];
  const most = Math.max(...values);
  const words = nounWords(attribute);
  const sums: Subject = {
    id: `sums of ${attribute}`,
    is: 'number',
    words,
    measures: [numeric(attribute)],
    p: primeAbove(2 * most),
    joinsFacing: false,
    bounds: [Math.min(...values), most],
  };
  const round = new Set(values).size;
  if (!isPrime(round) || round < 3 || most - Math.min(...values) !== round - 1) return [sums];
  return [sums, { ...sums, id: `steps of ${attribute}`, is: 'steps', p: round }];
}

/** What the face-up cards come to. */
function upTotal(attribute: string, values: readonly number[]): Subject[] {
  if (values.some((value) => !Number.isInteger(value) || value < 0)) return [];
  const kind: Kind = { tests: [{ test: 'bit', bit: 'up' }] };
  return [
    {
      id: `total ${attribute} up`,
      is: 'total',
      words: { ...nounWords(attribute), plural: `the face-up cards` },
      measures: [among(kind, numeric(attribute))],
      p: primeAbove(values.reduce((sum, value) => sum + value, 0)),
      joinsFacing: false,
    },
  ];
}

const FACING: Subject = {
  id: 'facing',
  is: 'class',
  words: FACING_WORDS,
  measures: [bitMeasure('up')],
  p: 2,
  joinsFacing: false,
};

const ENDS: Subject = { ...FACING, id: 'end', words: ENDS_WORDS, measures: [bitMeasure('end')] };

function count(id: string, kind: Kind, measure: Measure, cards: readonly Card[]): Subject {
  const [one, many] = [printKind(kind, 'one'), printKind(kind, 'many')];
  return {
    id,
    is: 'count',
    words: { ...nounWords(one, many), plural: many },
    measures: [measure],
    // Counts differ by no more than twice the number of cards.
    p: primeAbove(2 * new Set(cards.map((card) => card.id)).size),
    joinsFacing: false,
  };
}

function upCount(cards: readonly Card[]): Subject {
  const kind: Kind = { tests: [{ test: 'bit', bit: 'up' }] };
  return count('count up', kind, bitMeasure('up'), cards);
}

/** How many cards of a class lie face up; only for classes of two or with few values. */
function countSubjects(
  attribute: string,
  values: readonly (string | number)[],
  cards: readonly Card[],
): Subject[] {
  if (values.length > MOST_COUNTED) return [];
  return values.map((value) => {
    const kind: Kind = {
      tests: [
        { test: 'bit', bit: 'up' },
        { test: 'attribute', attribute, values: [value] },
      ],
    };
    return count(`count ${attribute} ${value}`, kind, indicator(kind), cards);
  });
}

/** How many cards of a class lie here, whichever way up. */
function partSubject(attribute: string, value: string | number, cards: readonly Card[]): Subject {
  const kind: Kind = { tests: [{ test: 'attribute', attribute, values: [value] }] };
  return count(`class ${attribute}`, kind, indicator(kind), cards);
}

// More classes than this and nobody counts them one by one.
const MOST_COUNTED = 4;

function markSubject(mark: string, cards: readonly Card[]): Subject {
  const kind: Kind = { tests: [{ test: 'bit', bit: mark }] };
  return count(`mark ${mark}`, kind, bitMeasure(mark), cards);
}
