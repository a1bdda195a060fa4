import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CostQueue } from './heap.ts';

test('least cost first, equal costs in order of arrival, pushes and pops mixed', () => {
  const step = fc.oneof(fc.record({ push: fc.integer({ min: 0, max: 6 }) }), fc.constant('pop' as const));
  fc.assert(
    fc.property(fc.array(step, { maxLength: 200 }), (steps) => {
      const queue = new CostQueue();
      const plain: { cost: number; item: number }[] = [];
      const popped: number[][] = [];
      const expected: number[][] = [];
      steps.forEach((what, item) => {
        if (what !== 'pop') {
          queue.push(item, what.push);
          plain.push({ cost: what.push, item });
        } else if (plain.length > 0) {
          const least = Math.min(...plain.map((p) => p.cost));
          const [first] = plain.splice(
            plain.findIndex((p) => p.cost === least),
            1,
          );
          expected.push([first.cost, first.item, plain.length]);
          popped.push([queue.nextCost(), queue.pop(), queue.size]);
        }
      });
      expect(popped).toEqual(expected);
    }),
  );
});
