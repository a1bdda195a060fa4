import { describe, expect, test } from 'vitest';
import { compile } from '../note/compile.ts';
import { read } from '../note/read.ts';
import { decide } from '../proving/decide.ts';
import { momentsOf } from '../proving/moments.ts';
import { DEFAULT_LIMITS } from '../proving/question.ts';
import type { Routine } from '../routine/routine.ts';
import { slotView } from '../routine/table.ts';
import type { StartTable } from '../routine/starts.ts';
import { isTrueOf } from './equation.ts';
import { statementsOf } from './equations.ts';
import { momentsReport } from './moments.ts';
import { namingOf } from './naming.ts';

function routineOf(setUp: string, working: readonly string[], ending: readonly string[]): Routine {
  const list = (lines: readonly string[], mark: (i: number) => string): string =>
    lines.map((line, i) => `${mark(i)} ${line}`).join('\n');
  const text = `## Set-up\n- ${setUp}\n\n## Working\n${list(working, (i) => `${i + 1}.`)}\n\n## Ending\n${list(ending, () => '-')}\n`;
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  return routine;
}

/** Every order of the cards with every facing. */
function allTables(start: StartTable): StartTable[] {
  const orders = (items: readonly number[]): number[][] =>
    items.length === 0
      ? [[]]
      : items.flatMap((item, i) => orders(items.filter((_, k) => k !== i)).map((rest) => [item, ...rest]));
  const slots = start.cards.map((_, slot) => slot);
  return orders(slots).flatMap((order) =>
    Array.from({ length: 1 << slots.length }, (_, faces) => ({
      cards: order.map((slot) => start.cards[slot]),
      bits: Uint32Array.from(order, (_slot, i) => (faces >> i) & 1),
    })),
  );
}

const ROUTINES: readonly (readonly [string, string, readonly string[], readonly string[]])[] = [
  [
    'facing tied to colour',
    'packet: 2 red and 2 black cards, face down',
    [
      'Cut the packet.',
      'Turn over the top 2 together.',
      'Deal the packet into a pile, turning every second card.',
    ],
    ['Every red card faces one way and every black card the other.', 'Exactly 2 cards are face up.'],
  ],
  [
    'kinds in blocks',
    'packet: red black repeated, 4 cards, face down',
    ['Deal any number of cards to the table.', 'Riffle the packet and the table together.'],
    ['Every pair differs in colour.', 'The top card is red.', 'The top card is not red.'],
  ],
  [
    'suits and single cards',
    'packet: 2C 7H 9S 4D, face down',
    ['Cut the packet.', 'Turn the 2nd card over.'],
    ['Every pair has one of each colour.', 'The top card is the 7H.', 'The top 2 cards agree in suit.'],
  ],
  [
    'totals and balances',
    'packet: AH 6S 2D 5C, face down',
    ['Deal the packet into 2 piles.', 'Turn the top card of pile 1 over.'],
    [
      'Pile 1 and pile 2 have the same total.',
      'There are as many red cards in pile 1 as black cards in pile 2.',
      'The face-up cards total 2.',
    ],
  ],
  [
    'what can no longer be',
    'packet: 4 cards, face down',
    ['Any number of times: turn over the top 2 together.'],
    ['Exactly 1 card is face up.'],
  ],
];

describe.each(ROUTINES)('%s', (_name, setUp, working, ending) => {
  const routine = routineOf(setUp, working, ending);
  const decision = decide(routine);
  const tables = allTables(decision.starts.base);

  test.each(decision.sentences.map((sentence) => [sentence.ending.text, sentence] as const))(
    '%s: statements say what the rows say, of every table',
    (_text, sentence) => {
      const families = momentsOf(decision, sentence, DEFAULT_LIMITS) ?? [];
      let told = 0;
      const wrong: unknown[] = [];
      for (const { problem, solved, certainAt, neededAt } of families) {
        const naming = namingOf(problem, decision.starts.universe, decision.graph);
        for (const location of decision.region?.order ?? []) {
          const { layout } = decision.graph.locations[location];
          for (const rows of [certainAt(location), neededAt(location)]) {
            const statements = statementsOf(rows, layout, naming);
            told += statements.length;
            for (const table of tables) {
              const vectors = problem.members.map((member) => solved.kernel.ofTable(member, table));
              const isMet = rows.every((row) =>
                vectors.every(
                  (vector) =>
                    row.reduce((sum, value, i) => sum + value * solved.kernel.entry(vector, i), 0) %
                      problem.p ===
                    0,
                ),
              );
              const view = slotView(table, decision.graph);
              const isSaid = statements.every(({ equations }) =>
                equations.every((one) => isTrueOf(one, view)),
              );
              if (isMet !== isSaid)
                wrong.push({ location, table, isSaid, words: statements.map(({ words }) => words) });
            }
          }
        }
      }
      expect(wrong).toEqual([]);
      expect(told).toBeGreaterThan(0);
    },
  );
});

/** Have and need in words before a step. */
function wordsAt(routine: Routine, step: number): { have: readonly string[]; need: readonly string[] } {
  const [{ steps }] = momentsReport(decide(routine), '', DEFAULT_LIMITS);
  const [moment] = steps?.[step].moments ?? [];
  return { have: moment.have.map(({ words }) => words), need: moment.need.map(({ words }) => words) };
}

test('what is certain and needed is said in the words of the trade', () => {
  const suits = routineOf(
    'packet: clubs hearts spades diamonds repeated, 12 cards, face down',
    [
      'Cut the packet.',
      'Deal any number of cards to the table.',
      'Riffle the packet and the table together.',
    ],
    ['Every four has one of each suit.'],
  );
  expect(wordsAt(suits, 1).have).toEqual([
    'cards 4 places apart are alike in suit',
    'at places 1 to 4 there is one each of clubs, hearts, spades and diamonds',
  ]);
  expect(wordsAt(suits, 3).need).toEqual([
    'at each of these, places 1 to 4; places 5 to 8; places 9 to 12, there is one each of clubs, hearts, spades and diamonds',
  ]);

  const mirror = routineOf(
    'packet: 8 cards alternately red and black, face down',
    ['Milk the packet.'],
    ['Every pair differs in colour.'],
  );
  expect(wordsAt(mirror, 0)).toEqual({
    have: ['the cards at the odd places are red', 'the cards at the even places are black'],
    need: ['the cards at places 1 and 8, 2 and 7, and so on to 4 and 5 differ in colour'],
  });

  const turnover = routineOf(
    'packet: 8 cards alternately red and black, face down',
    [
      'Any number of times: cut, then turn over the top 2 together.',
      'Deal the packet into a pile, turning every second card.',
    ],
    ['Every red card faces one way and every black card the other.'],
  );
  expect(wordsAt(turnover, 3).need).toEqual([
    'cards 2 places apart face the same way exactly where they are alike in colour; those at places 1 and 2 face the same way exactly where they differ in colour',
  ]);

  const sums = routineOf(
    'packet: A-4 of hearts, then 7-10 of spades, face down',
    ['Milk the packet.'],
    ['Every pair totals 11.'],
  );
  expect(wordsAt(sums, 0).need).toEqual([
    'values of the cards at each of these come to 11: places 1 and 8, 2 and 7, and so on to 4 and 5',
  ]);

  const balance = routineOf(
    'packet: any 4 red cards and any 4 black cards, in any order, face down',
    ['Shuffle the packet.', 'Deal 4 cards to the left.'],
    ['There are as many red cards in the left as black cards in the packet.'],
  );
  expect(wordsAt(balance, 0)).toEqual({
    have: ['4 of all the cards are black'],
    need: ['4 of all the cards are black'],
  });

  const lost = routineOf(
    'packet: 4 cards, face down',
    ['Any number of times: turn over the top card.'],
    ['Exactly 1 card is face up.'],
  );
  expect(wordsAt(lost, 0).need).toEqual(['the impossible: however the cards lie, some choice spoils it']);
});
