import { trouble } from '../base/diagnostic.ts';
import type { PileRef } from '../phrases/values.ts';
import { phrase, same } from '../phrases/phrase.ts';
import { named } from './handling.ts';
import { dropNext, saidDrops } from './interleave.ts';
import { defineMove, pileName, stuck, type View } from './move.ts';

type TogetherArgs = {
  /** Both absent: the two piles that are there. */
  a?: PileRef;
  /** Absent while `a` is given: the pile the result is named after. */
  b?: PileRef;
  to: PileRef;
};

const RIFFLE = '(riffle|rosette|dovetail|riffle-shuffle|push|weave loosely)';

/** P49: two piles that lie there riffled, pushed or whirled into each other. */
export const riffleTogether = defineMove<TogetherArgs>({
  id: 'riffle-together',
  procedures: ['P49'],
  hands: 'mix',
  title: 'riffle two piles together',
  phrases: [
    phrase(`${RIFFLE} {a:pile} and {b:pile} (together|into each other) [into {to:newpile}]`),
    phrase(
      `${RIFFLE} the (two|both|) (packets|piles|heaps|halves|parts) (together|into each other) [into {to:newpile}]`,
    ),
    phrase(`${RIFFLE} {a:pile} into {to:pile}`),
  ],
  defaults: { to: 'packet' },
  help:
    'Cards fall from the bottoms of the two piles, now from one, now from the other, as they come. ' +
    'Choices name the pile each card falls from, from the bottom up. The whole is the packet, unless another name is given.',
  caution: 'After a deal one pile is reversed and the other not: then this is a Gilbreath shuffle.',
  synonyms: ['rosette', 'push through', 'riffle into'],
  brings: ({ to }) => ({ piles: named(to) }),
  check: ({ a, b, to }) => (a !== undefined && same(a, b ?? to) ? [trouble('pile-twice')] : []),
  options(args, view) {
    const pair = pairOf(args, view);
    if (pair.length > 2) return stuck('which-two-piles', { piles: pair });
    const [a = '', b = ''] = pair;
    if (a === b && a !== '') return stuck('pile-twice', { piles: pair });
    return dropNext(
      [
        { key: a, pile: a },
        { key: b, pile: b },
      ],
      pileName(args.to, view),
      view,
    );
  },
  say: (_args, keys) => (keys[0] === 'rest' ? '' : `lets fall ${saidDrops(keys)}`),
  examples: [
    {
      before: 'packet: 4 5 6 7 8; table: 3 2 1',
      sentence: 'Riffle the packet and the table together.',
      choices: ['packet', 'packet', 'table', 'table', 'packet', 'packet', 'table'],
      after: '4 3 5 6 2 1 7 8',
    },
    {
      before: 'pile 1: 1 2; pile 2: 3 4',
      sentence: 'Riffle the two piles together.',
      choices: ['pile 1', 'pile 2', 'pile 1'],
      after: '3 1 4 2',
    },
    {
      before: 'left: 1 2; right: 3',
      sentence: 'Riffle the left into the right.',
      choices: ['left', 'right'],
      after: 'right: 1 3 2',
    },
  ],
});

function pairOf({ a, b, to }: TogetherArgs, view: View): string[] {
  if (a === undefined) return view.layout.names.filter((name) => !name.startsWith('~'));
  return [pileName(a, view), pileName(b ?? to, view)];
}
