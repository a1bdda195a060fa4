import type { Layout } from '../pictures/layout.ts';
import type { Equation, EquationTerm } from './equation.ts';
import type { Naming } from './naming.ts';
import { list, sayPlaces, sayWhere } from './places.ts';
import type { Trait } from './traits.ts';

/** One equation in words. */
export function sayEquation(equation: Equation, layout: Layout): string {
  const { p, whole, total } = equation;
  const sums = sumsOf(equation.terms);
  if (p === 2) {
    const [only] = sums;
    if (sums.length === 1 && only.slots.length === 1)
      return `the card at ${sayPlaces(only.slots, layout)} is ${total === 1 ? only.trait.one : only.trait.not}`;
    return `${list(sums.map((sum) => saySum(sum, layout)))} are${sums.length > 1 ? ' together' : ''} ${total === 1 ? 'odd' : 'even'} in number`;
  }
  const words = sayBalance(sums, total, layout);
  return whole ? words : `${words}, counted modulo ${p}`;
}

interface Sum {
  readonly trait: Trait;
  readonly coef: number;
  readonly slots: readonly number[];
}

/** Terms with the same trait and coefficient taken together. */
function sumsOf(terms: readonly EquationTerm[]): Sum[] {
  const sums: { trait: Trait; coef: number; slots: number[] }[] = [];
  for (const { trait, coef, slot } of terms) {
    const known = sums.find((sum) => sum.trait === trait && sum.coef === coef);
    if (known === undefined) sums.push({ trait, coef, slots: [slot] });
    else known.slots.push(slot);
  }
  return sums;
}

function saySum({ trait, coef, slots }: Sum, layout: Layout): string {
  const times = Math.abs(coef) === 1 ? '' : `${Math.abs(coef)} times the `;
  return `${times}${trait.many} ${sayWhere(slots, layout)}`;
}

function sayBalance(sums: readonly Sum[], total: number, layout: Layout): string {
  const left = sums.filter(({ coef }) => coef > 0);
  const right = sums.filter(({ coef }) => coef < 0);
  const counts = sums.every(({ trait, coef }) => trait.isYesNo && Math.abs(coef) === 1);
  const say = (side: readonly Sum[]): string => list(side.map((sum) => saySum(sum, layout)));
  const [only] = left;
  if (right.length === 0) {
    if (left.length === 1 && counts) return sayCount(only, total, layout);
    return `${say(left)} come to ${total}`;
  }
  const [other] = right;
  if (counts && left.length === 1 && right.length === 1 && only.trait === other.trait) {
    const compared = `are ${only.trait.are} ${sayWhere(only.slots, layout)}`;
    const where = sayWhere(other.slots, layout);
    if (total === 0) return `as many cards ${compared} as ${where}`;
    return `${total} more ${total === 1 ? `card ${compared.replace(/^are/, 'is')}` : `cards ${compared}`} than ${where}`;
  }
  if (counts && total === 0) return `there are as many ${say(left)} as ${say(right)}`;
  const more = total === 0 ? '' : ` and ${total} more`;
  return `${say(left)} come to as much as ${say(right)}${more}`;
}

/** How many of some cards are such. */
function sayCount({ trait, slots }: Sum, total: number, layout: Layout): string {
  const places = sayPlaces(slots, layout);
  if (slots.length === 1) return `the card at ${places} is ${total === 1 ? trait.one : trait.not}`;
  const where = sayWhere(slots, layout);
  const among =
    where === 'in the packet' || where === 'in all piles' ? 'all the cards' : `the cards ${where}`;
  if (total === 0) return `none of ${among} is ${trait.one}`;
  if (total === slots.length) return `${among} are ${trait.are}`;
  return `${total} of ${among} ${total === 1 ? `is ${trait.one}` : `are ${trait.are}`}`;
}

/** Several sets of places with the same parities: `of the cards at places 1 to 4, and at places 5 to 8, an odd number are red`. */
export function sayParity(
  sets: readonly string[],
  size: number,
  totals: readonly number[],
  naming: Naming,
): string {
  const traits = naming.traits.map(([trait]) => trait);
  const where = sets.length === 1 ? `at ${sets[0]}` : `at each of these, ${sets.join('; ')},`;
  const isPartition =
    traits.length === size &&
    totals.every((total) => total === 1) &&
    naming.cards.every((card) =>
      Array.from({ length: 1 << naming.bits.length }, (_, s) => naming.vectorOf(card, s)).every(
        (vector) => vector.reduce((sum, value) => sum + value, 0) === 1,
      ),
    );
  // As many odd numbers as there are cards can only add up to that when each of them is 1.
  if (isPartition) return `${where} there is one each of ${list(traits.map(({ many }) => many))}`;
  const odd = traits.filter((_, i) => totals[i] === 1);
  const even = traits.filter((_, i) => totals[i] === 0);
  const parts = [
    ...(odd.length > 0 ? [`an odd number of ${list(odd.map(({ many }) => many))}`] : []),
    ...(even.length > 0 ? [`an even number of ${list(even.map(({ many }) => many))}`] : []),
  ];
  const each = traits.length > 1 ? ', each counted by itself' : '';
  return `${where} there is ${list(parts)}${each}`;
}
