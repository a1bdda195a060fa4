import { trouble } from '../base/diagnostic.ts';
import { phrase } from '../phrases/phrase.ts';
import type { NumberRef } from '../phrases/values.ts';
import { defineMove, numberOf } from './move.ts';

type SayNumberArgs = { n: NumberRef };

/** A number that was thought of or counted unseen is said aloud, so that from then on everybody knows it. */
export const sayNumber = defineMove<SayNumberArgs>({
  id: 'say-number',
  procedures: ['P64'],
  hands: 'choose',
  title: 'say the number',
  phrases: [
    phrase('(the spectator|they|) (says|say|tells|tell|reveals|reveal) {n:number} [aloud]'),
    phrase('(the spectator|they|) (says|say|tells|tell) what {n:number} is'),
  ],
  defaults: {},
  help: 'The spectator says a number that so far only the spectator knew. Nothing moves.',
  caution: 'The answer is taken to be true.',
  synonyms: ['which number was it'],
  open: true,
  tells: ({ n }) => (typeof n === 'number' ? [] : [n.var]),
  check: ({ n }) => (typeof n === 'number' ? [trouble('test-of-literal', { n })] : []),
  options: ({ n }, view) => [{ key: numberOf(n, view), actions: [], next: null, off: 0 }],
  say: (_args, [n]) => `says ${n}`,
  examples: [{ before: 'n = 3; 1', sentence: 'The spectator says N.', choices: [], after: 'n = 3; 1' }],
});
