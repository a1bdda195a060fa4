import { smtOf } from '../packages/engine/src/proving/smt.ts';
import { boundedOf, type Ending } from './bounded.ts';
import { cnfOf } from './cnf.ts';
import { everyPerformance, visitedSet } from './enumerate.ts';
import { measure } from './measure.ts';
import { dealAndRiffle, shortTurnover, turnover } from './scenarios.ts';
import { askZ3, satisfy } from './solvers.ts';
import { compiled, decided } from './subjects.ts';
import { drawn, ms } from './tables.ts';
import type { Target } from './targets.ts';

interface Question {
  readonly name: string;
  readonly text: string;
  readonly verdict: 'proved' | 'refuted';
  readonly attribute: string;
  readonly ending: Ending;
}

const ONE_WAY: Ending = { says: 'one class one way' };
const QUESTIONS: readonly Question[] = [
  ...[8, 16, 32].map((n): Question => ({
    name: `short turnover, ${n}`,
    text: shortTurnover(n),
    verdict: 'proved',
    attribute: 'colour',
    ending: ONE_WAY,
  })),
  ...(
    [
      [16, 4, false],
      [16, 4, true],
      [52, 13, false],
      [52, 13, true],
    ] as const
  ).map(([n, k, broken]): Question => ({
    name: `${broken ? 'push off' : 'deal'} and riffle, ${n}, ${k} kinds`,
    text: dealAndRiffle(n, k, broken),
    verdict: broken ? 'refuted' : 'proved',
    attribute: k === 4 ? 'suit' : 'value',
    ending: { says: 'one of each', block: k },
  })),
  ...[8, 16, 52].map((n): Question => ({
    name: `turnover, ${n}`,
    text: turnover(n),
    verdict: 'proved',
    attribute: 'colour',
    ending: ONE_WAY,
  })),
];

/** Closed circles that peers follow in one performance. */
const ROUNDS = 1;
const MOST_SECONDS = 10;
/** One run of a peer is told no finer than the clock ticks. */
const GRAIN_MS = 10;
/** Clauses and lines past that are not written: files of hundreds of megabytes. */
const MOST_CLAUSES_AT = 3_000_000;
const MOST_SMT = 2_000_000;

/** The same questions put to others. Where a working repeats without end, they get a weaker one: at most so many rounds.
 * `only` is part of the names of the questions to put. */
export function peerSuite(z3Child: string, only: string): Target[] {
  const asked = QUESTIONS.filter(({ name }) => name.includes(only));
  // All of our own first: what the peers leave in memory would slow it.
  const own = asked.map(({ text, verdict }) => {
    const routine = compiled(text);
    return measure([{ name: 'own', run: () => decided(routine, verdict) }])[0].median;
  });
  const rows = asked.map((question, i) => {
    const { name, text, verdict, attribute, ending } = question;
    const routine = compiled(text);
    const bounded = boundedOf(routine, attribute, ROUNDS);
    const right = verdict === 'proved' ? 'true' : 'false';
    const told = ({ answer, ms: spent }: { readonly answer: string; readonly ms: number }): string => {
      if (answer === 'not installed') return 'absent';
      if (answer === 'not finished') return `> ${MOST_SECONDS} s`;
      // A bounded question may have no failure where the whole one has; the other way round cannot be.
      if (answer !== right && !(answer === 'true' && bounded.bounded))
        throw new Error(`${name}: a peer says ${answer}`);
      return spent < GRAIN_MS ? `< ${GRAIN_MS}` : ms(spent);
    };
    const writable =
      bounded.graph.edges.length * bounded.graph.cards * bounded.layers.length < MOST_CLAUSES_AT * 8;
    const clauses = writable ? cnfOf(bounded, ending) : null;
    const smt = smtOf(routine, routine.endings[0], { rounds: ROUNDS, work: MOST_SMT });
    const naive = everyPerformance(bounded, ending, MOST_SECONDS * 1000);
    return [
      `${name}${bounded.bounded ? ` (peers: ${ROUNDS} round)` : ''}`,
      ms(own[i]),
      told(naive),
      told(visitedSet(bounded, ending, MOST_SECONDS * 1000)),
      clauses === null ? 'too large' : told(satisfy('cadical', clauses.text, MOST_SECONDS)),
      clauses === null ? 'too large' : told(satisfy('minisat', clauses.text, MOST_SECONDS)),
      smt.ok ? told(askZ3(z3Child, smt.value, MOST_SECONDS)) : 'too large',
    ];
  });
  console.log(
    `\n${drawn(
      [
        'milliseconds of processor time',
        'foregone',
        'every performance',
        'visited set',
        'CaDiCaL',
        'MiniSat',
        'Z3',
      ],
      rows,
    )}`,
  );
  return [];
}
