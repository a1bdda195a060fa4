import { Budget } from '../base/budget.ts';
import { MOVES } from '../moves/index.ts';
import type { Move } from '../moves/move.ts';
import { BLANKS } from '../phrases/blanks.ts';
import { printPhrases } from '../phrases/phrase.ts';
import type { Part } from '../phrases/template.ts';
import type { Amount, Args, ArgValue, Block, PlaceRef } from '../phrases/values.ts';
import { layoutKey, sizeOf, type Layout } from '../pictures/layout.ts';
import { BudgetEnded, Graph } from '../routine/graph.ts';
import type { MoveStep } from '../routine/routine.ts';
import { alone } from './insertion.ts';

/** One or two sentences that could be put in, as the note would write them. */
export interface Candidate {
  readonly text: string;
  readonly steps: readonly MoveStep[];
}

// More readings of one move than anybody would look through.
const MOST_FOR_A_MOVE = 60;
// A move with more ways than this is too large to be offered by the way.
const MOST_WORK = 8_000;

/**
 * Every move of the catalogue with every sensible filling of its blanks on these piles that leaves the piles as they were, alone
 * or followed by a gathering. A move that looks at cards is none: what it does depends on more than sizes.
 */
export function candidatesFor(layout: Layout): Candidate[] {
  const found = new Map<string, Candidate>();
  const add = (steps: readonly MoveStep[], texts: readonly string[]): void => {
    const text = texts.map((t) => t.replace(/\.$/, '')).join('; ') + '.';
    if (!found.has(text)) found.set(text, { text, steps });
  };
  for (const { step, text } of fillings(layout)) {
    const after = layoutAfter([step], layout);
    if (after === null) continue;
    if (layoutKey(after) === layoutKey(layout)) add([step], [text]);
    else if (step.move !== 'gather')
      for (const second of gatherings(after)) {
        const end = layoutAfter([step, second.step], layout);
        if (end !== null && layoutKey(end) === layoutKey(layout))
          add([step, second.step], [text, second.text]);
      }
  }
  return [...found.values()];
}

interface Filling {
  readonly step: MoveStep;
  readonly text: string;
}

function fillings(layout: Layout): Filling[] {
  return MOVES.filter((move) => move.looks === undefined && move.hands !== 'choose').flatMap((move) =>
    fill(move, layout),
  );
}

function gatherings(layout: Layout): Filling[] {
  return MOVES.filter((move) => move.hands === 'gather' && move.looks === undefined).flatMap((move) =>
    fill(move, layout),
  );
}

function fill(move: Move, layout: Layout): Filling[] {
  const all = new Map<string, Filling>();
  for (const phrase of move.phrases)
    for (const args of oneAtATime(fillParts(phrase.parts, layout))) {
      const whole: Args = { ...move.defaults, ...args, ...phrase.fixed };
      if ((move.check?.(whole) ?? []).length > 0) continue;
      const text = printPhrases(move.phrases, whole, move.defaults, BLANKS);
      if (text === null || all.has(text)) continue;
      if (all.size >= MOST_FOR_A_MOVE) return [...all.values()];
      all.set(text, { text: `${text}.`, step: stepOf(move, whole) });
    }
  return [...all.values()];
}

/** Of all fillings, those that differ from the first in one blank: enough to see what a blank does, without every combination. */
function oneAtATime(all: readonly Args[]): Args[] {
  const first = all[0] ?? {};
  return all.filter((args) => {
    const names = new Set([...Object.keys(first), ...Object.keys(args)]);
    return (
      [...names].filter((name) => JSON.stringify(first[name]) !== JSON.stringify(args[name])).length <= 1
    );
  });
}

function stepOf(move: Move, args: Args): MoveStep {
  const nowhere = { number: '', range: { from: 0, to: 0 } };
  return { do: 'move', move: move.id, args, who: 'spectator', secret: false, ...nowhere };
}

function fillParts(parts: readonly Part[], layout: Layout): Args[] {
  let all: Args[] = [{}];
  for (const part of parts) {
    const ways: Args[] = [];
    switch (part.part) {
      case 'words':
        continue;
      case 'blank':
        for (const value of valuesFor(part.type, layout)) ways.push({ [part.name]: value });
        break;
      case 'choice':
        for (const { value } of part.values) ways.push({ [part.name]: value });
        break;
      case 'optional':
        ways.push({}, ...part.ways.flatMap((way) => fillParts(way, layout)));
        break;
      case 'either':
        ways.push(...part.ways.flatMap((way) => fillParts(way, layout)));
        break;
    }
    const distinct = [...new Map(ways.map((way) => [JSON.stringify(way), way])).values()];
    all = all.flatMap((args) => distinct.map((way) => ({ ...args, ...way }))).slice(0, 4 * MOST_FOR_A_MOVE);
  }
  return all;
}

/**
 * Fillings of a blank that make sense on these piles; a type that asks for names or cards of the note offers none. Numbers left open
 * stand for each number in them, since safe numbers are told one by one.
 */
function valuesFor(type: string, layout: Layout): ArgValue[] {
  const most = Math.max(...layout.names.map((name) => sizeOf(layout, name)), 0);
  const half = most % 2 === 0 ? [most / 2] : [];
  const counts = [...new Set([2, 3, 4, 5, 6, 8, 13, ...half])]
    .filter((n) => n > 1 && n <= most)
    .sort((x, y) => x - y);
  switch (type) {
    case 'pile':
      return [...layout.names];
    case 'newpile':
      return [layout.names.includes('table') ? 'counter' : 'table'];
    case 'number':
      return counts;
    case 'nth':
      return [2, 3].filter((n) => n <= most);
    case 'amount':
    case 'cards':
    case 'topcards':
    case 'many':
    case 'howmany':
      return OPEN;
    case 'blocks':
      return [{ of: 'exactly', n: 2 }, { of: 'multiple', k: 2, plus: 0 }, ...OPEN];
    case 'block':
      return BLOCKS;
    case 'place':
    case 'spot':
      return ENDS;
    default:
      return [];
  }
}

const OPEN: Amount[] = [{ of: 'any' }];
const BLOCKS: Block[] = [
  { end: 'top', cards: { of: 'any' } },
  { end: 'top', cards: { of: 'exactly', n: 1 } },
  { end: 'bottom', cards: { of: 'exactly', n: 1 } },
  { end: 'bottom', cards: { of: 'any' } },
];
const ENDS: PlaceRef[] = [
  { end: 'top', n: 1 },
  { end: 'bottom', n: 1 },
];

/** Sizes after the steps, if they are the same whatever is chosen; null when they are not or there is a dead end. */
function layoutAfter(steps: readonly MoveStep[], layout: Layout): Layout | null {
  const graph = new Graph(alone(steps, layout));
  let order: number[];
  try {
    order = graph.reach([graph.start], new Budget(MOST_WORK));
  } catch (error) {
    if (error instanceof BudgetEnded) return null;
    throw error;
  }
  let after: Layout | null = null;
  for (const id of order) {
    const location = graph.locations[id];
    if (location.exit) {
      if (after !== null && layoutKey(after) !== layoutKey(location.layout)) return null;
      after = location.layout;
    } else if (graph.waysFrom(id).stuck !== undefined) return null;
  }
  return after;
}
