import { compile } from '../../note/compile.ts';
import { read } from '../../note/read.ts';
import { decide } from '../../proving/decide.ts';
import type { VerdictName } from '../../proving/decision.ts';
import type { Limits } from '../../proving/question.ts';
import { patternOf } from '../altering/choice-words.ts';
import { scaling, type NumbersTaken, type Scaled } from './scaling.ts';

/** The verdict on a routine with so many cards. */
export interface SizeRow {
  readonly cards: number;
  readonly verdict: VerdictName | 'does not fit';
  /** Why it does not fit; empty for others. */
  readonly why: string;
}

export interface Sizes {
  readonly scaled: Scaled;
  readonly rows: readonly SizeRow[];
  /** The sizes that are proved, in words: `even numbers`. */
  readonly pattern: string;
  /** `tried` where a size was left undecided or not reached. */
  readonly how: 'proved' | 'tried';
  readonly words: string;
}

/** Sizes that are tried. */
export interface SizeRange {
  readonly least: number;
  readonly most: number;
  readonly numbers: NumbersTaken;
}

export const MOST_SIZE = 104;

/**
 * The same routine at every number of cards that its set-up can be written for; each is decided by itself. `told` is called after each.
 * A string: why the set-up cannot be scaled.
 */
export function sizesOf(
  text: string,
  { least, most, numbers }: SizeRange,
  limits: Limits,
  told: (row: SizeRow) => void = () => undefined,
): Sizes | 'named one by one' | 'of one size' {
  const scaled = scaling(text, numbers);
  if (typeof scaled === 'string') return scaled;
  const rows: SizeRow[] = [];
  for (let cards = least; cards <= most; cards++) {
    const row = judged(cards, scaled.at(cards), limits);
    rows.push(row);
    told(row);
  }
  const pattern = patternIn(rows);
  const how = rows.some(({ verdict }) => verdict === 'undecided') ? 'tried' : 'proved';
  return { scaled, rows, pattern, how, words: sayWhich(rows, pattern) };
}

function judged(cards: number, text: string | null, limits: Limits): SizeRow {
  if (text === null) return { cards, verdict: 'does not fit', why: 'the set-up cannot be written for it' };
  const { routine } = compile(read(text));
  if (routine === undefined)
    return { cards, verdict: 'does not fit', why: 'the note makes no sense with it' };
  const { verdict, troubles } = decide(routine, limits);
  if (troubles.length > 0)
    return { cards, verdict: 'does not fit', why: 'a sentence of the ending has no meaning with it' };
  return { cards, verdict, why: '' };
}

function patternIn(rows: readonly SizeRow[]): string {
  const tried = rows.filter(({ verdict }) => verdict !== 'does not fit').map(({ cards }) => cards);
  const proved = rows.filter(({ verdict }) => verdict === 'proved').map(({ cards }) => cards);
  if (proved.length === 0) return 'none';
  if (proved.length === tried.length) return 'all tried';
  const powers = [2, 3].find((base) => {
    const isPower = (n: number): boolean => (n === 1 ? true : n % base === 0 && isPower(n / base));
    return proved.length > 2 && tried.every((n) => proved.includes(n) === isPower(n));
  });
  if (powers !== undefined) return `powers of ${powers}`;
  return patternOf(proved, tried).words.replace(/ only$/, '');
}

function sayWhich(rows: readonly SizeRow[], pattern: string): string {
  const tried = rows.filter(({ verdict }) => verdict !== 'does not fit').map(({ cards }) => cards);
  const open = rows.filter(({ verdict }) => verdict === 'undecided').map(({ cards }) => cards);
  if (tried.length === 0) return 'The set-up could be written for none of these numbers of cards.';
  const range = `Of the ${tried.length} numbers of cards from ${tried[0]} to ${tried[tried.length - 1]} that fit`;
  const each = 'Every one was decided by itself; of larger packets nothing is proved.';
  const undecided = open.length === 0 ? '' : ` Not decided within the work allowed: ${open.join(', ')}.`;
  if (pattern === 'none') return `${range} it works with none. ${each}${undecided}`;
  if (pattern === 'all tried') return `${range} it works with every one. ${each}`;
  return `${range} it works with these: ${pattern}. ${each}${undecided}`;
}
