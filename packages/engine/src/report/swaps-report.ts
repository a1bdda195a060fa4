import type { Trouble } from '../base/diagnostic.ts';
import { good, type Result } from '../base/result.ts';
import { fullPack } from '../cards/pack.ts';
import type { Card } from '../cards/card.ts';
import { attributesSpokenOf, swapped, swapsAmong, type Swap } from '../insight/likeness/relation-swap.ts';
import { setUpsFrom } from '../insight/start/set-up-search.ts';
import { compile } from '../note/compile.ts';
import { describe } from '../note/messages/describe.ts';
import { printEnding, printStep } from '../note/print.ts';
import { read } from '../note/read.ts';
import type { Limits } from '../proving/question.ts';
import type { MoveStep, Routine, Step } from '../routine/routine.ts';
import { answered, type Asked, type Understood } from './asked.ts';
import { list } from './places.ts';
import { noteWith, setUpLine } from './set-up-line.ts';
import { readCards } from './set-up-found.ts';

/** The routine seen in another relation: odd and even for red and black. */
export interface SwapData {
  readonly from: string;
  readonly to: string;
  /** `proved` with the set-up told; else none was found. */
  readonly verdict: 'proved' | 'none found';
  /** The sentences of the ending in the other relation. */
  readonly endings: readonly string[];
  /** What stands behind the first pile's name in the set-up; null where none was found or it has no words. */
  readonly line: string | null;
  /** The whole note, written anew; empty where it could not be. */
  readonly note: string;
  /** Why none was found; empty where one was. */
  readonly why: string;
}

export interface SwapsReport {
  /** Attributes that the ending speaks of. */
  readonly from: readonly string[];
  readonly swaps: readonly SwapData[];
  readonly words: string;
}

/**
 * The same routine with every attribute that the cards at hand offer in place of those its ending speaks of; each with a set-up found
 * and proved. `hand`: cards in the words of a set-up, null for a full pack.
 */
export function swapsReport(asked: Asked, hand: string | null, limits: Limits): Result<SwapsReport, Trouble> {
  return answered(asked, limits, (note) => {
    const cards = hand === null ? good<readonly Card[]>(fullPack()) : handOf(hand, note.text);
    if (!cards.ok) return cards;
    const { routine } = note;
    const spoken = attributesSpokenOf(routine);
    const swaps = swapsAmong(spoken, cards.value, routine.cards).map((swap) =>
      swapData(note, swap, cards.value, limits),
    );
    return good({ from: spoken, swaps, words: sayAll(spoken, swaps) });
  });
}

function handOf(hand: string, text: string): Result<readonly Card[], Trouble> {
  const found = readCards(hand, text);
  return found.ok ? good(found.value.cards) : found;
}

function swapData(
  { text, routine }: Understood,
  swap: Swap,
  hand: readonly Card[],
  limits: Limits,
): SwapData {
  const other = swapped(routine, swap);
  const endings = other.endings.map((ending) => printEnding(ending));
  const base = { from: swap.from, to: swap.to, endings };
  const found = setUpsFrom(other, hand, limits);
  if (!found.ok)
    return { ...base, verdict: 'none found', line: null, note: '', why: describe(found.error).words };
  const [{ routine: laid }] = found.value;
  const written = noteWith(rewritten(text, routine, other), laid);
  const isRead = written !== '' && compile(read(written)).routine !== undefined;
  return {
    ...base,
    verdict: 'proved',
    line: setUpLine(laid, laid.setUp.piles[0].name),
    note: isRead ? written : '',
    why: '',
  };
}

/** The note with those sentences printed anew that are not what they were. */
function rewritten(text: string, before: Routine, after: Routine): string {
  const edits = [
    ...changedMoves(before.steps, after.steps).map((step) => ({ range: step.range, text: printStep(step) })),
    ...after.endings.flatMap((ending, i) =>
      JSON.stringify(ending.sentence) === JSON.stringify(before.endings[i].sentence)
        ? []
        : [{ range: ending.range, text: printEnding(ending) }],
    ),
  ].sort((a, b) => a.range.from - b.range.from);
  let result = '';
  let at = 0;
  for (const { range, text: said } of edits) {
    const stop = /[.:]$/.test(text.slice(range.from, range.to)) || text[range.to] !== '.';
    result += text.slice(at, range.from) + (stop ? said : said.replace(/\.$/, ''));
    at = range.to;
  }
  return result + text.slice(at);
}

function changedMoves(before: readonly Step[], after: readonly Step[]): MoveStep[] {
  return after.flatMap((step, i): MoveStep[] => {
    const old = before[i];
    if (step.do === 'move') return JSON.stringify(step) === JSON.stringify(old) ? [] : [step];
    if ('body' in step && 'body' in old) return changedMoves(old.body, step.body);
    if (step.do === 'either' && old.do === 'either')
      return step.branches.flatMap((branch, k) => changedMoves(old.branches[k], branch));
    if (step.do === 'if' && old.do === 'if')
      return [...changedMoves(old.then, step.then), ...changedMoves(old.otherwise, step.otherwise)];
    return [];
  });
}

function sayAll(spoken: readonly string[], swaps: readonly SwapData[]): string {
  if (spoken.length === 0)
    return 'The ending speaks of no attribute of the cards, so there is nothing to put in its place.';
  const proved = swaps.filter(({ verdict }) => verdict === 'proved');
  if (swaps.length === 0) return `The cards at hand have nothing that could stand in for ${list(spoken)}.`;
  if (proved.length === 0)
    return `In none of these other relations was a set-up found among the cards at hand.`;
  return `The same routine works with ${list(proved.map(({ from, to }) => `${to} in place of ${from}`))}, each proved with the set-up told.`;
}
