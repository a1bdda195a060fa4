import { expect, test } from 'vitest';
import { Budget } from './budget.ts';

test('it stops when the limit is passed, and stays so', () => {
  const budget = new Budget(3);
  expect([budget.spend(), budget.spend(2), budget.spend(), budget.spend(0), budget.tick()]).toEqual([
    true,
    true,
    false,
    false,
    false,
  ]);
});

test('work that the limit does not count is never too much, but the caller is asked', () => {
  const asked: number[] = [];
  const budget = new Budget(10, (spent) => asked.push(spent) < 3, 5);
  expect(budget.spend(2)).toBe(true);
  expect(budget.tick(3)).toBe(true);
  expect(budget.tick(100)).toBe(true);
  expect(budget.spend(4)).toBe(true);
  expect(budget.tick(1)).toBe(false);
  expect(asked).toEqual([2, 2, 6]);
  expect(budget.spend(0)).toBe(false);
});
