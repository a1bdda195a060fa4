import { trouble } from '../base/diagnostic.ts';
import { phrase } from '../phrases/phrase.ts';
import type { NumberRef } from '../phrases/values.ts';
import { defineMove, numberOf, stuck, type View } from './move.ts';
import { badName } from './name-number.ts';

type ReckonArgs = { op: Operation; one: NumberRef; other: NumberRef; call: string };
type Operation = 'plus' | 'minus' | 'times' | 'digits';

function result({ op, one, other }: ReckonArgs, view: Pick<View, 'numbers'>): number {
  const a = numberOf(one, view);
  const b = numberOf(other, view);
  switch (op) {
    case 'plus':
      return a + b;
    case 'minus':
      return a - b;
    case 'times':
      return a * b;
    case 'digits':
      return [...String(a)].reduce((sum, digit) => sum + Number(digit), 0);
  }
}

/** P42, S20: a number reckoned from numbers that were named, such as the sum of its digits. */
export const reckon = defineMove<ReckonArgs>({
  id: 'reckon',
  procedures: ['P42', 'S20'],
  hands: 'choose',
  title: 'reckon with numbers',
  phrases: [
    phrase('call {one:number} {op=plus|minus|times} {other:number} {call:newname}'),
    phrase('(add|add together) {one:number} and {other:number}, call the (sum|total) {call:newname}', {
      op: 'plus',
    }),
    phrase('(subtract|take) {other:number} from {one:number}, call the (rest|difference) {call:newname}', {
      op: 'minus',
    }),
    phrase('(add|add up|add together) the digits of {one:number}, call the (sum|total) {call:newname}', {
      op: 'digits',
      other: 0,
    }),
  ],
  defaults: {},
  help: 'A number is reckoned from others and gets a name for later sentences. Nothing moves.',
  caution: 'A number below nothing stops the performance. From 10 to 19, a number less its digits is 9.',
  synonyms: ['add the digits'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ op, one, other, call }) => [
    ...badName(call),
    ...(op === 'minus' && typeof one === 'number' && typeof other === 'number' && one < other
      ? [trouble('number-below-nothing')]
      : []),
  ],
  options(args, view) {
    const n = result(args, view);
    if (n < 0)
      return stuck('number-below-nothing', {
        one: numberOf(args.one, view),
        other: numberOf(args.other, view),
      });
    return [{ key: n, actions: [], next: null, off: 0, set: { [args.call]: n } }];
  },
  say: () => '',
  examples: [
    {
      before: 'n = 17; 1',
      sentence: 'Add up the digits of N, call the sum S.',
      choices: [],
      after: 'n = 17; s = 8; 1',
    },
    {
      before: 'n = 17; k = 8; 1',
      sentence: 'Call N minus K M.',
      choices: [],
      after: 'n = 17; k = 8; m = 9; 1',
    },
    { before: 'n = 3; 1', sentence: 'Add N and 2, call the total M.', choices: [], after: 'n = 3; m = 5; 1' },
  ],
});
