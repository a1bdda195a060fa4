import { trouble } from '../base/diagnostic.ts';
import { phrase, same } from '../phrases/phrase.ts';
import type { PileRef } from '../phrases/values.ts';
import { carry } from '../pictures/actions.ts';
import { named } from './handling.ts';
import { defineMove, pileName, pileSize, stuck } from './move.ts';
import { turned, turnReading, type How } from './open.ts';

type FoldArgs = { pile: PileRef; onto: PileRef; where: 'onto' | 'beneath'; how: How };

/** P70: a pile is turned over onto another, as when a layout is folded. */
export const fold = defineMove<FoldArgs>({
  id: 'fold',
  procedures: ['P70'],
  hands: 'turn',
  title: 'turn a pile onto another',
  phrases: [
    phrase(
      'turn {pile:pile} over {where=onto~on|beneath~under~underneath} {onto:newpile} [{how=sideways|end over end}]',
    ),
    phrase(
      '(fold|flip) {pile:pile} [over] {where=onto~on|beneath~under~underneath} {onto:newpile} [{how=sideways|end over end}]',
    ),
    phrase(
      'turn over {pile:pile} {where=onto~on|beneath~under~underneath} {onto:newpile} [{how=sideways|end over end}]',
    ),
    phrase(
      'turn {pile:pile} over and (put|place|lay|drop) it {where=onto~on|beneath~under~underneath} {onto:newpile}',
    ),
  ],
  defaults: { how: 'sideways' },
  help: 'A pile is turned over as one and comes to lie on another pile, or beneath it.',
  caution:
    'In a layout only a move to an orthogonal neighbour, or to any odd distance, keeps faces tied to places.',
  synonyms: ['fold'],
  brings: ({ onto }) => ({ piles: named(onto) }),
  check: ({ pile, onto }) => (same(pile, onto) ? [trouble('pile-twice')] : []),
  readings: ({ how }) => turnReading(how),
  options(args, view) {
    const pile = pileName(args.pile, view);
    const onto = pileName(args.onto, view);
    if (pile === onto) return stuck('pile-twice', { piles: [pile] });
    const size = pileSize(args.pile, view);
    const into = args.where === 'onto' ? 0 : pileSize(args.onto, view);
    const actions = size === 0 ? [] : [carry(pile, 0, size, onto, into, turned(args.how))];
    return [{ key: 'folded', actions, next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: 'pile 1: 1; pile 2: 2; pile 3: 3; pile 4: 4',
      sentence: 'Turn pile 1 over onto pile 3.',
      choices: [],
      after: 'pile 2: 2; pile 3: 1^ 3; pile 4: 4',
    },
    {
      before: 'pile 3: 1^ 3; pile 4: 2^ 4',
      sentence: 'Turn pile 3 over onto pile 4.',
      choices: [],
      after: 'pile 4: 3^ 1 2^ 4',
    },
    {
      before: 'left: 1 2; right: 3',
      sentence: 'Fold the left under the right end over end.',
      choices: [],
      after: "right: 3 2^' 1^'",
    },
  ],
});
