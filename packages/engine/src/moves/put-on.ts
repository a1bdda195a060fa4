import { trouble } from '../base/diagnostic.ts';
import type { PileRef } from '../phrases/values.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { Action } from '../pictures/actions.ts';
import { layOn, named } from './handling.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';

type PutOnArgs = { stack: readonly PileRef[]; to?: PileRef };

function twice(refs: readonly PileRef[]): boolean {
  return refs.some((ref, i) => refs.slice(0, i).some((other) => same(ref, other)));
}

/** P30: named piles laid on one another. */
export const putOn = defineMove<PutOnArgs>({
  id: 'put-on',
  procedures: ['P30'],
  hands: 'gather',
  title: 'put a pile on another',
  phrases: [
    phrase('(put|place|drop|lay|replace|return) {stack:stack} [into {to:newpile}]'),
    phrase('gather {stack:stack}', { to: 'packet' }),
    phrase('gather {stack:stack} into {to:newpile}'),
  ],
  defaults: {},
  help: 'Each pile is laid as it is on the one named after it. The pile named last lies lowest and gives its name to the whole.',
  caution: 'On top and beneath are different: write Put pile 1 beneath pile 2 for the other.',
  synonyms: ['drop on', 'place on', 'replace on'],
  brings: ({ to }) => ({ piles: named(to) }),
  check: ({ stack }) => (twice(stack) ? [trouble('pile-twice')] : []),
  options({ stack, to }, view) {
    const names = stack.map((ref) => pileName(ref, view));
    if (twice(names)) return stuck('pile-twice', { piles: names });
    const actions: Action[] = [];
    let size = 0;
    names.forEach((name, i) => {
      if (i > 0) actions.push(...layOn(names[i - 1], size, name));
      size += pileSize(stack[i], view);
    });
    const last = names[names.length - 1];
    if (to !== undefined) actions.push(...layOn(last, size, pileName(to, view)));
    return [{ key: 'put', actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'packet: 4 5; table: 3 2 1',
      sentence: 'Put the table on the packet.',
      choices: [],
      after: '3 2 1 4 5',
    },
    {
      before: 'pile 1: 1 2; pile 2: 3 4; pile 3: 5 6',
      sentence: 'Gather pile 1 on pile 3 on pile 2.',
      choices: [],
      after: '1 2 5 6 3 4',
    },
    {
      before: 'pile 1: 1 2; pile 2: 3 4; pile 3: 5 6',
      sentence: 'Put pile 1 on pile 2.',
      choices: [],
      after: 'pile 2: 1 2 3 4; pile 3: 5 6',
    },
  ],
});
