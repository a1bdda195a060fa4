import { trouble, type Trouble } from '../base/diagnostic.ts';
import { numberIn, ordinalAt, tokenize } from '../phrases/tokens.ts';
import type { Names } from '../phrases/values.ts';
import { MOST_BIT_KINDS } from '../pictures/effect.ts';
import { MOST_NUMBERS, MOST_PILES } from './limits.ts';

export type Brought = Partial<Pick<Names, 'piles' | 'numbers' | 'marks'>>;

export const NO_NAMES: Names = { piles: [], numbers: [], marks: [], attributes: {}, cards: [] };

// Words that sentences are made of: a thing of that name could no longer be told from the word.
const TAKEN = new Set(
  (
    'it them they he she that this these those one other each every any all some both card cards pile piles top bottom ' +
    'face up down end side and or not if then else otherwise either times once twice of on in at to from by with under ' +
    'beneath over it is are be number even odd red black spade spades heart hearts club clubs diamond diamonds ' +
    'ace jack queen king spectator you performer nothing again'
  ).split(' '),
);

// `Deal 5 cards into a pile`: as long as nothing else is called so, `the pile` is that one.
const ONLY_PILE = 'pile';

export function isTaken(name: string): boolean {
  const tokens = tokenize(name);
  return (
    tokens.length === 0 ||
    TAKEN.has(name.toLowerCase()) ||
    (tokens.length === 1 && (numberIn(tokens[0]) !== undefined || ordinalAt(tokens, 0) !== undefined))
  );
}

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
const has = (list: readonly string[], name: string): boolean => list.some((known) => same(known, name));

/** Names after a sentence that brings some, and what speaks against them. */
export function withBrought(names: Names, brought: Brought): { names: Names; troubles: Trouble[] } {
  const troubles: Trouble[] = [];
  const add = (
    kind: 'piles' | 'numbers' | 'marks',
    list: readonly string[],
    others: readonly (readonly string[])[],
    most: number,
  ): readonly string[] => {
    let all = list;
    for (const name of brought[kind] ?? []) {
      if (name.startsWith('~') || has(all, name)) continue;
      if (isTaken(name) && !(kind === 'piles' && name === ONLY_PILE))
        troubles.push(trouble('name-is-a-word', { name }));
      else if (others.some((other) => has(other, name))) troubles.push(trouble('name-taken', { name }));
      else if (all.length >= most) troubles.push(trouble(`too-many-${kind}`, { most }));
      else all = [...all, name];
    }
    return all;
  };
  const piles = add('piles', names.piles, [names.numbers, names.marks], MOST_PILES);
  const numbers = add('numbers', names.numbers, [piles, names.marks], MOST_NUMBERS);
  // Up and end are bits too.
  const marks = add('marks', names.marks, [piles, numbers], MOST_BIT_KINDS - 2);
  const nothingNew = piles === names.piles && numbers === names.numbers && marks === names.marks;
  return { names: nothingNew ? names : { ...names, piles, numbers, marks }, troubles };
}

/** After a fork: a pile or mark of either way may be there, a number only if both ways named it. */
export function merged(all: readonly Names[]): Names {
  const [first, ...rest] = all;
  if (rest.every((names) => names === first)) return first;
  const union = (kind: 'piles' | 'marks'): readonly string[] => [
    ...new Set(all.flatMap((names) => names[kind])),
  ];
  return {
    ...first,
    piles: union('piles'),
    marks: union('marks'),
    numbers: first.numbers.filter((name) => rest.every((names) => names.numbers.includes(name))),
  };
}
