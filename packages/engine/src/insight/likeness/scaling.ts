import type { Card } from '../../cards/card.ts';
import { RANKS } from '../../cards/names.ts';
import { compileInside, type CompiledInside } from '../../note/compile.ts';
import { read } from '../../note/read.ts';
import { readSetUp, printSetUp } from '../../note/setup.ts';
import type { PileLine, SetUpLine, What } from '../../note/setup-syntax.ts';

/** A note whose set-up can be written for other numbers of cards. */
export interface Scaled {
  /** Cards as the note has them. */
  readonly cards: number;
  /** What was taken for what grows along: `6 stands for half the packet`. */
  readonly words: readonly string[];
  /** The note with so many cards; null where the set-up cannot be written for them. */
  readonly at: (cards: number) => string | null;
}

/** Whether numbers of the ending (and large ones of the working) that are the packet, half of it or its middle grow along. */
export type NumbersTaken = 'scaled' | 'kept';

/** How the note can be written for other numbers of cards; or why not. */
export function scaling(text: string, numbers: NumbersTaken): Scaled | 'named one by one' | 'of one size' {
  const inside = compileInside(read(text), false);
  const { setUp, lines } = inside;
  if (setUp === null || setUp.lines.length !== lines.length) return 'of one size';
  const cards = setUp.cards.length;
  const piles = setUp.lines.filter((line): line is PileLine => line.is === 'pile');
  const runs = piles.flatMap((line) => line.runs.map(({ what }) => what));
  const general = runs.map((what, i) => generalOf(what, cardsOf(runs, i, setUp.cards)) ?? what);
  const growing = general.map(isGrowing);
  // Where cards that grow in number lie among others, the others stay: only one stretch may grow then.
  const many = growing.filter(Boolean).length;
  if (many === 0) return runs.some(({ is }) => is === 'cards') ? 'named one by one' : 'of one size';
  const fixed = general.reduce((sum, what, i) => sum + (growing[i] ? 0 : sizeOf(what)), 0);
  if (fixed > 0 && many > 1) return 'of one size';
  const places = numbers === 'scaled' ? numbersIn(text, inside, cards) : [];
  const was = general.reduce((sum, what, i) => sum + (growing[i] ? sizeOf(what) : 0), 0);
  const at = (n: number): string | null => {
    let k = 0;
    const made = setUp.lines.map((line): SetUpLine | null => {
      if (line.is !== 'pile') return line;
      const grown = line.runs.map((run) => {
        const i = k++;
        if (!growing[i]) return general[i] === run.what ? run : { ...run, what: general[i] };
        const size = (sizeOf(general[i]) * (n - fixed)) / was;
        const what = Number.isInteger(size) && size >= 0 ? sized(general[i], size) : null;
        return what === null ? null : { ...run, what };
      });
      return grown.some((run) => run === null)
        ? null
        : { ...line, runs: grown.filter((run) => run !== null) };
    });
    if (made.some((line) => line === null)) return null;
    const printed = printSetUp({ lines: made.filter((line) => line !== null) });
    const edits = [
      ...printed.map((line, i) => ({ from: lines[i].from, to: lines[i].to, text: line })),
      ...places.map((place) => ({ from: place.from, to: place.to, text: grownNumber(place, n) })),
    ];
    if (edits.some((edit) => edit.text === null)) return null;
    return rewritten(text, edits);
  };
  // What is written must mean the same at the note's own size.
  const own = at(cards);
  if (own === null || compileInside(read(own), false).compiled.routine === undefined) return 'of one size';
  const forSize = (n: number): string | null => (n === cards ? text : at(n));
  return { cards, words: [...generalWords(runs, general), ...numberWords(places)], at: forSize };
}

/** The cards of one run, among those of all. */
function cardsOf(runs: readonly What[], index: number, cards: readonly Card[]): readonly Card[] {
  const from = runs.slice(0, index).reduce((sum, what) => sum + sizeOf(what), 0);
  return cards.slice(from, from + sizeOf(runs[index]));
}

/** Cards named one by one that keep coming round in colour or suit, as a pattern; undefined for other runs. */
function generalOf(what: What, cards: readonly Card[]): What | undefined {
  if (what.is !== 'cards' || what.cards.some(({ up, end }) => up || end)) return undefined;
  for (const attribute of ['colour', 'suit'] as const) {
    const values = cards.map((card) => card.attributes[attribute]);
    for (let k = 2; k <= cards.length / 2; k++) {
      const round = values.slice(0, k);
      if (round.some((value) => value === undefined) || new Set(round).size < k) continue;
      if (!values.every((value, i) => value === round[i % k])) continue;
      const elements = round.map((value) => ({
        tests: [{ attribute, value: value ?? '' }],
        ref: null,
        facing: null,
      }));
      return { is: 'pattern', style: 'repeated', n: cards.length, tests: [], elements };
    }
  }
  return undefined;
}

function isGrowing(what: What): boolean {
  switch (what.is) {
    case 'count':
    case 'each':
    case 'copies':
      return what.n > 1;
    case 'pattern':
      return what.style !== 'once';
    case 'ranks':
    case 'order':
      return true;
    case 'mates':
      return what.base.is !== 'cards' && isGrowing(what.base);
    case 'cards':
    case 'set':
    case 'rest':
      return false;
  }
}

/** So many cards lie in the run; sets of a pack are as large as they are. */
function sizeOf(what: What): number {
  switch (what.is) {
    case 'count':
    case 'each':
    case 'copies':
    case 'order':
      return what.n;
    case 'pattern':
      return what.style === 'once' ? what.elements.length : what.n;
    case 'ranks':
      return Math.abs(RANKS.indexOf(what.to) - RANKS.indexOf(what.from)) + 1;
    case 'mates':
      return 2 * sizeOf(what.base);
    case 'cards':
      return what.cards.length;
    case 'set':
    case 'rest':
      return readSetUp([
        {
          text: `packet: ${printSetUp({ lines: [lineOf(what)] })[0].replace(/^packet: /, '')}, in any order`,
          from: 0,
        },
      ]).cards.length;
  }
}

function lineOf(what: What): PileLine {
  const range = { from: 0, to: 0 };
  return {
    is: 'pile',
    pile: 'packet',
    runs: [{ what, range }],
    starts: [],
    spans: [],
    all: [],
    packs: 1,
    range,
  };
}

/** The same run with so many cards; null where there is none. */
function sized(what: What, n: number): What | null {
  if (n === 0) return null;
  switch (what.is) {
    case 'count':
    case 'each':
    case 'copies':
      return { ...what, n };
    case 'order':
      return n > 52 ? null : { ...what, n };
    case 'pattern':
      // A round is not broken off: the last card would not be what the pattern says.
      return what.style === 'repeated' && n % what.elements.length !== 0 ? null : { ...what, n };
    case 'ranks': {
      const first = RANKS.indexOf(what.from);
      const isUp = RANKS.indexOf(what.to) >= first;
      const last = isUp ? first + n - 1 : first - n + 1;
      return last < 0 || last >= RANKS.length ? null : { ...what, to: RANKS[last] };
    }
    case 'mates': {
      if (n % 2 !== 0 || what.base.is === 'cards') return null;
      const base = sized(what.base, n / 2);
      return base === null || (base.is !== 'ranks' && base.is !== 'count') ? null : { ...what, base };
    }
    case 'cards':
    case 'set':
    case 'rest':
      return null;
  }
}

type Share = 'packet' | 'half' | 'middle';

interface NumberPlace {
  readonly from: number;
  readonly to: number;
  readonly of: Share;
  readonly written: string;
  readonly ordinal: boolean;
}

// A small number in the working is seldom a share of the packet.
const LEAST_IN_WORKING = 4;

/** Numbers that are the packet, half of it or its middle, where they stand in sentences of the working and the ending. */
function numbersIn(text: string, { steps, endings }: CompiledInside, cards: number): NumberPlace[] {
  const places: NumberPlace[] = [];
  const look = (from: number, to: number, least: number): void => {
    for (const match of text.slice(from, to).matchAll(/\b(\d+)(st|nd|rd|th)?\b/g)) {
      const n = Number(match[1]);
      const of = n < least ? undefined : shareOf(n, cards, match[2] !== undefined);
      if (of === undefined) continue;
      const at = from + match.index;
      places.push({
        from: at,
        to: at + match[0].length,
        of,
        written: match[0],
        ordinal: match[2] !== undefined,
      });
    }
  };
  for (const { range } of endings) look(range.from, range.to, 2);
  const inside = (list: CompiledInside['steps']): void => {
    for (const step of list) {
      look(step.range.from, step.range.to, LEAST_IN_WORKING);
      if ('body' in step) inside(step.body);
      if (step.do === 'either') step.branches.forEach(inside);
      if (step.do === 'if') [step.then, step.otherwise].forEach(inside);
    }
  };
  inside(steps);
  const sorted = places.sort((a, b) => a.from - b.from || b.to - a.to);
  return sorted.filter(({ from }, i) => i === 0 || from >= sorted[i - 1].to);
}

function shareOf(n: number, cards: number, ordinal: boolean): Share | undefined {
  if (n === cards) return 'packet';
  if (2 * n === cards) return 'half';
  return ordinal && 2 * n - 1 === cards ? 'middle' : undefined;
}

function grown(of: Share, cards: number): number | null {
  const n = of === 'packet' ? cards : of === 'half' ? cards / 2 : (cards + 1) / 2;
  return Number.isInteger(n) ? n : null;
}

function grownNumber({ of, ordinal }: Pick<NumberPlace, 'of' | 'ordinal'>, cards: number): string | null {
  const n = grown(of, cards);
  return n === null ? null : `${n}${ordinal ? ordinalEnd(n) : ''}`;
}

function ordinalEnd(n: number): string {
  if (n % 100 > 10 && n % 100 < 14) return 'th';
  return ['th', 'st', 'nd', 'rd'][n % 10] ?? 'th';
}

function generalWords(runs: readonly What[], general: readonly What[]): string[] {
  return general.flatMap((what, i) =>
    what === runs[i]
      ? []
      : [
          `the cards named one by one stand for ${printSetUp({ lines: [lineOf(what)] })[0].replace(/^packet: /, '')}`,
        ],
  );
}

const SHARES: Readonly<Record<Share, string>> = {
  packet: 'the whole packet',
  half: 'half the packet',
  middle: 'the middle of the packet',
};

function numberWords(places: readonly NumberPlace[]): string[] {
  return [
    ...new Map(
      places.map(({ of, written }) => [`${of} ${written}`, `${written} stands for ${SHARES[of]}`]),
    ).values(),
  ];
}

function rewritten(
  text: string,
  edits: readonly { readonly from: number; readonly to: number; readonly text: string | null }[],
): string {
  let result = '';
  let at = 0;
  for (const edit of [...edits].sort((a, b) => a.from - b.from)) {
    result += text.slice(at, edit.from) + (edit.text ?? '');
    at = edit.to;
  }
  return result + text.slice(at);
}
