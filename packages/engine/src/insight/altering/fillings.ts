import type { Hands, Move } from '../../moves/move.ts';
import { BLANKS } from '../../phrases/blanks.ts';
import { printPhrases } from '../../phrases/phrase.ts';
import type { Part } from '../../phrases/template.ts';
import type { Amount, Args, ArgValue, Block, PlaceRef } from '../../phrases/values.ts';
import { sizeOf, type Layout } from '../../pictures/layout.ts';
import type { MoveStep } from '../../routine/routine.ts';

/** A sentence of one move with its blanks filled in. */
export interface Filling {
  readonly step: MoveStep;
  readonly text: string;
  readonly hands: Hands;
}

// More readings of one move than anybody would look through.
const MOST_FOR_A_MOVE = 150;
// Piles may be dealt by the dozen; nobody cuts off more heaps than this.
const MOST_HEAPS = 4;

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
    // Values of one blank are made once, so that alike is the same.
    if (!(name in first) || args[name] !== first[name]) {
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
  // Only wordings inside one another can say the same twice.
  return ways.length < 2 || part.part === 'blank' || part.part === 'choice'
    ? ways
    : [...new Map(ways.map((way) => [JSON.stringify(way), way])).values()];
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

/** What makes sense in each type of blank on these piles, made once. */
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

/**
 * Fillings of a blank that make sense on these piles; a type that asks for names or cards of the note offers none. Numbers left open
 * stand for each number in them, since safe numbers are told one by one.
 */
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
