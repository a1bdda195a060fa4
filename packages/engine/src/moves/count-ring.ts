import { trouble } from '../base/diagnostic.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { NumberRef, PileRef } from '../phrases/values.ts';
import { mark } from '../pictures/actions.ts';
import { defineMove, numberOf, pileName, pileSize, stuck } from './move.ts';

type CountRingArgs = { count: NumberRef; tail: PileRef; ring: PileRef; mark: string };

/**
 * P47: a count from the foot of a tail into a ring, and the same count back round the ring. The top card of the tail's pile is
 * the foot, the top card of the ring's pile the one that the tail joins.
 */
export const countRing = defineMove<CountRingArgs>({
  id: 'count-ring',
  procedures: ['P47'],
  hands: 'choose',
  title: 'count round a ring with a tail',
  phrases: [
    phrase(
      'count {count:number} from the foot of {tail:pile} into {ring:pile} and back round the ring, call the card reached {mark:newname}',
    ),
  ],
  defaults: {},
  help: 'One counts up the tail into the ring, then the same number back, beginning on the card reached and staying on the ring.',
  caution:
    'The number must be larger than the tail. The end lies as many places before the joint as the tail has cards.',
  synonyms: ['circle and tail'],
  brings: ({ mark: name }) => ({ marks: [name] }),
  check: ({ tail, ring }) => (same(tail, ring) ? [trouble('pile-twice')] : []),
  options(args, view) {
    const ring = pileName(args.ring, view);
    const tail = pileSize(args.tail, view);
    const size = pileSize(args.ring, view);
    const count = numberOf(args.count, view);
    if (size === 0) return stuck('no-such-card', { pile: ring, size });
    if (count <= tail) return stuck('count-ends-in-tail', { tail, count });
    const reached = count - tail - 1;
    const back = (((reached - (count - 1)) % size) + size) % size;
    return [{ key: 'reached', actions: [mark(ring, back, 1, args.mark, 'set')], next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'n = 5; tail: 1 2; ring: 3 4 5 6 7 8',
      sentence:
        'Count N from the foot of the tail into the ring and back round the ring, call the card reached chosen.',
      choices: [],
      after: 'ring: 3 4 5 6 7(chosen) 8; tail: 1 2',
    },
    {
      before: 'tail: 1 2; ring: 3 4 5 6 7 8',
      sentence:
        'Count 11 from the foot of the tail into the ring and back round the ring, call the card reached chosen.',
      choices: [],
      after: 'ring: 3 4 5 6 7(chosen) 8; tail: 1 2',
    },
  ],
});
