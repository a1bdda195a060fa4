import type { Card } from '../cards/card.ts';
import type { Problem } from '../proving/problem.ts';
import type { Space } from '../proving/space.ts';
import type { Graph } from '../routine/graph.ts';
import { denied, type Reading } from './slot-vectors.ts';
import type { Subject } from './subject.ts';

/** What measures of a sentence's equations are about, and how they are read off the columns: one reading, two for two cards. */
export interface Matched {
  readonly subject: Subject;
  readonly readings: readonly Reading[];
  /** Members that measure the cards a value of the class does not have; absent where none does. */
  readonly turned?: readonly boolean[];
}

/** A function as its values on every card in every setting of the bits `up` and `end` and of marks that it looks at. */
type Values = readonly number[];

function valuesOf(
  cards: readonly Card[],
  bits: readonly string[],
  of: (card: Card, bit: (name: string) => number) => number,
): Values {
  return cards.flatMap((card) =>
    Array.from({ length: 1 << bits.length }, (_, s) => of(card, (name) => (s >> bits.indexOf(name)) & 1)),
  );
}

function readingsOf(space: Space, graph: Graph, cards: readonly Card[], bits: readonly string[]): Values[] {
  return space.measures.map(({ columns, constant }) =>
    valuesOf(cards, bits, (card, bit) => {
      const word = space.bits.reduce((w, name) => w | (bit(name) << graph.bits.indexOf(name)), 0);
      const values = space.valuesOf(card, word);
      return columns.reduce((sum, c, k) => sum + c * values[k], constant) % space.p;
    }),
  );
}

const known = new WeakMap<
  Problem,
  { readonly subjects: readonly Subject[]; readonly found: readonly Matched[] }
>();

/**
 * The subjects that a problem's measures are about, as far as they are among those given. Classes are the same when they sort the
 * cards alike, whatever the values are called. Every moment of a routine asks the same.
 */
export function matched(
  problem: Problem,
  graph: Graph,
  cards: readonly Card[],
  subjects: readonly Subject[],
): readonly Matched[] {
  const before = known.get(problem);
  if (before?.subjects === subjects) return before.found;
  const found = match(problem, graph, cards, subjects);
  known.set(problem, { subjects, found });
  return found;
}

function match(
  problem: Problem,
  graph: Graph,
  cards: readonly Card[],
  subjects: readonly Subject[],
): Matched[] {
  const bits = [...new Set(problem.members.flatMap(({ space }) => space.bits))];
  const members = problem.members.map(({ space }) => readingsOf(space, graph, cards, bits));
  const found: Matched[] = [];
  problem.space.measures.forEach((reading, i) => {
    const own = members.map((readings) => readings[i]);
    // A number may be added up and counted round; of classes one name is enough.
    const told = new Set<string>();
    for (const one of subjects) {
      const same = sameSubject(one, own, problem.p, cards, bits);
      if (same !== null && !told.has(one.is))
        found.push({ subject: same, readings: [reading], ...turnedIn(same, own, cards, bits) });
      else if (same === null && isOfOthers(one, own, problem.p, cards, bits) && !told.has(one.is))
        found.push({ subject: { ...one, p: problem.p }, readings: [denied(reading, problem.p)] });
      else continue;
      told.add(one.is);
    }
  });
  return [...found, ...twoCards(members, problem, cards, subjects, bits)];
}

/** Which members measure the opposite of a value of the class. */
function turnedIn(
  { is, measures }: Subject,
  own: readonly Values[],
  cards: readonly Card[],
  bits: readonly string[],
): Pick<Matched, 'turned'> {
  if (is !== 'class' || measures.length !== own.length || own.length < 2) return {};
  const values = measures.map((measure) =>
    valuesOf(cards, bits, (card, bit) => measure.of(card, bit)).join(),
  );
  const turned = own.map((member) => !values.includes(member.join()));
  return turned.some(Boolean) ? { turned } : {};
}

/** Whether what is measured counts just the cards that the subject does not. */
function isOfOthers(
  { is, measures: [measure] }: Subject,
  own: readonly Values[],
  p: number,
  cards: readonly Card[],
  bits: readonly string[],
): boolean {
  if (is !== 'count' || p === 2 || own.length !== 1 || measure.bits.length > 0) return false;
  const values = valuesOf(cards, bits, (card, bit) => measure.of(card, bit));
  return own[0].every((value, i) => value === 1 - values[i]);
}

/** Two cards of which both are among what the equations measure. */
function twoCards(
  members: readonly (readonly Values[])[],
  { p, space }: Problem,
  cards: readonly Card[],
  subjects: readonly Subject[],
  bits: readonly string[],
): Matched[] {
  const [own] = members;
  if (members.length !== 1) return [];
  return subjects.flatMap((subject): Matched[] => {
    if (subject.is !== 'two cards') return [];
    if (subject.measures.some((measure) => measure.bits.some((bit) => !bits.includes(bit)))) return [];
    const at = subject.measures.map((measure) => {
      const wanted = valuesOf(cards, bits, (card, bit) => measure.of(card, bit)).join();
      return own.findIndex((values) => values.join() === wanted);
    });
    if (at.some((i) => i < 0)) return [];
    return [{ subject: { ...subject, p }, readings: at.map((i) => space.measures[i]) }];
  });
}

function sameSubject(
  subject: Subject,
  own: readonly Values[],
  p: number,
  cards: readonly Card[],
  bits: readonly string[],
): Subject | null {
  if (subject.measures.some((measure) => measure.bits.some((bit) => !bits.includes(bit)))) return null;
  const measures = subject.measures.map((measure) =>
    valuesOf(cards, bits, (card, bit) => ((measure.of(card, bit) % p) + p) % p),
  );
  const isSame = (a: Values, b: Values): boolean => a.every((value, i) => value === b[i]);
  switch (subject.is) {
    case 'class': {
      if (p !== 2) return null;
      if (own.length === 1 && measures.length === 1) {
        const opposite = own[0].map((value) => 1 - value);
        return isSame(own[0], measures[0]) || isSame(opposite, measures[0]) ? subject : null;
      }
      if (own.length === 1 || measures.length === 1) return null;
      if (partition(own) !== partition(measures)) return null;
      const isOne = (one: Values, other: Values): boolean =>
        isSame(one, other) || one.every((value, i) => value === 1 - other[i]);
      const isEach =
        own.length === measures.length && measures.every((one) => own.some((other) => isOne(one, other)));
      // "One of each" makes sense only where each value has a measure of its own.
      return isEach ? subject : { ...subject, measures: subject.measures.slice(0, 2) };
    }
    case 'one off': {
      const opposite = measures[0].map((value) => 1 - value);
      return p === 2 && own.length === 1 && (isSame(own[0], measures[0]) || isSame(own[0], opposite))
        ? subject
        : null;
    }
    case 'number':
    case 'count':
      // What a sum is in whole numbers is looked at one by one.
      return own.length === 1 && (p > 2 || subject.single === true) && isSame(own[0], measures[0])
        ? { ...subject, p }
        : null;
    case 'total':
    case 'two cards':
      return null;
    case 'steps':
      return own.length === 1 && p === subject.p && isSame(own[0], measures[0]) ? subject : null;
  }
}

/** Which cards in which settings have the same values in all functions. */
function partition(functions: readonly Values[]): string {
  const ids = new Map<string, number>();
  return functions[0]
    .map((_, i) => {
      const key = functions.map((values) => values[i]).join();
      if (!ids.has(key)) ids.set(key, ids.size);
      return ids.get(key);
    })
    .join();
}
