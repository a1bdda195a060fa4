import type { Trouble } from '../base/diagnostic.ts';
import { holds } from '../claims/formula.ts';
import { meaningOf } from '../claims/sentence.ts';
import type { Graph } from '../routine/graph.ts';
import { startingOrders, type Starts } from '../routine/starts.ts';
import { slotView } from '../routine/table.ts';
import { explainSentence } from './explain.ts';
import type { Standing } from './runs.ts';

/** How one sentence of the ending stands on one table. */
export interface Judged {
  readonly text: string;
  /** Undefined where it has no meaning for these cards and piles. */
  readonly holds: boolean | undefined;
  /** How it falls short, in words; empty where it holds. */
  readonly shows: string;
  readonly trouble: Trouble | undefined;
}

/** Every sentence of the ending on the table a performance came to; `at` must be an exit. */
export function judge(graph: Graph, starts: Starts, at: Standing): Judged[] {
  const { layout, numbers } = graph.locations[at.location];
  const { routine } = graph;
  const start = startingOrders(routine);
  const table = slotView(at.table, graph);
  const exit = { layout, numbers, cards: starts.universe, start };
  return routine.endings.map(({ text, sentence }): Judged => {
    const meaning = meaningOf(sentence, exit);
    if (!meaning.ok) return { text, holds: undefined, shows: '', trouble: meaning.error };
    const { formula } = meaning.value;
    const isTrue = holds(formula, table);
    const shows = isTrue ? '' : explainSentence(sentence, exit, { table, layout, cards: starts.universe });
    return { text, holds: isTrue, shows, trouble: undefined };
  });
}
