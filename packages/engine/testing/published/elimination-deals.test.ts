import { expect, test } from 'vitest';
import { cards, cycleOrder, onlyOrder } from './outcomes.ts';
import {
  DOWN_UNDER_KEEP_ORDERS,
  DOWN_UNDER_LAST,
  DOWN_UNDER_ORDERS,
  DOWN_UNDER_STACKS,
  UNDER_DOWN_KEEP_ORDERS,
  UNDER_DOWN_LAST,
  UNDER_DOWN_ORDERS,
  UNDER_DOWN_STACKS,
} from './values.ts';

// The finished heap has the last card on top.
const downUnder = (n: number): number[] => onlyOrder(n, 'Deal the packet down-under into a pile.');
const underDown = (n: number): number[] => onlyOrder(n, 'Deal the packet under-down into a pile.');

test.each([
  ['down-under', downUnder, DOWN_UNDER_LAST],
  ['under-down', underDown, UNDER_DOWN_LAST],
] as const)('last card of a %s deal of 1 to 104 cards', (_name, deal, last) => {
  expect(last.map((_, i) => deal(i + 1)[0])).toEqual(last);
});

// E. Behrends, The Math Behind the Magic (AMS 2019), pp. 156-164 of the German edition.
test('52 cards: the 41st under-down, the 40th down-under', () => {
  expect(underDown(52)[0]).toBe(41);
  expect(downUnder(52)[0]).toBe(40);
});

test.each([
  ['down-under', downUnder, DOWN_UNDER_STACKS],
  ['under-down', underDown, UNDER_DOWN_STACKS],
] as const)('stacks that a %s deal lays out in order', (_name, deal, stacks) => {
  stacks.forEach((stack) => {
    const dealt = deal(stack.length).map((place) => stack[place - 1]);
    expect(dealt.reverse()).toEqual(cards(stack.length));
  });
});

test.each([
  ['down-under', downUnder, DOWN_UNDER_ORDERS, DOWN_UNDER_KEEP_ORDERS],
  ['under-down', underDown, UNDER_DOWN_ORDERS, UNDER_DOWN_KEEP_ORDERS],
] as const)('how often a %s deal restores the packet', (_name, deal, reversing, keeping) => {
  expect(reversing.map((_, i) => cycleOrder(deal(i + 1)))).toEqual(reversing);
  expect(keeping.map((_, i) => cycleOrder(deal(i + 1).toReversed()))).toEqual(keeping);
});
