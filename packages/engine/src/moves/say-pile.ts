import { phrase } from '../phrases/phrase.ts';
import { decided, numberedPiles } from './handling.ts';
import { defineMove, stuck } from './move.ts';
import { badName } from './name-number.ts';

type SayPileArgs = { stem: 'pile' | 'heap' | 'hand'; mark: string; call: string };

/** P69: the spectator says openly which pile holds a card; the answer is true, and the performer may act on it. */
export const sayPile = defineMove<SayPileArgs>({
  id: 'say-pile',
  procedures: ['P69'],
  hands: 'choose',
  title: 'say which pile',
  phrases: [
    phrase(
      '(the spectator says|they say|say) which {stem=pile|heap|hand} (holds|contains) {mark:mark}, call (its number|it) {call:newname}',
    ),
    phrase(
      '(the spectator names|they name|name) the {stem=pile|heap|hand} (with|of|that holds) {mark:mark}, call (its number|it) {call:newname}',
    ),
  ],
  defaults: {},
  help: 'The spectator says in which pile the card lies. Its number gets a name, so that this pile can be picked up in its turn.',
  caution: 'The answer is taken to be true, and everybody hears it.',
  synonyms: ['in which pile is your card'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ call }) => badName(call),
  looks: {
    attributes: () => [],
    bits: ({ mark }) => [mark],
    observe({ stem, mark }, table, view) {
      const holds = numberedPiles(stem, view.layout).filter(({ name, size }) =>
        Array.from({ length: size }, (_, i) => table.bitAt(name, i, mark)).includes(1),
      );
      return holds.map(({ n }) => n).join(' ');
    },
  },
  open: true,
  options({ stem, mark, call }, view) {
    if (view.seen === undefined || view.seen === '') return stuck('in-no-pile', { mark, stem });
    const piles = String(view.seen).split(' ').map(Number);
    return decided(piles.map((n) => ({ key: n, actions: [], next: null, set: { [call]: n } })));
  },
  say: ({ stem }, [n]) => `says ${stem} ${n}`,
  examples: [
    {
      before: 'pile 1: 1; pile 2: 2(chosen) 3; pile 3: 4',
      sentence: 'The spectator says which pile holds chosen, call its number N.',
      choices: [],
      after: 'n = 2; pile 1: 1; pile 2: 2(chosen) 3; pile 3: 4',
    },
  ],
});
