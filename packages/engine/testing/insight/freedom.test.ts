import { describe, expect, test } from 'vitest';
import { Freedom } from '../../src/insight/freedom/freedom.ts';
import { sayPlace, withSteps } from '../../src/insight/altering/places.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import type { Routine, Step } from '../../src/routine/routine.ts';
import { holdsAlways } from './altered.ts';

function routineOf(setUp: string, working: string, ending: string): Routine {
  const text = `## Set-up\n\n- packet: ${setUp}\n\n## Working\n\n${working.trim()}\n\n## Ending\n\n- ${ending}\n`;
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(`${text}\n${JSON.stringify(diagnostics)}`);
  return routine;
}

// Loops, branches, fixed numbers of rounds, places met with different piles, and plain lists.
const ROUTINES: readonly (readonly [string, Routine])[] = [
  [
    'turnover for ever, then a count',
    routineOf(
      '4 cards alternately red and black, face down',
      `
1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.
2. Deal the packet into a pile, turning every second card.
`,
      'Exactly 2 cards are face up.',
    ),
  ],
  [
    'turnover, a deal, and faces that tell',
    routineOf(
      '4 cards alternately red and black, face down',
      `
1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.
2. Deal the packet into 2 piles.
3. Gather the piles left on right.
4. Milk the packet.
`,
      'Every pair faces the same way exactly when it differs in colour.',
    ),
  ],
  [
    'a deal and a riffle',
    routineOf(
      '4 cards alternately red and black, face down',
      `
1. Cut the packet.
2. Deal any number of cards to the table and riffle the two packets together.
`,
      'Every pair differs in colour.',
    ),
  ],
  [
    'two rounds, then one way or another',
    routineOf(
      'AC 2H 2C AS, face down',
      `
1. 2 times:
   1. Out-faro the packet.
2. Either:
   - Turn the packet over.
   - Deal the packet into a pile; Turn the top card over in place.
`,
      'Every mirror pair agrees in value.',
    ),
  ],
  [
    'a cut in two steps: the piles differ',
    routineOf(
      '4 cards alternately red and black, face down',
      `
1. Cut off any number of cards.
2. Put the table beneath the packet.
`,
      'The top card and the bottom card differ in colour.',
    ),
  ],
  [
    'kinds and faces counted',
    routineOf(
      'AC 2H 3S 4D, face down',
      `
1. At least once:
   1. Turn over the top 2 cards.
   2. Cut the packet at 2.
`,
      'There are as many face-up red cards as face-up black cards.',
    ),
  ],
  [
    'no equation: one of two',
    routineOf(
      '4 cards alternately red and black, face down',
      `
1. Cut the packet.
2. Cut the packet at 2.
`,
      'The top card is red or the 2nd card is red.',
    ),
  ],
];

function inserted(steps: readonly Step[]): ReadonlySet<unknown> {
  return new Set<unknown>(steps);
}

describe.each(ROUTINES)('%s', (_name, routine) => {
  const decision = decide(routine);
  const freedom = Freedom.of(routine, decision, DEFAULT_LIMITS);
  if (!freedom.ok) throw new Error(`not proved: ${decision.verdict}`);

  test('is proved, and something is free and something is not', () => {
    expect(decision.verdict).toBe('proved');
    const verdicts = new Set(
      freedom.value.places.flatMap((place) => [...freedom.value.at(place)].map((row) => row.verdict)),
    );
    expect([...verdicts]).toEqual(expect.arrayContaining(['safe', 'unsafe']));
    expect([...verdicts]).not.toContain('undecided');
  });

  test.each(freedom.value.places.map((place) => [sayPlace(place), place] as const))(
    '%s: every mix is safe exactly when no performance with it fails',
    (_where, place) => {
      for (const row of freedom.value.at(place)) {
        const altered = withSteps(routine, place, row.steps);
        const isSafe = holdsAlways(altered);
        const said = `${row.text} ${row.verdict}`;
        expect(`${said} ${isSafe}`).toBe(`${said} ${row.verdict === 'safe'}`);
        expect(`${row.text} ${decide(altered).verdict}`).toBe(`${row.text} ${isSafe ? 'proved' : 'refuted'}`);
      }
    },
  );

  test.each(freedom.value.places.map((place) => [sayPlace(place), place] as const))(
    '%s: every choice of a mix is safe exactly when no performance with it fails',
    (_where, place) => {
      for (const { text, steps, which } of freedom.value.at(place))
        for (const { keys, words, isSafe } of which?.choices ?? []) {
          const isTrue = holdsAlways(withSteps(routine, place, steps), inserted(steps), keys, which?.first);
          expect(`${text} ${words}: ${isTrue}`).toBe(`${text} ${words}: ${isSafe}`);
        }
    },
  );

  test('a sentence narrowed to the safe numbers is safe', () => {
    for (const place of freedom.value.places)
      for (const { which } of freedom.value.at(place)) {
        if (which === null || which.narrowed === null) continue;
        const { text, steps } = which.narrowed;
        expect(`${text} ${holdsAlways(withSteps(routine, place, steps))}`).toBe(`${text} true`);
        expect(freedom.value.try(place, text, steps)?.verdict).toBe('safe');
      }
  });
});
