import type { VerdictName } from '../proving/decision.ts';
import { patternOf } from './choice-words.ts';

/** The verdict on a routine with so many cards; `not understood` where the set-up or a step makes no sense with them. */
export interface SizeRow {
  readonly cards: number;
  readonly verdict: VerdictName | 'not understood';
}

export interface Sizes {
  readonly rows: readonly SizeRow[];
  /** The sizes that work, in words; each was proved by itself, and nothing is said of sizes beyond these. */
  readonly words: string;
}

/** The number of cards of a set-up, if it is written once as `16 cards`; its place in the text. */
export function numberOfCards(
  text: string,
  setUp: { readonly from: number; readonly to: number },
): { readonly cards: number; readonly from: number; readonly to: number } | null {
  const found = [...text.slice(setUp.from, setUp.to).matchAll(/\b(\d{1,3}) cards\b/g)];
  if (found.length !== 1) return null;
  const [match] = found;
  const from = setUp.from + match.index;
  return { cards: Number(match[1]), from, to: from + match[1].length };
}

/** Which sizes are proved, in words. `judge` decides the routine with so many cards. */
export function sizesFrom(least: number, most: number, judge: (cards: number) => SizeRow['verdict']): Sizes {
  const rows: SizeRow[] = [];
  for (let cards = least; cards <= most; cards++) rows.push({ cards, verdict: judge(cards) });
  return { rows, words: sayWhich(rows) };
}

function sayWhich(rows: readonly SizeRow[]): string {
  const sensible = rows.filter(({ verdict }) => verdict !== 'not understood').map(({ cards }) => cards);
  const proved = rows.filter(({ verdict }) => verdict === 'proved').map(({ cards }) => cards);
  const open = rows.filter(({ verdict }) => verdict === 'undecided').map(({ cards }) => cards);
  const [first, last] = [rows[0]?.cards ?? 0, rows.at(-1)?.cards ?? 0];
  const range = `from ${first} to ${last} cards`;
  const undecided = open.length === 0 ? '' : ` Undecided: ${open.join(', ')}.`;
  if (proved.length === 0) return `Proved for no number of cards ${range}.${undecided}`;
  if (proved.length === sensible.length && undecided === '')
    return `Proved for every number of cards that makes sense ${range}.`;
  return `Proved ${range}: ${patternOf(proved, sensible).words}.${undecided}`;
}
