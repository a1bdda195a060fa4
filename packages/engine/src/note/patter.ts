import { diagnostic, type Diagnostic } from '../base/diagnostic.ts';
import { readAmount } from '../phrases/blanks/amount.ts';
import { numberIn, tokenize, type Token } from '../phrases/tokens.ts';
import type { Amount, ArgValue } from '../phrases/values.ts';
import type { MoveStep, RepeatStep, Step } from '../routine/routine.ts';
import { saysAt } from './line.ts';
import { NO_NAMES } from './names.ts';
import type { OutlineItem } from './outline.ts';

/** One side of what a choice is kept to. A free choice goes from none, or one, to all there are. */
export type Bound =
  | { readonly bound: 'least' | 'most'; readonly n: number }
  | { readonly bound: 'multiple'; readonly k: number; readonly plus: number }
  | { readonly bound: 'not on top' | 'not to the bottom' };

/** A step that leaves a spectator a choice, and what keeps that choice within bounds. */
export interface BoundStep {
  readonly step: MoveStep | RepeatStep;
  readonly bounds: readonly Bound[];
}

const MIDDLE: readonly Bound[] = [{ bound: 'not on top' }, { bound: 'not to the bottom' }];

const PLACES: readonly { readonly words: string; readonly bounds: readonly Bound[] }[] = [
  ...['right to the bottom', 'to the very bottom', 'to the bottom', 'at the bottom', 'on the bottom'].map(
    (words) => ({ words: `not ${words}`, bounds: [MIDDLE[1]] }),
  ),
  ...['on top', 'back on top', 'on the top', 'to the top', 'at the top'].map((words) => ({
    words: `not ${words}`,
    bounds: [MIDDLE[0]],
  })),
  { words: 'in the middle', bounds: MIDDLE },
  { words: 'into the middle', bounds: MIDDLE },
  { words: 'two by two', bounds: [{ bound: 'multiple', k: 2, plus: 0 }] },
  { words: 'two at a time', bounds: [{ bound: 'multiple', k: 2, plus: 0 }] },
  { words: 'in pairs', bounds: [{ bound: 'multiple', k: 2, plus: 0 }] },
];
const PLACE_WORDS = PLACES.map(({ words, bounds }) => ({
  words: tokenize(words).map(({ text }) => text),
  bounds,
}));

/** What a line of patter keeps a choice to: `not right to the bottom`, `at least three`, `between ten and nineteen`. */
export function boundsSaid(patter: string): Bound[] {
  // What is spoken often stands in quotes, which would make a name of it.
  const tokens = tokenize(patter.replace(/["“”]/g, ' '));
  const found: Bound[] = [];
  tokens.forEach((token, at) => {
    const place = PLACE_WORDS.find(({ words }) => saysAt(tokens, at, words));
    if (place !== undefined && !isDenied(tokens, at, place.bounds)) found.push(...place.bounds);
    for (const { value } of readAmount(tokens, at, NO_NAMES)) found.push(...boundsOfAmount(value));
    found.push(...sayAfter(tokens, at));
    // `not back on top and not right to the bottom` in one breath: `neither on top nor at the bottom`.
    if (token.text === 'neither') found.push(...(sayNeither(tokens, at) ? MIDDLE : []));
  });
  return distinct(found);
}

/** `not in the middle` keeps nothing to the middle. */
function isDenied(tokens: readonly Token[], at: number, bounds: readonly Bound[]): boolean {
  return bounds.length > 1 && tokens[at - 1]?.text === 'not';
}

function sayNeither(tokens: readonly Token[], at: number): boolean {
  const rest = tokens.slice(at, at + 8).map(({ text }) => text);
  return rest.includes('top') && rest.includes('nor') && rest.includes('bottom');
}

/** `five letters at least`, `ten at most`. */
function sayAfter(tokens: readonly Token[], at: number): Bound[] {
  const n = numberIn(tokens[at]);
  if (n === undefined || tokens[at - 1]?.text === 'least' || tokens[at - 1]?.text === 'most') return [];
  for (let next = at + 1; next <= at + 3; next++) {
    // `two, at most three` keeps nothing to two.
    if (numberIn(tokens[next + 2]) !== undefined) return [];
    if (saysAt(tokens, next, ['at', 'least'])) return from(n);
    if (saysAt(tokens, next, ['at', 'most'])) return upTo(n);
  }
  return [];
}

function boundsOfAmount(amount: Amount): Bound[] {
  switch (amount.of) {
    case 'range':
      return [...from(amount.from), ...upTo(amount.to)];
    case 'at least':
      return from(amount.n);
    case 'at most':
      return upTo(amount.n);
    case 'multiple':
      return [{ bound: 'multiple', k: amount.k, plus: amount.plus }];
    case 'any':
    case 'exactly':
    case 'half':
      return [];
  }
}

// To take some, one at least, goes without saying.
function from(n: unknown): Bound[] {
  return typeof n === 'number' && n > 1 ? [{ bound: 'least', n }] : [];
}

function upTo(n: unknown): Bound[] {
  return typeof n === 'number' ? [{ bound: 'most', n }] : [];
}

/** The choice that a step leaves to a spectator; null where it leaves none of a kind that patter could bound. */
export function boundsOfStep(step: Step): BoundStep | null {
  if (step.do === 'repeat') {
    if (step.who !== 'spectator' || step.times.of === 'exactly') return null;
    return { step, bounds: step.times.of === 'at least' ? from(step.times.n) : [] };
  }
  if (step.do !== 'move' || step.who !== 'spectator') return null;
  const { args } = step;
  const bounds: Bound[] = [];
  let isOpen = false;
  for (const value of Object.values(args)) {
    const amount = amountIn(value);
    if (amount === null) continue;
    isOpen = true;
    bounds.push(
      ...(amount === 'in the middle' ? MIDDLE : amount === 'anywhere' ? [] : boundsOfAmount(amount)),
    );
  }
  if (typeof args.call === 'string' && 'from' in args && 'to' in args) {
    isOpen = true;
    bounds.push(...from(args.from), ...upTo(args.to));
    if (args.kind === 'an even number') bounds.push({ bound: 'multiple', k: 2, plus: 0 });
    if (args.kind === 'an odd number') bounds.push({ bound: 'multiple', k: 2, plus: 1 });
  }
  return isOpen ? { step, bounds: distinct(bounds) } : null;
}

/** The amount a blank leaves open, or where something may go; null for a blank without a choice. */
function amountIn(value: ArgValue): Amount | 'in the middle' | 'anywhere' | null {
  if (value === 'in the middle' || value === 'anywhere') return value;
  if (typeof value !== 'object' || Array.isArray(value)) return null;
  const amount = 'of' in value ? value : 'cards' in value ? value.cards : null;
  return amount === null || amount.of === 'exactly' || amount.of === 'half' ? null : amount;
}

/** An item of the working with the choices of its steps, and all that is said beside it. */
export interface Bounded {
  readonly item: OutlineItem;
  readonly steps: readonly BoundStep[];
  /** The patter beside it and beside the blocks it is in. */
  readonly lines: readonly string[];
}

/** All items that leave a choice, inner ones after the block they belong to; what is said beside a block is said of what is in it. */
export function boundedItems(outline: readonly OutlineItem[], around: readonly string[] = []): Bounded[] {
  return outline.flatMap((item) => {
    const lines = [...item.patter, ...around];
    const steps = item.steps.flatMap((step) => movesIn(step)).flatMap((step) => boundsOfStep(step) ?? []);
    return [...(steps.length > 0 ? [{ item, steps, lines }] : []), ...boundedItems(item.items, lines)];
  });
}

/** A step with those that stand in the same line. */
function movesIn(step: Step): Step[] {
  switch (step.do) {
    case 'move':
      return [step];
    case 'repeat':
    case 'each':
      return [step, ...step.body.flatMap(movesIn)];
    case 'either':
      return step.branches.flat().flatMap(movesIn);
    case 'if':
      return [...step.then, ...step.otherwise].flatMap(movesIn);
  }
}

/** Where the patter beside a step keeps the spectator to more than the step does. */
export function patterTroubles(outline: readonly OutlineItem[]): Diagnostic[] {
  return boundedItems(outline).flatMap(({ item, steps }) => {
    const kept = steps.flatMap(({ bounds }) => bounds);
    const own = distinct(item.patter.flatMap(boundsSaid)).filter(
      (one) => !kept.some((bound) => isSame(one, bound)),
    );
    if (own.length === 0 || item.sentence === null) return [];
    const said = own.map(sayBound);
    return [diagnostic('patter-not-kept', item.sentence.range, { said }, { severity: 'warning' })];
  });
}

export function sayBound(bound: Bound): string {
  switch (bound.bound) {
    case 'least':
      return `at least ${bound.n}`;
    case 'most':
      return `at most ${bound.n}`;
    case 'multiple':
      if (bound.k === 2) return bound.plus === 0 ? 'an even number' : 'an odd number';
      return `a multiple of ${bound.k}`;
    case 'not on top':
      return 'not back on top';
    case 'not to the bottom':
      return 'not right to the bottom';
  }
}

export function isSame(a: Bound, b: Bound): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function distinct(bounds: readonly Bound[]): Bound[] {
  return bounds.filter((one, i) => bounds.findIndex((other) => isSame(one, other)) === i);
}
