import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CostQueue } from './heap.ts';

test('least cost first, equal costs in order of arrival, pushes and pops mixed', () => {
  const step = fc.oneof(fc.record({ push: fc.integer({ min: 0, max: 6 }) }), fc.constant('pop' as const));
  fc.assert(
    fc.property(fc.array(step, { maxLength: 200 }), (steps) => {
      const queue = new CostQueue();
      const plain: { cost: number; item: number }[] = [];
      steps.forEach((what, item) => {
        if (what !== 'pop') {
          queue.push(item, what.push);
          plain.push({ cost: what.push, item });
        } else if (plain.length > 0) {
          const least = Math.min(...plain.map((p) => p.cost));
          const at = plain.findIndex((p) => p.cost === least);
          expect(queue.nextCost()).toBe(least);
          expect(queue.pop()).toBe(plain.splice(at, 1)[0].item);
        }
        expect(queue.size).toBe(plain.length);
      });
    }),
  );
});
