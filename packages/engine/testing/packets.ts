import type { AttributeValue, Card } from '../src/cards/card.ts';
import type { Trouble } from '../src/base/diagnostic.ts';
import {
  isStuck,
  START,
  type Key,
  type Move,
  type Option,
  type Phase,
  type TableView,
  type View,
} from '../src/moves/move.ts';
import { matchPhrase } from '../src/phrases/phrase.ts';
import { SAMPLE_NAMES } from '../src/phrases/blank.ts';
import { BLANKS } from '../src/phrases/blanks.ts';
import { tokenize, type Token } from '../src/phrases/tokens.ts';
import type { Args, Names } from '../src/phrases/values.ts';
import type { Action } from '../src/pictures/actions.ts';
import { applyOp, type BitKinds, type Effect } from '../src/pictures/effect.ts';
import { layoutOf, type Layout } from '../src/pictures/layout.ts';

/**
 * Small tables with real cards, written as text: `1 2^ 3'` is a packet from the top, ^ face up, ' ends exchanged,
 * `4(chosen)` with a mark; other piles are named, `packet: 1 2; pile 1: 3 4`, and so are numbers, `n = 3`.
 */
export interface LaidCard {
  readonly card: Card;
  /** `up`, `end` and marks that are set. */
  readonly bits: ReadonlySet<string>;
}

export interface Table {
  readonly piles: ReadonlyMap<string, readonly LaidCard[]>;
  readonly numbers: Readonly<Record<string, number>>;
}

const SUITS: Readonly<Record<string, string>> = { C: 'clubs', H: 'hearts', S: 'spades', D: 'diamonds' };
const COURTS: Readonly<Record<string, number>> = { A: 1, J: 11, Q: 12, K: 13 };

/** A number is a card of that value; `10C` has what such a card has. */
function attributesOf(name: string): Record<string, AttributeValue> {
  const pips = /^(A|[2-9]|10|J|Q|K)([CHSD])$/.exec(name);
  if (pips === null) return /^\d+$/.test(name) ? { value: Number(name) } : {};
  const value = COURTS[pips[1]] ?? Number(pips[1]);
  const suit = SUITS[pips[2]];
  return {
    rank: pips[1],
    suit,
    colour: suit === 'hearts' || suit === 'diamonds' ? 'red' : 'black',
    value,
    parity: value % 2 === 0 ? 'even' : 'odd',
    court: value > 10 ? 'court' : 'spot',
  };
}

export function parseTable(text: string): Table {
  const piles = new Map<string, LaidCard[]>();
  const numbers: Record<string, number> = {};
  let id = 0;
  for (const part of text.split(';')) {
    const number = /^\s*(\w+)\s*=\s*(\d+)\s*$/.exec(part);
    if (number !== null) {
      numbers[number[1]] = Number(number[2]);
      continue;
    }
    const [, name = 'packet', list] = /^\s*(?:([^:]+):)?\s*(.*?)\s*$/.exec(part) as RegExpExecArray;
    const cards = list === '' ? [] : list.split(/\s+/);
    piles.set(
      name.trim(),
      cards.map((word): LaidCard => {
        const read = /^([^^'()]+)(\^?)('?)((?:\([^()]+\))*)$/.exec(word);
        if (read === null) throw new Error(`card "${word}" in "${text}"`);
        const bits = new Set([...read[4].matchAll(/\(([^()]+)\)/g)].map((m) => m[1]));
        if (read[2] !== '') bits.add('up');
        if (read[3] !== '') bits.add('end');
        return { card: { id: id++, name: read[1], attributes: attributesOf(read[1]) }, bits };
      }),
    );
  }
  return { piles, numbers };
}

export function printTable({ piles, numbers }: Table): string {
  const printed = [...piles]
    .filter(([, cards]) => cards.length > 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, cards]) => [name, cards.map(printCard).join(' ')] as const);
  const parts =
    printed.length === 1 && printed[0][0] === 'packet'
      ? [printed[0][1]]
      : printed.map(([name, cards]) => `${name}: ${cards}`);
  return [...Object.entries(numbers).map(([name, n]) => `${name} = ${n}`), ...parts].join('; ');
}

function printCard({ card, bits }: LaidCard): string {
  const marks = [...bits].filter((bit) => bit !== 'up' && bit !== 'end').sort();
  return (
    card.name +
    (bits.has('up') ? '^' : '') +
    (bits.has('end') ? "'" : '') +
    marks.map((m) => `(${m})`).join('')
  );
}

export function layoutOfTable(table: Table): Layout {
  return layoutOf([...table.piles].map(([name, cards]) => [name, cards.length] as const));
}

/** Does one action card by card, as hands would; shares nothing with the engine's effect. */
export function act(table: Table, action: Action): Table {
  const piles = new Map<string, LaidCard[]>(
    [...table.piles].map(([name, cards]) => [name, [...cards]] as const),
  );
  if (action.do === 'mark') {
    const pile: LaidCard[] = piles.get(action.pile) ?? [];
    for (let k = 0; k < action.count; k++) {
      const { card, bits } = pile[action.at + k];
      const on = action.op === 'toggle' ? !bits.has(action.bit) : action.op === 'set';
      pile[action.at + k] = { card, bits: withBit(bits, action.bit, on) };
    }
    return { ...table, piles };
  }
  const source: LaidCard[] = piles.get(action.from) ?? [];
  const block: LaidCard[] = [];
  for (let k = 0; k < action.count; k++) {
    const { card } = source[action.at + k];
    let { bits } = source[action.at + k];
    if (action.turned !== undefined) bits = withBit(bits, 'up', !bits.has('up'));
    if (action.turned === 'end') bits = withBit(bits, 'end', !bits.has('end'));
    if (action.spun === true) bits = withBit(bits, 'end', !bits.has('end'));
    const flips = (action.turned === undefined ? 0 : 1) + (action.reversed === true ? 1 : 0);
    if (flips === 1) block.unshift({ card, bits });
    else block.push({ card, bits });
  }
  source.splice(action.at, action.count);
  const target: LaidCard[] = piles.get(action.to) ?? [];
  target.splice(action.into, 0, ...block);
  if (action.count > 0) piles.set(action.to, target);
  return { ...table, piles };
}

function withBit(bits: ReadonlySet<string>, bit: string, on: boolean): ReadonlySet<string> {
  const next = new Set(bits);
  if (on) next.add(bit);
  else next.delete(bit);
  return next;
}

/** Does the permutation and the changes of bits that the engine computed. */
export function applyEffect(table: Table, effect: Effect, kinds: BitKinds): Table {
  const before = layoutOfTable(table).names.flatMap((name) => table.piles.get(name) as readonly LaidCard[]);
  const piles = new Map<string, LaidCard[]>();
  let slot = 0;
  effect.after.names.forEach((name, i) => {
    const cards: LaidCard[] = [];
    for (let k = 0; k < effect.after.sizes[i]; k++, slot++) {
      const { card } = before[effect.from[slot]];
      let { bits } = before[effect.from[slot]];
      const word = effect.ops?.[slot] ?? 0;
      kinds.names.forEach((bit, kind) => {
        bits = withBit(bits, bit, applyOp(bits.has(bit) ? 1 : 0, (word >>> (2 * kind)) & 3) === 1);
      });
      cards.push({ card, bits });
    }
    piles.set(name, cards);
  });
  return { ...table, piles };
}

/** What a move that looks is shown. */
export function tableView(table: Table): TableView {
  const at = (pile: string, place: number): LaidCard => {
    const laid = table.piles.get(pile)?.[place];
    if (laid === undefined) throw new Error(`looked at a missing card: ${pile} ${place}`);
    return laid;
  };
  return {
    layout: layoutOfTable(table),
    cardAt: (pile, place) => at(pile, place).card,
    bitAt: (pile, place, bit) => (at(pile, place).bits.has(bit) ? 1 : 0),
  };
}

export function viewOf(move: Move, args: Args, table: Table, phase: Phase): View {
  const view: View = { layout: layoutOfTable(table), phase, numbers: table.numbers, seen: undefined };
  return move.looks === undefined
    ? view
    : { ...view, seen: move.looks.observe(args, tableView(table), view) };
}

/** One moment of a run: what was open and which option was taken. */
export interface Moment {
  readonly table: Table;
  readonly view: View;
  readonly options: readonly Option[];
  readonly taken: Option;
}

export interface Run {
  readonly moments: readonly Moment[];
  /** Keys of all options taken, forced ones included. */
  readonly keys: readonly Key[];
  readonly table: Table;
  readonly end: 'done' | 'endless' | { readonly stuck: Trouble };
}

/** Runs a move to its end; `choose` names the index of the option to take. */
export function runMove(
  move: Move,
  args: Args,
  start: Table,
  choose: (options: readonly Option[], moment: number) => number,
  most = 3000,
): Run {
  const moments: Moment[] = [];
  let table = start;
  let phase: Phase = START;
  const run = (end: Run['end']): Run => ({ moments, keys: moments.map((m) => m.taken.key), table, end });
  while (moments.length < most) {
    const view = viewOf(move, args, table, phase);
    const options = move.options(args, view);
    if (isStuck(options)) return run(options);
    const taken = options[choose(options, moments.length)];
    if (taken === undefined)
      throw new Error(`no such option in ${move.id}: ${options.map((o) => o.key).join(' ')}`);
    moments.push({ table, view, options, taken });
    for (const action of taken.actions) table = act(table, action);
    table = { ...table, numbers: { ...table.numbers, ...taken.set } };
    if (taken.next === null) return run('done');
    phase = taken.next;
  }
  return run('endless');
}

/** Reads a sentence as this move: every reading without troubles, defaults filled in. */
export function readAs(move: Move, sentence: string | readonly Token[], names: Names = SAMPLE_NAMES): Args[] {
  const tokens = typeof sentence === 'string' ? tokenize(sentence) : sentence;
  return move.phrases.flatMap((phrase) => {
    const match = matchPhrase(phrase, tokens, names, BLANKS);
    return match === null || match.troubles.length > 0 ? [] : [{ ...move.defaults, ...match.args }];
  });
}

/** The names of the laws' samples and those of a table. */
export function namesFor(table: Table): Names {
  const laid = [...table.piles.values()].flat();
  const marks = laid.flatMap(({ bits }) => [...bits]).filter((bit) => bit !== 'up' && bit !== 'end');
  return {
    ...SAMPLE_NAMES,
    piles: [...new Set([...SAMPLE_NAMES.piles, ...table.piles.keys()])],
    numbers: [...new Set([...SAMPLE_NAMES.numbers, ...Object.keys(table.numbers)])],
    marks: [...new Set([...SAMPLE_NAMES.marks, ...marks])],
    cards: [...new Set([...SAMPLE_NAMES.cards, ...laid.map(({ card }) => card.name)])],
  };
}

/** Does a sentence on a table; `choices` are the keys where there was more than one option. */
export function perform(move: Move, sentence: string, before: string, choices: readonly Key[]): Run {
  const table = parseTable(before);
  const [args] = readAs(move, sentence, namesFor(table));
  if (args === undefined) throw new Error(`${move.id} does not read "${sentence}"`);
  let next = 0;
  const run = runMove(move, args, table, (options) => {
    if (options.length === 1) return 0;
    const key = choices[next++];
    return options.findIndex((option) => option.key === key);
  });
  if (next !== choices.length && run.end === 'done')
    throw new Error(`"${sentence}" asked for ${next} choices, not ${choices.length}`);
  return run;
}

/** Everything a sentence can lead to on a table, each outcome once, printed; `stuck` among them where a way does not go on. */
export function everyOutcome(move: Move, sentence: string, before: string): Set<string> {
  const table = parseTable(before);
  const [args] = readAs(move, sentence, namesFor(table));
  if (args === undefined) throw new Error(`${move.id} does not read "${sentence}"`);
  const outcomes = new Set<string>();
  const seen = new Set<string>();
  const open: { readonly table: Table; readonly phase: Phase }[] = [{ table, phase: START }];
  for (let here = open.pop(); here !== undefined; here = open.pop()) {
    const place = `${here.phase} ${printTable(here.table)}`;
    if (seen.has(place)) continue;
    seen.add(place);
    const options = move.options(args, viewOf(move, args, here.table, here.phase));
    if (isStuck(options)) {
      outcomes.add('stuck');
      continue;
    }
    for (const { actions, next, set } of options) {
      const after = actions.reduce(act, here.table);
      const then = { ...after, numbers: { ...after.numbers, ...set } };
      if (next === null) outcomes.add(printTable(then));
      else open.push({ table: then, phase: next });
    }
  }
  return outcomes;
}
