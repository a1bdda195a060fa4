import { phrase } from '../phrases/phrase.ts';
import { marked } from './looking.ts';
import { defineMove, stuck } from './move.ts';

type SayCardArgs = { mark: string };

/** P64: the spectator says aloud which card was noted, so that from then on everybody knows it. */
export const sayCard = defineMove<SayCardArgs>({
  id: 'say-card',
  procedures: ['P64'],
  hands: 'choose',
  title: 'name the noted card',
  phrases: [
    phrase('(the spectator|they|) (names|name|says|say|reveals|reveal) {mark:mark} [aloud]'),
    phrase('(the spectator|they|) (names|name|says|say|tells|tell) which card {mark:mark} is'),
  ],
  defaults: {},
  help: 'The spectator says which card it is. Nothing moves, but from then on the performer can build on it.',
  caution: 'The answer is taken to be true.',
  synonyms: ['which was your card'],
  looks: {
    attributes: () => ['name'],
    bits: ({ mark }) => [mark],
    observe: ({ mark }, table) => marked(mark, table)?.name ?? '',
  },
  open: true,
  tells: ({ mark }) => [mark],
  options({ mark }, view) {
    if (view.seen === undefined || view.seen === '') return stuck('mark-not-put', { mark });
    return [{ key: String(view.seen), actions: [], next: null, off: 0 }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2(chosen) 3',
      sentence: 'The spectator names the chosen card.',
      choices: [],
      after: '1 2(chosen) 3',
    },
  ],
});
