import { describe, expect, test } from 'vitest';
import type { FreedomRow } from '../../src/insight/freedom/row.ts';
import { Freedom } from '../../src/insight/freedom/freedom.ts';
import { outcomeSet } from '../../src/insight/altering/outcome-set.ts';
import { withSteps, type Place } from '../../src/insight/altering/places.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { layoutOf } from '../../src/pictures/layout.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import type { MoveStep, Routine } from '../../src/routine/routine.ts';
import { judge } from '../naive/judge.ts';
import { Bits } from '../naive/table.ts';
import { sentenceAt } from '../naive/truth.ts';
import { TooBig, walkAll } from '../naive/walk.ts';

// Every row against every performance with it put in, by brute force. What would take more tables than this is left to other tests.
const MOST_NODES = 900;

function routineOf(setUp: string, working: readonly string[], ending: string): Routine {
  const steps = working.map((step, i) => `${i + 1}. ${step}`).join('\n');
  const text = `## Set-up\n\n- packet: ${setUp}\n\n## Working\n\n${steps}\n\n## Ending\n\n- ${ending}\n`;
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(`${text}\n${JSON.stringify(diagnostics)}`);
  return routine;
}

/** Whether every performance comes to its end with all sentences true; null where there are too many to try. */
function holdsNaively(routine: Routine): boolean | null {
  const bits = new Bits();
  try {
    const walks = walkAll(routine, MOST_NODES, bits);
    return routine.endings.every(
      ({ sentence }) => judge(walks, sentenceAt(sentence), bits).verdict === 'proved',
    );
  } catch (error) {
    if (error instanceof TooBig) return null;
    throw error;
  }
}

function opened(routine: Routine) {
  const freedom = Freedom.of(routine, decide(routine), DEFAULT_LIMITS);
  if (!freedom.ok) throw new Error(JSON.stringify(freedom.error));
  return freedom.value;
}

const ROUTINES: readonly (readonly [string, Routine])[] = [
  [
    '8 cards: deals and a milk, mirror pairs',
    routineOf(
      '8 cards alternately red and black, face down',
      ['Deal the packet into 2 piles.', 'Gather the piles left on right.', 'Milk the packet.'],
      'Every pair differs in colour.',
    ),
  ],
  [
    '7 cards: faces counted after fixed rounds',
    routineOf(
      'AC 2H 3S 4D 5C 6H 7S, face down',
      ['2 times: turn over the top 2 together, then cut the packet at 3.', 'Turn over the top card.'],
      'An odd number of cards are face up.',
    ),
  ],
  [
    '6 cards: rounds without end, a place met again and again',
    routineOf(
      '6 cards alternately red and black, face down',
      ['Any number of times: out-faro the packet.', 'Cut the packet at half.'],
      'The top card and the bottom card differ in colour.',
    ),
  ],
  [
    '5 cards: two piles on the table',
    routineOf(
      '5 cards, face down',
      ['Deal 2 cards to the table.', 'Turn the table over.', 'Put the table beneath the packet.'],
      'Exactly 2 cards are face up.',
    ),
  ],
];

describe.each(ROUTINES)('%s', (_name, routine) => {
  const freedom = opened(routine);

  test('every row is what brute force finds', { timeout: 300_000 }, () => {
    const rows = freedom.places.flatMap((place) =>
      [...freedom.at(place)].map(({ text, steps, verdict }) => ({
        said: `${place.id}: ${text} ${verdict}`,
        isSafe: verdict === 'safe',
        isTrue: holdsNaively(withSteps(routine, place, steps)),
      })),
    );
    const tried = rows.filter(({ isTrue }) => isTrue !== null);
    expect(tried.filter(({ isSafe, isTrue }) => isSafe !== isTrue)).toEqual([]);
    expect(rows.length).toBeGreaterThan(300);
    expect(tried.length / rows.length).toBeGreaterThan(0.65);
  });
});

/** Those of some rows with which brute force finds a performance that fails; some of them have to be small enough to be tried. */
function failing(routine: Routine, place: Place, rows: readonly FreedomRow[]): string[] {
  const tried = rows.map(({ text, steps }) => ({ text, is: holdsNaively(withSteps(routine, place, steps)) }));
  expect(tried.filter(({ is }) => is !== null).length).toBeGreaterThan(10);
  return tried.flatMap(({ text, is }) => (is === false ? [text] : []));
}

/** What steps can do, as far as a sentence about colours can tell: where every card ends. */
function placesAfter(steps: readonly MoveStep[], cards: number): string | null {
  const all = outcomeSet(steps, layoutOf([['packet', cards]]), 150);
  return all === null
    ? null
    : [...new Set([...all].map((one) => one.replace(/\|.*$/s, '')))].sort().join('/');
}

describe('moves one after the other', () => {
  const cards = 6;
  const routine = routineOf(
    `${cards} cards alternately red and black, face down`,
    ['Deal the packet into 2 piles.', 'Gather the piles left on right.', 'Milk the packet.'],
    'Every pair differs in colour.',
  );
  const freedom = opened(routine);
  const [place] = freedom.places;
  const rows = [...freedom.at(place)];
  const found = { 2: [...freedom.sequences(place, 2)], 3: [...freedom.sequences(place, 3)] };

  test.each([2, 3] as const)('%i of them are safe where it says so', { timeout: 120_000 }, (moves) => {
    expect(found[moves].length).toBeGreaterThan(10);
    expect(failing(routine, place, found[moves].slice(0, 250))).toEqual([]);
  });

  test('no two that are safe together are missed', { timeout: 120_000 }, () => {
    const said = new Set(found[2].map(({ text }) => text));
    const known = new Set([...rows, ...found[2]].map(({ steps }) => placesAfter(steps, cards)));
    const nothing = placesAfter([], cards);
    const pairs = rows
      .filter(({ verdict }) => verdict !== 'safe')
      .slice(0, 40)
      .flatMap((first) =>
        rows.map((second) => ({
          text: `${first.text.slice(0, -1)}; ${second.text}`,
          steps: [...first.steps, ...second.steps],
        })),
      )
      .map((pair) => ({ ...pair, isSafe: freedom.try(place, pair.text, pair.steps)?.verdict === 'safe' }));
    expect(pairs.filter(({ isSafe, text }) => !isSafe && said.has(text))).toEqual([]);
    // Left out because they do nothing, or what is said already.
    const left = pairs.filter(({ isSafe, text }) => isSafe && !said.has(text));
    expect(left.length).toBeGreaterThan(0);
    const does = left.map(({ text, steps }) => ({ text, does: placesAfter(steps, cards) }));
    expect(does.filter((one) => one.does === null || !(one.does === nothing || known.has(one.does)))).toEqual(
      [],
    );
  });

  test('a place that comes round again: each round does both', { timeout: 120_000 }, () => {
    const [, looped] = ROUTINES[2];
    const again = opened(looped);
    const inside = again.places.find(({ inside: block }) => block !== undefined);
    if (inside === undefined) throw new Error('there is a repetition');
    const pairs = [...again.sequences(inside, 2)].slice(0, 120);
    expect(pairs.length).toBeGreaterThan(0);
    expect(failing(looped, inside, pairs)).toEqual([]);
  });
});
