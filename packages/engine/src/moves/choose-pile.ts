import { phrase } from '../phrases/phrase.ts';
import { decided, numberedPiles } from './handling.ts';
import { defineMove, stuck } from './move.ts';
import { badName } from './name-number.ts';

type ChoosePileArgs = { stem: 'pile' | 'heap' | 'hand' | 'hour'; call: string };

/** P65: one of the piles is chosen; its number is kept, and `pile N` means it from then on. */
export const choosePile = defineMove<ChoosePileArgs>({
  id: 'choose-pile',
  procedures: ['P65'],
  hands: 'choose',
  title: 'choose a pile',
  phrases: [
    phrase(
      '(the spectator chooses|the spectator points to|they choose|choose|point to|pick) (any|a|one) {stem=pile|heap|hand|hour}, call (its number|it) {call:newname}',
    ),
  ],
  defaults: {},
  help: 'One of the piles on the table is chosen. Nothing moves; its number gets a name for later sentences.',
  caution:
    'A free choice means the same whichever is chosen. If the performer decides its meaning afterwards, nothing was proved.',
  synonyms: ['point to a pile'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ call }) => badName(call),
  open: true,
  options({ stem, call }, view) {
    const piles = numberedPiles(stem, view.layout);
    if (piles.length === 0) return stuck('no-piles', { stem });
    return decided(piles.map(({ n }) => ({ key: n, actions: [], next: null, set: { [call]: n } })));
  },
  say: ({ stem }, [n]) => `chooses ${stem} ${n}`,
  examples: [
    {
      before: 'pile 1: 1; pile 2: 2; pile 3: 3',
      sentence: 'The spectator chooses any pile, call its number N.',
      choices: [2],
      after: 'n = 2; pile 1: 1; pile 2: 2; pile 3: 3',
    },
  ],
});
