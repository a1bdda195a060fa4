import { moveById, MOVES } from '../moves/index.ts';
import { isStuck, START, type Hands, type Move, type Phase } from '../moves/move.ts';
import { BLANKS } from '../phrases/blanks.ts';
import { printPhrases } from '../phrases/phrase.ts';
import type { Part } from '../phrases/template.ts';
import type { Amount, Args, ArgValue, Block, PlaceRef } from '../phrases/values.ts';
import { effectOf, type BitKinds } from '../pictures/effect.ts';
import { layoutKey, sizeOf, type Layout } from '../pictures/layout.ts';
import { Rearrangements } from '../routine/graph.ts';
import type { MoveStep } from '../routine/routine.ts';
import { Mix } from './mix.ts';

/** One or two sentences that could be put in, as the note would write them. */
export interface Candidate {
  readonly text: string;
  readonly steps: readonly MoveStep[];
  /** What hands do first. */
  readonly hands: Hands;
  /** The mix on the piles it was thought of for. */
  readonly mix: Mix;
}

/** What hands do, in the order in which it is offered. */
export const HANDS_IN_ORDER: readonly Hands[] = [
  'cut',
  'mix',
  'deal',
  'gather',
  'turn',
  'order',
  'hand over',
];

// More readings of one move than anybody would look through.
const MOST_FOR_A_MOVE = 150;
const MOST_HEAPS = 8;

/**
 * Every move of the catalogue with every sensible filling of its blanks on these piles that can leave the piles as they were, alone or
 * followed by a gathering. A move that looks at cards is none: what it does depends on more than sizes.
 */
export function* candidatesFor(layout: Layout): Generator<Candidate> {
  const goal = layoutKey(layout);
  const known = new Set<string>();
  const made = new Rearrangements();
  const gatherings = new Map<string, readonly Filling[]>();
  const fillings = new Map<string, readonly Filling[]>();
  const candidate = (parts: readonly Filling[]): Candidate | null => {
    const text = parts.map(({ text: one }) => one.replace(/\.$/, '')).join('; ') + '.';
    if (known.has(text)) return null;
    known.add(text);
    const steps = parts.map(({ step }) => step);
    return { text, steps, hands: parts[0].hands, mix: new Mix(steps, layout, made) };
  };
  for (const hands of HANDS_IN_ORDER)
    for (const move of MOVES) {
      if (move.hands !== hands || move.looks !== undefined) continue;
      for (const filling of fill(move, layout)) {
        const after = plainEndOf(filling.step, layout, made.bits);
        if (after === null) continue;
        const key = layoutKey(after);
        if (key === goal) {
          const one = candidate([filling]);
          if (one !== null) yield one;
        } else if (isDealt(filling, after)) {
          let seconds = gatherings.get(key);
          if (seconds === undefined)
            gatherings.set(key, (seconds = gatheringsOf(after, goal, made.bits, fillings)));
          for (const second of seconds) {
            const two = candidate([filling, second]);
            if (two !== null) yield two;
          }
        }
      }
    }
}

/** Gatherings that bring the piles back. What they gather was dealt without a number being named, so they can be tried by themselves. */
function gatheringsOf(
  layout: Layout,
  goal: string,
  bits: BitKinds,
  fillings: Map<string, readonly Filling[]>,
): Filling[] {
  // What makes sense in a blank depends on no more.
  const key = `${layout.names.join()}/${Math.max(...layout.sizes)}`;
  let all = fillings.get(key);
  if (all === undefined) fillings.set(key, (all = GATHERINGS.flatMap((move) => fill(move, layout))));
  return all.filter(({ step }) => {
    const end = plainEndOf(step, layout, bits);
    return end !== null && layoutKey(end) === goal;
  });
}

const GATHERINGS = MOVES.filter(({ hands, looks }) => hands === 'gather' && looks === undefined);

const NO_NUMBERS = {};
const LONGEST = 600;

/** The piles after the plainest way of doing a step; null where it gets stuck. */
function plainEndOf({ move, args }: MoveStep, layout: Layout, bits: BitKinds): Layout | null {
  const { options } = moveById(move);
  let now = layout;
  let phase: Phase = START;
  for (let i = 0; i < LONGEST; i++) {
    const found = options(args, { layout: now, phase, numbers: NO_NUMBERS, seen: undefined });
    if (isStuck(found) || found.length === 0) return null;
    const [{ actions, next }] = found;
    if (actions.length > 0) now = effectOf(now, actions, bits).after;
    if (next === null) return now;
    phase = next;
  }
  return null;
}

/** Whether gathering is worth a thought: what was dealt out is all there is, or lies in one heap beside the rest. */
function isDealt({ step, hands }: Filling, after: Layout): boolean {
  if ((hands !== 'deal' && hands !== 'mix') || step.args.face !== undefined) return false;
  const { pile } = step.args;
  return after.names.length <= 2 || typeof pile !== 'string' || !after.names.includes(pile);
}

export interface Filling {
  readonly step: MoveStep;
  readonly text: string;
  readonly hands: Hands;
}

const booksKnown = new Map<string, CandidateBook>();
const MOST_BOOKS = 12;

/** The candidates for some piles, worked out as far as they have been asked for and kept for the next who asks. */
export class CandidateBook {
  private readonly found: Candidate[] = [];
  private readonly rest: Generator<Candidate>;
  private isDone = false;

  private constructor(layout: Layout) {
    this.rest = candidatesFor(layout);
  }

  static for(layout: Layout): CandidateBook {
    const key = layoutKey(layout);
    let book = booksKnown.get(key);
    if (book === undefined) {
      book = new CandidateBook(layout);
      const [oldest] = booksKnown.keys();
      if (booksKnown.size >= MOST_BOOKS && oldest !== undefined) booksKnown.delete(oldest);
    } else booksKnown.delete(key);
    // The most lately used stands last.
    booksKnown.set(key, book);
    return book;
  }

  *all(): Generator<Candidate> {
    for (let i = 0; ; i++) {
      if (i === this.found.length && !this.isDone) {
        const next = this.rest.next();
        if (next.done === true) this.isDone = true;
        else this.found.push(next.value);
      }
      if (i >= this.found.length) return;
      yield this.found[i];
    }
  }
}

/** Sensible fillings of a move's blanks on these piles. */
export function fill(move: Move, layout: Layout): Filling[] {
  const all = new Map<string, Filling>();
  const values = new Values(layout);
  for (const phrase of move.phrases)
    for (const args of phrase.parts.length === 0 ? [] : oneAtATime(phrase.parts, values)) {
      const whole: Args = { ...move.defaults, ...args, ...phrase.fixed };
      const key = Object.keys(whole)
        .sort()
        .map((name) => `${name}:${keyOf(whole[name])}`)
        .join();
      if (all.has(key) || hasTooManyHeaps(move, whole) || (move.check?.(whole) ?? []).length > 0) continue;
      const text = printPhrases(move.phrases, whole, move.defaults, BLANKS);
      if (text === null) continue;
      if (all.size >= MOST_FOR_A_MOVE) return [...all.values()];
      all.set(key, { text: `${text}.`, step: stepOf(move, whole), hands: move.hands });
    }
  return [...all.values()];
}

/** Piles may be dealt by the dozen; nobody cuts off so many heaps. */
function hasTooManyHeaps({ hands }: Move, { into }: Args): boolean {
  return hands === 'cut' && typeof into === 'number' && into > MOST_HEAPS;
}

/** A value as a text that no other value has. */
function keyOf(value: ArgValue | undefined): string {
  return typeof value === 'string' ? value : JSON.stringify(value);
}

/**
 * Of all fillings, those that differ from the first in one blank: enough to see what a blank does, without every combination. Numbers
 * belong together, as the rows and columns of a layout do.
 */
function oneAtATime(parts: readonly Part[], values: Values): Args[] {
  const choices = parts.flatMap((part) => {
    const ways = waysOf(part, values);
    return ways === null ? [] : [ways];
  });
  if (choices.some((ways) => ways.length === 0)) return [];
  const first: Args = Object.assign({}, ...choices.map(([way]) => way));
  let all: Args[] = [{}];
  for (const ways of choices) {
    const [plain] = ways;
    all = all.flatMap((args) =>
      ways.flatMap((way) => {
        const made = { ...args, ...way };
        return way === plain || isNear(made, plain, first) ? [made] : [];
      }),
    );
  }
  return all.filter((args) => isNear(args, first, first));
}

/** Whether no more than one blank is filled otherwise than in `first`, numbers aside; of blanks not filled yet only those in `due` count. */
function isNear(args: Args, due: Args, first: Args): boolean {
  let changed = 0;
  let numbers = 0;
  for (const name of Object.keys(args))
    if (!(name in first) || (args[name] !== first[name] && keyOf(args[name]) !== keyOf(first[name]))) {
      changed++;
      if (typeof args[name] === 'number') numbers++;
    }
  for (const name of Object.keys(due)) if (!(name in args)) changed++;
  return changed <= 1 || changed === numbers;
}

export function stepOf(move: Move, args: Args): MoveStep {
  const nowhere = { number: '', range: { from: 0, to: 0 } };
  return { do: 'move', move: move.id, args, who: 'spectator', secret: false, ...nowhere };
}

/** Ways of filling one part of a phrase; null for words, which leave nothing to fill. */
function waysOf(part: Part, values: Values): Args[] | null {
  const ways: Args[] = [];
  switch (part.part) {
    case 'words':
      return null;
    case 'blank':
      for (const value of values.for(part.type)) ways.push({ [part.name]: value });
      break;
    case 'choice': {
      // Piles, heaps and hands differ in name only.
      const all = part.name === 'plural' ? pluralsOn(part, values.layout) : part.values;
      for (const { value } of all) ways.push({ [part.name]: value });
      break;
    }
    case 'optional':
      ways.push({}, ...part.ways.flatMap((way) => fillParts(way, values)));
      break;
    case 'either':
      ways.push(...part.ways.flatMap((way) => fillParts(way, values)));
      break;
  }
  return ways.length < 2 ? ways : [...new Map(ways.map((way) => [JSON.stringify(way), way])).values()];
}

function fillParts(parts: readonly Part[], values: Values): Args[] {
  let all: Args[] = [{}];
  for (const part of parts) {
    const ways = waysOf(part, values);
    if (ways === null) continue;
    all = all.flatMap((args) => ways.map((way) => ({ ...args, ...way }))).slice(0, 4 * MOST_FOR_A_MOVE);
  }
  return all;
}

/** The nouns whose piles are there; the first where there are none. */
function pluralsOn(
  part: Extract<Part, { part: 'choice' }>,
  layout: Layout,
): readonly { readonly value: string }[] {
  const there = part.values.filter(({ value }) =>
    layout.names.some((name) => name.startsWith(`${value.slice(0, -1)} `)),
  );
  return there.length > 0
    ? there
    : [{ value: part.values.some(({ value }) => value === 'piles') ? 'piles' : part.values[0].value }];
}

/**
 * Fillings of a blank that make sense on these piles; a type that asks for names or cards of the note offers none. Numbers left open
 * stand for each number in them, since safe numbers are told one by one.
 */
class Values {
  readonly layout: Layout;
  private readonly known = new Map<string, readonly ArgValue[]>();

  constructor(layout: Layout) {
    this.layout = layout;
  }

  for(type: string): readonly ArgValue[] {
    let found = this.known.get(type);
    if (found === undefined) this.known.set(type, (found = valuesFor(type, this.layout)));
    return found;
  }
}

function valuesFor(type: string, layout: Layout): ArgValue[] {
  const most = Math.max(...layout.names.map((name) => sizeOf(layout, name)), 0);
  const half = most % 2 === 0 ? [most / 2] : [];
  const counts = [...new Set([2, 3, 4, 5, 6, 8, ...(most % 13 === 0 ? [4, 13] : []), ...half])]
    .filter((n) => n > 1 && n <= most)
    .sort((x, y) => x - y);
  const exactly = (n: number): Amount => ({ of: 'exactly', n });
  switch (type) {
    case 'pile':
      // Of many piles the outermost and one between them tell what a blank does.
      return layout.names.length <= 4
        ? [...layout.names]
        : [layout.names[0], layout.names[1], layout.names.at(-1)];
    case 'newpile':
      return [layout.names.includes('table') ? 'counter' : 'table'];
    case 'number':
      return counts;
    case 'nth':
      return [2, 3].filter((n) => n <= most);
    case 'many':
      return counts.map(exactly);
    case 'severaltop':
    case 'severalbottom':
      return [2, 3].filter((n) => n <= most).map(exactly);
    case 'amount':
    case 'cards':
    case 'topcards':
      return OPEN;
    case 'blocks':
      return [exactly(2), { of: 'multiple', k: 2, plus: 0 }, ...OPEN];
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
