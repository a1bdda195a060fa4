import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plus, rational, times, toNumber, wilson } from './rational.ts';

const fraction = fc.record({ n: fc.integer({ min: -500, max: 500 }), d: fc.integer({ min: 1, max: 500 }) });

test('sums and products', () => {
  fc.assert(
    fc.property(fraction, fraction, (a, b) => {
      const [x, y] = [rational(BigInt(a.n), BigInt(a.d)), rational(BigInt(b.n), BigInt(b.d))];
      expect(toNumber(plus(x, y))).toBeCloseTo(a.n / a.d + b.n / b.d, 9);
      expect(toNumber(times(x, y))).toBeCloseTo((a.n / a.d) * (b.n / b.d), 9);
    }),
  );
  expect(rational(6n, -4n)).toEqual({ n: -3n, d: 2n });
});

test('the interval for a share', () => {
  // Worked by hand from Wilson's formula (1927) with z = 1.96: 8 of 10 gives 0.490 to 0.943.
  const { low, high } = wilson(8, 10);
  expect(low).toBeCloseTo(0.4902, 3);
  expect(high).toBeCloseTo(0.9433, 3);
  expect(wilson(0, 20).low).toBe(0);
  expect(wilson(20, 20).high).toBeCloseTo(1, 12);
});
