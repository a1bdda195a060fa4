import type { Range, Trouble } from '../base/diagnostic.ts';
import { BLANKS } from '../phrases/blanks.ts';
import { matchPhrase, phrase } from '../phrases/phrase.ts';
import type { Token } from '../phrases/tokens.ts';
import type { Names } from '../phrases/values.ts';
import { saysAt, type Line, type Span } from './line.ts';

// Joints a person can still follow; more are not read, so that no sentence takes long.
export const MOST_JOINTS = 12;

const UP_TO = [
  {
    by: 'cut' as const,
    phrases: [phrase('up to a cut [of {pile:pile}]'), phrase('up to cutting [{pile:pile}]')],
  },
  {
    by: 'turn' as const,
    phrases: [
      phrase('up to turning {pile:pile} over'),
      phrase('up to turning over {pile:pile}'),
      phrase('up to turning it over'),
      phrase('up to a turn [of {pile:pile}]'),
    ],
  },
];

export const EXACTLY = ['exactly when', 'if and only if', 'just when', 'precisely when'].map((words) =>
  words.split(' '),
);
export const DENIALS = ['it is not true that', 'it is not case that', 'it is false that'].map((words) =>
  words.split(' '),
);
/** `Not all cards face the same way`: the denial is the first word. */
export const NOT_ALL = ['not all', 'not every', 'not both'].map((words) => words.split(' '));

/** What a sentence is weakened by: a cut of a pile, or turning it over. */
export interface UpTo {
  readonly by: 'cut' | 'turn';
  readonly pile: string;
  readonly troubles: readonly { readonly trouble: Trouble; readonly range: Range }[];
}

/** `up to a cut of pile 2`, the whole of these words. */
export function upToWhat(tokens: readonly Token[], names: Names): UpTo | null {
  const usual = names.piles.includes('packet') || names.piles.length !== 1 ? 'packet' : names.piles[0];
  for (const { by, phrases } of UP_TO)
    for (const one of phrases) {
      const match = matchPhrase(one, tokens, names, BLANKS);
      const pile = match?.args.pile ?? usual;
      if (match !== null && typeof pile === 'string') return { by, pile, troubles: match.troubles };
    }
  return null;
}

/** Where any of these wordings stands outside brackets, with something on either side; none where there are too many. */
export function jointsIn(
  line: Line,
  span: Span,
  words: readonly (readonly string[])[],
): { at: number; length: number }[] {
  const found: { at: number; length: number }[] = [];
  let open = 0;
  for (let k = span.from; k < span.to; k++) {
    if (saysAt(line.tokens, k, ['('])) open++;
    else if (saysAt(line.tokens, k, [')'])) open--;
    const one = open === 0 && k > span.from ? words.find((w) => joins(line, k, w)) : undefined;
    if (one !== undefined && k + one.length < span.to) found.push({ at: k, length: one.length });
  }
  return found.length > MOST_JOINTS ? [] : found;
}

/** `all but one` joins nothing, `..., but ...` does. */
function joins(line: Line, at: number, words: readonly string[]): boolean {
  return saysAt(line.tokens, at, words) && (words[0] !== 'but' || line.before[at].includes(','));
}

/** The bracket that closes the one at the start of the span. */
export function closing(line: Line, span: Span): number {
  let open = 0;
  for (let k = span.from; k < span.to; k++) {
    if (saysAt(line.tokens, k, ['('])) open++;
    else if (saysAt(line.tokens, k, [')']) && --open === 0) return k;
  }
  return -1;
}

export function insideBrackets(line: Line, span: Span, at: number): boolean {
  let open = 0;
  for (let k = span.from; k < at; k++) {
    if (saysAt(line.tokens, k, ['('])) open++;
    else if (saysAt(line.tokens, k, [')'])) open--;
  }
  return open > 0;
}
