import type { Action } from '../pictures/actions.ts';
import { effectOf } from '../pictures/effect.ts';
import type { Layout } from '../pictures/layout.ts';
import type { Key } from '../moves/move.ts';
import type { Edge, Graph } from '../routine/graph.ts';
import type { StartTable, TableSlots } from '../routine/starts.ts';
import { applyOps } from '../routine/table.ts';
import { decidingAt, optionOf, sayRun, sentenceOf, slipIn } from './choices.ts';
import { dataOf } from './performance.ts';
import { runsOf } from './runs.ts';
import { tableData, type TableData } from './table-data.ts';

/** One motion of the hands, with the table when it is done. */
export interface Beat {
  /** The option it belongs to. */
  readonly key: Key;
  readonly action: Action;
  readonly after: TableData;
}

/** One step of a performance, motion by motion. */
export interface Scene {
  readonly number: string;
  readonly sentence: string;
  readonly who: 'spectator' | 'performer';
  readonly choice: string;
  /** What went wrong in doing the step, in words; absent where nothing did. */
  readonly slip?: string;
  readonly before: TableData;
  readonly beats: readonly Beat[];
  readonly after: TableData;
}

/**
 * A path through the graph, played with the moves' own actions: the table before the first scene, each action with the table it
 * leaves. The scene's `after` is the table the proof speaks of.
 */
export function storyboardOf(graph: Graph, start: StartTable, path: readonly Edge[], text: string): Scene[] {
  return runsOf(graph, start, path)
    .runs.filter((run) => run.kind !== 'set-up')
    .map((run): Scene => {
      const deciding = decidingAt(graph, graph.locations[run.edges[0].from]);
      const slip = slipIn(graph, run);
      const step = slip?.step ?? deciding.step;
      const beats = run.edges.flatMap((edge, i) => {
        const at = run.standings[i];
        const { layout, numbers } = graph.locations[at.location];
        let now = { table: at.table, layout };
        return (optionOf(graph, at, edge)?.actions ?? []).map((action): Beat => {
          now = acted(now.table, now.layout, action, graph);
          return { key: edge.key, action, after: tableData(now.table, now.layout, graph, numbers) };
        });
      });
      return {
        number: step?.number ?? '',
        sentence: step === undefined ? '' : sentenceOf(step, text),
        who: deciding.who,
        choice: sayRun(graph, run, text),
        ...(slip === undefined ? {} : { slip: slip.words }),
        before: dataOf(graph, run.standings[0]),
        beats,
        after: dataOf(graph, run.standings[run.standings.length - 1]),
      };
    });
}

function acted(
  table: TableSlots,
  layout: Layout,
  action: Action,
  graph: Graph,
): { table: TableSlots; layout: Layout } {
  const { from, ops, after } = effectOf(layout, [action], graph.bits);
  return {
    layout: after,
    table: {
      cards: Array.from(from, (old) => table.cards[old]),
      bits: Uint32Array.from(from, (old, slot) => applyOps(table.bits[old], ops?.[slot] ?? 0)),
    },
  };
}
