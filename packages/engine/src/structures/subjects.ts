import { primeAbove, isPrime } from '../base/echelon.ts';
import type { Card } from '../cards/card.ts';
import { binary, bitMeasure, indicator, numeric, xor } from '../claims/measures.ts';
import type { Measure } from '../claims/formula.ts';
import { printKind } from '../phrases/blanks/kind.ts';
import type { Kind } from '../phrases/values.ts';
import { ENDS_WORDS, FACING_WORDS, joinedWords, nounWords, type Subject } from './subject.ts';

/** What may change about a card besides its place, in some routine. */
export interface Handled {
  readonly up: boolean;
  readonly end: boolean;
  readonly marks: readonly string[];
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
    if (distinct.every((value) => typeof value === 'number'))
      subjects.push(...numberSubjects(attribute, distinct));
  }
  if (handled.up) subjects.push(FACING, upCount(cards));
  if (handled.end) subjects.push(ENDS);
  for (const mark of handled.marks) subjects.push(markSubject(mark, cards));
  return subjects;
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
  };
  const round = new Set(values).size;
  if (!isPrime(round) || round < 3 || most - Math.min(...values) !== round - 1) return [sums];
  return [sums, { ...sums, id: `steps of ${attribute}`, is: 'steps', p: round }];
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
