import fc from 'fast-check';
import { expect, test } from 'vitest';
import { carry, mark } from './actions.ts';
import { applyOp, BitKinds, composeOps, effectOf } from './effect.ts';

test('one operation after another, field by field', () => {
  const word = fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 16, maxLength: 16 });
  const pack = (fields: readonly number[]): number =>
    fields.reduce((w, f, k) => (w | (f << (2 * k))) >>> 0, 0);
  fc.assert(
    fc.property(word, word, fc.integer({ min: 0, max: 1 }), (first, second, bit) => {
      const both = composeOps(pack(first), pack(second));
      first.forEach((op, k) => {
        expect(applyOp(bit, (both >>> (2 * k)) & 3)).toBe(applyOp(applyOp(bit, op), second[k]));
      });
    }),
  );
});

test('a block turned over is reversed and shows its other side; end over end exchanges its ends too', () => {
  const bits = new BitKinds();
  const before = { names: ['packet'], sizes: [4] };
  const side = effectOf(before, [carry('packet', 0, 3, 'packet', 0, { turned: 'side' })], bits);
  expect([...side.from]).toEqual([2, 1, 0, 3]);
  expect([...(side.ops ?? [])]).toEqual([1, 1, 1, 0]);
  const end = effectOf(before, [carry('packet', 0, 3, 'packet', 0, { turned: 'end' })], bits);
  expect([...(end.ops ?? [])]).toEqual([5, 5, 5, 0]);
  const half = effectOf(
    before,
    [
      carry('packet', 0, 4, 'packet', 0, { turned: 'side' }),
      carry('packet', 0, 4, 'packet', 0, { turned: 'end' }),
    ],
    bits,
  );
  // Sideways, then end over end: a half turn on the table (order and faces kept, ends exchanged).
  expect([...half.from]).toEqual([0, 1, 2, 3]);
  expect([...(half.ops ?? [])]).toEqual([4, 4, 4, 4]);
});

test('piles appear and vanish; marks travel with their cards', () => {
  const effect = effectOf(
    { names: ['packet'], sizes: [2] },
    [mark('packet', 1, 1, 'chosen', 'set'), carry('packet', 0, 2, 'table', 0, { reversed: true })],
    new BitKinds(),
  );
  expect(effect.after).toEqual({ names: ['table'], sizes: [2] });
  expect([...effect.from]).toEqual([1, 0]);
  expect([...(effect.ops ?? [])]).toEqual([3 << 4, 0]);
});
