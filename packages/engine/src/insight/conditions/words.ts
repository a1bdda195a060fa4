import { moveById } from '../../moves/index.ts';
import { printName, printNumber } from '../../phrases/blanks/number.ts';
import type { MoveStep } from '../../routine/routine.ts';
import { listed, patternOf } from '../altering/choice-words.ts';

/** Which numbers of a choice work: `N is even`, `the number at step 3 is 10 to 19`, `at step 2 they do not go right to the bottom`. */
export function sayChosen(step: MoveStep, some: readonly number[], all: readonly number[]): string {
  const { move, args, number } = step;
  const { outermost } = moveById(move);
  const without = all.filter((n) => !some.includes(n));
  if (outermost !== undefined) {
    const words: readonly (readonly [number, string])[] = [
      [all[0], outermost.least],
      [all[all.length - 1], outermost.most],
    ];
    const said = words.filter(([n]) => without.includes(n));
    if (said.length === without.length) {
      const [first, second] = said.map(([, one]) => one);
      return second === undefined
        ? `at step ${number} they do not go ${first}`
        : `at step ${number} they go neither ${first} nor ${second}`;
    }
  }
  const name = typeof args.call === 'string' ? printName(args.call) : `the number at step ${number}`;
  return `${name} ${isWhat(some, all)}`;
}

function isWhat(some: readonly number[], all: readonly number[]): string {
  const { amount } = patternOf(some, all);
  const without = all.filter((n) => !some.includes(n));
  switch (amount?.of) {
    case 'exactly':
      return `is ${printNumber(amount.n)}`;
    case 'multiple':
      if (amount.k === 2) return amount.plus === 0 ? 'is even' : 'is odd';
      return amount.plus === 0
        ? `is a multiple of ${amount.k}`
        : `leaves ${amount.plus} when divided by ${amount.k}`;
    case 'at most':
      return `is at most ${printNumber(amount.n)}`;
    case 'at least':
      return `is at least ${printNumber(amount.n)}`;
    case 'range':
      return `is between ${printNumber(amount.from)} and ${printNumber(amount.to)}`;
    default:
      if (some.length > 1 && some.every((n, i) => n === all[i])) return `is at most ${some[some.length - 1]}`;
      if (some.length > 1 && some.every((n, i) => n === all[all.length - some.length + i]))
        return `is at least ${some[0]}`;
      return without.length < some.length
        ? `is not ${listed(without.map(String)).replace(' and ', ' or ')}`
        : `is ${listed(some.map(String)).replace(' and ', ' or ')}`;
  }
}
