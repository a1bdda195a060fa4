import { measure, type Timing } from './measure.ts';
import { dealAndRiffle, notedCard, turnover } from './scenarios.ts';
import { compiled, decided, equationsEverywhere, haveAndNeed } from './subjects.ts';
import { drawn, ms } from './tables.ts';
import type { Target } from './targets.ts';

interface Scenario {
  readonly name: string;
  readonly text: string;
  readonly verdict: 'proved' | 'refuted';
}

const SCENARIOS: readonly Scenario[] = [
  ...[8, 16, 32, 52].map((n): Scenario => ({
    name: `turnover, ${n} cards`,
    text: turnover(n),
    verdict: 'proved',
  })),
  ...(
    [
      [16, 4],
      [52, 4],
      [52, 13],
    ] as const
  ).flatMap(([n, k]): Scenario[] => [
    { name: `deal and riffle, ${n} cards, ${k} kinds`, text: dealAndRiffle(n, k), verdict: 'proved' },
    {
      name: `push off and riffle, ${n} cards, ${k} kinds`,
      text: dealAndRiffle(n, k, true),
      verdict: 'refuted',
    },
  ]),
  { name: 'one noted card in 52', text: notedCard(52), verdict: 'proved' },
];

interface Row {
  readonly name: string;
  readonly compile: number;
  readonly verdict: number;
  readonly moments: number;
}

/** From the text to the verdict, and have and need at every moment, in this process, after start-up. */
export function engineSuite(): Target[] {
  const rows = SCENARIOS.map(({ name, text, verdict }): Row => {
    const routine = compiled(text);
    const decision = decided(routine, verdict);
    const [compile, judge, moments] = measure([
      { name: 'compile', run: () => compiled(text) },
      { name: 'verdict', run: () => decided(routine, verdict) },
      { name: 'have and need', run: () => haveAndNeed(decision) },
    ]).map((timing: Timing) => timing.median);
    return { name, compile, verdict: judge, moments };
  });
  console.log(
    `\n${drawn(
      ['milliseconds, median of turns', 'compile', 'verdict', 'have, need'],
      rows.map(({ name, compile, verdict, moments }) => [name, ms(compile), ms(verdict), ms(moments)]),
    )}`,
  );
  const decision = decided(compiled(turnover(52)), 'proved');
  const [written] = measure([{ name: 'equations', run: () => equationsEverywhere(decision) }]);
  console.log(
    `have and need of turnover, 52 cards, written out as equations at every moment: ${ms(written.median)} ms`,
  );

  const at = (name: string): Row => {
    const row = rows.find((one) => one.name === name);
    if (row === undefined) throw new Error(`no scenario ${name}`);
    return row;
  };
  const verdict = ({ compile, verdict: judge }: Row): number => compile + judge;
  const whole = (row: Row): number => verdict(row) + row.moments;
  const [t8, t16, t32, t52] = [8, 16, 32, 52].map((n) => at(`turnover, ${n} cards`));
  const time = (what: string, limit: number, found: number): Target => ({ what, limit, unit: 'ms', found });
  return [
    time('turnover, 16 cards: compile and verdict', 8, verdict(t16)),
    time('turnover, 16 cards: with have and need', 20, whole(t16)),
    time('turnover, 52 cards: compile and verdict', 100, verdict(t52)),
    time('turnover, 52 cards: with have and need', 250, whole(t52)),
    time('deal and riffle, 16 cards, 4 kinds: verdict', 5, at('deal and riffle, 16 cards, 4 kinds').verdict),
    time('deal and riffle, 52 cards, 4 kinds: verdict', 50, at('deal and riffle, 52 cards, 4 kinds').verdict),
    time(
      'deal and riffle, 52 cards, 13 kinds: verdict',
      50,
      at('deal and riffle, 52 cards, 13 kinds').verdict,
    ),
    { what: 'turnover: 8 cards to 16, verdict', limit: 16, unit: 'times', found: t16.verdict / t8.verdict },
    { what: 'turnover: 16 cards to 32, verdict', limit: 16, unit: 'times', found: t32.verdict / t16.verdict },
    time('one noted card in 52: compile and verdict', 200, verdict(at('one noted card in 52'))),
  ];
}
