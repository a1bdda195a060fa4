import { trouble, type Trouble } from '../base/diagnostic.ts';
import { numberIn, tokenize } from '../phrases/tokens.ts';
import type { NumberRef } from '../phrases/values.ts';
import { phrase } from '../phrases/phrase.ts';
import { decided } from './handling.ts';
import { defineMove, numberOf, stuck, type View } from './move.ts';

type NameNumberArgs = {
  from: NumberRef;
  to: NumberRef;
  kind: 'a number' | 'an even number' | 'an odd number';
  how: 'names' | 'thinks of';
  call: string;
};

export const HOW = '(the spectator|they|) {how=names~name~chooses~choose|thinks of~think of}';
const WHAT = '{kind=a number~any number|an even number~any even number|an odd number~any odd number}';

/** More branches than a routine can carry through all its steps. */
const MOST_NUMBERS = 1000;

function open({ from, to, kind }: NameNumberArgs, view: Pick<View, 'numbers'>): number[] {
  const list: number[] = [];
  for (let n = numberOf(from, view); n <= numberOf(to, view) && list.length <= MOST_NUMBERS; n++)
    if (kind === 'a number' || (n % 2 === 0) === (kind === 'an even number')) list.push(n);
  return list;
}

/** A name that reads as a number would be taken for that number later. */
export function badName(name: string): readonly Trouble[] {
  const [token] = tokenize(name);
  return numberIn(token) === undefined ? [] : [trouble('name-is-a-number', { name })];
}

/** P43b, as far as the number is said before it is used: a number is named and kept for later steps; nothing moves. */
export const nameNumber = defineMove<NameNumberArgs>({
  id: 'name-number',
  procedures: ['P43b'],
  hands: 'choose',
  title: 'name a number',
  phrases: [
    phrase(
      `${HOW} ${WHAT} (from {from:number} to {to:number}|between {from:number} and {to:number}), call it {call:newname}`,
    ),
    phrase(`${HOW} ${WHAT}, {from:number} to {to:number}, call it {call:newname}`),
    phrase('(the spectator rolls|roll) a die, call (it|the number) {call:newname}', {
      from: 1,
      to: 6,
      kind: 'a number',
      how: 'names',
    }),
  ],
  defaults: { kind: 'a number', how: 'names' },
  help: 'A number is named within these bounds, both of which count, and later sentences may use its name.',
  caution: 'Every number in the range must work. A number only thought of is of no use to the performer.',
  synonyms: ['think of a number', 'roll a die'],
  brings: ({ call }) => ({ numbers: [call] }),
  check(args) {
    const { from, to, call } = args;
    const bounds =
      typeof from === 'number' && typeof to === 'number' ? open(args, { numbers: {} }) : undefined;
    const empty =
      bounds?.length === 0 ? [trouble('no-number-between', { from: Number(from), to: Number(to) })] : [];
    const many =
      (bounds?.length ?? 0) > MOST_NUMBERS
        ? [trouble('number-too-large', { number: Number(to), most: MOST_NUMBERS })]
        : [];
    return [...badName(call), ...empty, ...many];
  },
  open: ({ how }) => how === 'names',
  options(args, view) {
    const numbers = open(args, view);
    if (numbers.length === 0)
      return stuck('no-number-between', { from: numberOf(args.from, view), to: numberOf(args.to, view) });
    return decided(numbers.map((n) => ({ key: n, actions: [], next: null, set: { [args.call]: n } })));
  },
  say: ({ how }, [n]) => `${how} ${n}`,
  examples: [
    {
      before: '1 2 3',
      sentence: 'The spectator names a number from 1 to 15, call it N.',
      choices: [4],
      after: 'n = 4; 1 2 3',
    },
    {
      before: '1',
      sentence: 'The spectator names an even number between 3 and 8, call it secret.',
      choices: [6],
      after: 'secret = 6; 1',
    },
    {
      before: '1',
      sentence: 'The spectator thinks of a number from 1 to 3, call it N.',
      choices: [3],
      after: 'n = 3; 1',
    },
    { before: '1', sentence: 'Roll a die, call it K.', choices: [5], after: 'k = 5; 1' },
  ],
});
