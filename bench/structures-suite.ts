import { DEFAULT_LIMITS } from '../packages/engine/src/proving/question.ts';
import { momentsOf } from '../packages/engine/src/proving/moments.ts';
import type { Decision } from '../packages/engine/src/proving/decision.ts';
import { START } from '../packages/engine/src/moves/move.ts';
import { Followed } from '../packages/engine/src/structures/followed.ts';
import { neededStructures } from '../packages/engine/src/structures/needed.ts';
import { cpuMs } from './clock.ts';
import { measure } from './measure.ts';
import { dealAndRiffle, turnover } from './scenarios.ts';
import { compiled, decided } from './subjects.ts';
import { drawn, ms } from './tables.ts';
import type { Target } from './targets.ts';

interface Naming {
  /** Moments at which a step begins, and the ends. */
  readonly moments: number;
  /** Following everything that structures are made of, once for the routine. */
  readonly follow: number;
  /** Naming what is certain and what is needed, one moment. */
  readonly each: number;
}

function namingOf(decision: Decision): Naming {
  const { graph, region, starts } = decision;
  if (region === undefined) throw new Error('the routine is no question for linear algebra');
  const at = region.order.filter((id) => graph.locations[id].phase === START && graph.locations[id].at >= 0);
  const started = cpuMs();
  const followed = new Followed({ graph, region, starts }, DEFAULT_LIMITS);
  for (const subject of followed.subjects) followed.vectorsAt(graph.start, subject);
  const follow = cpuMs() - started;
  const families = decision.sentences.flatMap((one) => momentsOf(decision, one, DEFAULT_LIMITS) ?? []);
  const context = { graph, cards: starts.universe, subjects: followed.subjects };
  const [all] = measure([
    {
      name: 'naming',
      run: () =>
        at.map((id) => [
          followed.certainAt(id),
          families.map(({ problem, neededAt }) =>
            neededStructures(problem, neededAt(id), graph.locations[id].layout, context),
          ),
        ]),
    },
  ]);
  return { moments: at.length, follow, each: all.median / at.length };
}

const SUBJECTS: readonly (readonly [string, string])[] = [
  ['turnover, 16 cards', turnover(16)],
  ['turnover, 52 cards', turnover(52)],
  ['deal and riffle, 52 cards, 13 kinds', dealAndRiffle(52, 13)],
];

/** How long it takes to name the structures of a moment. */
export function structuresSuite(): Target[] {
  const rows = SUBJECTS.map(([name, text]) => ({ name, ...namingOf(decided(compiled(text), 'proved')) }));
  console.log(
    `\n${drawn(
      ['structures', 'moments', 'following, once', 'naming, one moment'],
      rows.map(({ name, moments, follow, each }) => [name, String(moments), ms(follow), ms(each)]),
    )}`,
  );
  return rows.map(({ name, each }) => ({
    what: `structures of one moment, ${name}`,
    limit: 5,
    unit: 'ms',
    found: each,
  }));
}
