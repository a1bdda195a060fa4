import { FreedomMemory } from '../packages/engine/src/insight/freedom/memory.ts';
import { Freedom } from '../packages/engine/src/insight/freedom/freedom.ts';
import type { Place } from '../packages/engine/src/insight/altering/places.ts';
import { DEFAULT_LIMITS } from '../packages/engine/src/proving/question.ts';
import { cpuMs } from './clock.ts';
import { mirrorPairs } from './scenarios.ts';
import { compiled, decided } from './subjects.ts';
import { drawn, ms } from './tables.ts';
import type { Target } from './targets.ts';

const TURNS = 3;

interface Row {
  readonly cards: number;
  readonly moments: number;
  readonly rows: number;
  /** Milliseconds until the first row of a moment is there. */
  readonly first: number;
  /** The list of one moment with piles of sizes not met before. */
  readonly one: number;
  /** The lists of all moments, with nothing remembered. */
  readonly all: number;
  /** Deciding an edited note and listing all its moments, with the note before the edit remembered. */
  readonly edited: number;
  /** The shortest failure of one unsafe row. */
  readonly failure: number;
}

function opened(text: string, memory: FreedomMemory): Freedom {
  const routine = compiled(text);
  const freedom = Freedom.of(routine, decided(routine, 'proved'), DEFAULT_LIMITS, memory);
  if (!freedom.ok) throw new Error(freedom.error.code);
  return freedom.value;
}

function placeIn(freedom: Freedom, id: string): Place {
  const place = freedom.places.find((one) => one.id === id);
  if (place === undefined) throw new Error(`no place ${id}`);
  return place;
}

function listAll(freedom: Freedom): number {
  let rows = 0;
  for (const place of freedom.places) for (const _ of freedom.at(place)) rows++;
  return rows;
}

function timed<T>(run: () => T): { readonly value: T; readonly taken: number } {
  const started = cpuMs();
  const value = run();
  return { value, taken: cpuMs() - started };
}

/** One turn: everything is worked out anew, only the program is warm. */
function turn(cards: number): Row {
  const [text, edited] = [
    mirrorPairs(cards),
    mirrorPairs(cards, 'Exchange the top card and the bottom card.'),
  ];
  const fresh = opened(text, new FreedomMemory());
  const first = timed(() => fresh.at(placeIn(fresh, '3')).next());
  const rest = timed(() => [...fresh.at(placeIn(fresh, '3'))]);
  const unsafe = rest.value.find(({ verdict }) => verdict === 'unsafe');
  if (unsafe === undefined) throw new Error('everything is safe');
  const failure = timed(() => fresh.performanceWith(placeIn(fresh, '3'), unsafe.steps));
  if (failure.value.verdict !== 'refuted') throw new Error('an unsafe row does not fail');
  const memory = new FreedomMemory();
  const all = timed(() => listAll(opened(text, memory)));
  const again = timed(() => listAll(opened(edited, memory)));
  return {
    cards,
    moments: fresh.places.length,
    rows: all.value,
    first: first.taken,
    one: first.taken + rest.taken,
    all: all.taken,
    edited: again.taken,
    failure: failure.taken,
  };
}

function median(cards: number): Row {
  turn(cards);
  const turns = Array.from({ length: TURNS }, () => turn(cards));
  const of = (figure: (row: Row) => number): number => turns.map(figure).sort((a, b) => a - b)[TURNS >> 1];
  return {
    ...turns[0],
    first: of(({ first }) => first),
    one: of(({ one }) => one),
    all: of(({ all }) => all),
    edited: of(({ edited }) => edited),
    failure: of(({ failure }) => failure),
  };
}

/** How long it takes to say what else could be done, everywhere in a note of ten steps. */
export function freedomSuite(): Target[] {
  const rows = [16, 52].map(median);
  console.log(
    `\n${drawn(
      ['freedom, ms', 'moments', 'rows', 'first row', 'one moment', 'all', 'after an edit', 'a failure'],
      rows.map(({ cards, moments, rows: count, first, one, all, edited, failure }) => [
        `${cards} cards, 10 steps`,
        String(moments),
        String(count),
        ms(first),
        ms(one),
        ms(all),
        ms(edited),
        ms(failure),
      ]),
    )}`,
  );
  const [small, large] = rows;
  const time = (what: string, limit: number, found: number): Target => ({ what, limit, unit: 'ms', found });
  return [
    time('freedom, 16 cards, 10 steps: the list of every moment', 300, small.all),
    time('freedom, 52 cards, 10 steps: the list of every moment', 3000, large.all),
    time('freedom, 52 cards: the first row of a moment', 100, large.first),
  ];
}
