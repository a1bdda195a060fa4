import type { Reader } from './setup-reader.ts';
import type { Mateable, MatesOrder, What } from './setup-syntax.ts';

const MATES: readonly (readonly [MatesOrder, string[][]])[] = [
  [
    'mirror',
    [['in', 'mirror', 'order'], ['in', 'mirrored', 'order'], ['mirrored'], ['in', 'reverse', 'order']],
  ],
  [
    'same',
    [
      ['in', 'the', 'same', 'order'],
      ['in', 'same', 'order'],
    ],
  ],
  [
    'beside',
    [
      ['side', 'by', 'side'],
      ['each', 'beside', 'its', 'mate'],
      ['in', 'pairs'],
    ],
  ],
];

const TORN = [
  ['torn', 'in', 'half', 'and', 'stacked'],
  ['torn', 'in', 'two', 'and', 'stacked'],
  ['torn', 'in', 'half', 'and', 'the', 'halves', 'stacked'],
];

/** `and their mates in mirror order` after cards, or `torn in half and stacked`; how the mates lie has to be said. */
export function mated(r: Reader, base: Mateable): What | null {
  const before = r.at;
  if (!r.eat(',')) r.eat('and');
  if (r.eatAny(TORN)) return { is: 'mates', base, order: 'torn' };
  if (r.eat('each', 'followed', 'by', 'its', 'mate')) return { is: 'mates', base, order: 'beside' };
  r.eat('and');
  r.eat('then');
  if (!r.eat('with')) r.eat('and');
  if (!r.eat('their', 'mates')) {
    r.at = before;
    return base;
  }
  for (const [order, words] of MATES) if (r.eatAny(words)) return { is: 'mates', base, order };
  const range = r.rangeFrom(before);
  r.tell(
    'set-up-mates-order',
    range,
    {},
    {
      fixes: ['in mirror order', 'in the same order', 'side by side'].map((text) => ({
        label: `Add ${text}`,
        range: { from: range.to, to: range.to },
        text: ` ${text}`,
      })),
    },
  );
  return null;
}
