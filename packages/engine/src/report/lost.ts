import type { Edge, Graph } from '../routine/graph.ts';
import type { Ending } from '../routine/routine.ts';
import type { StartTable, Starts } from '../routine/starts.ts';
import { judge } from './judge.ts';
import { sayRun, sentenceOf, slipIn, decidingAt } from './choices.ts';
import { runsOf, takeEdge, waysOn, type Standing } from './runs.ts';

/** Where a failing performance goes wrong. */
export interface LostData {
  /** The step at which it is lost; null where not even the plainest performance comes out. */
  readonly step: string | null;
  readonly words: string;
}

// A plain way on that has not ended by then is none.
const MOST_OPTIONS = 5_000;

/**
 * The step at which a failing performance loses what the ending needs: before it the plainest way on would still make the sentence true,
 * after it no longer.
 */
export function lostAt(
  graph: Graph,
  starts: Starts,
  ending: Ending,
  { start, path }: { readonly start: StartTable; readonly path: readonly Edge[] },
  text: string,
): LostData {
  const number = graph.routine.endings.indexOf(ending);
  const comesOut = (from: Standing): boolean => {
    let at = from;
    for (let n = 0; n < MOST_OPTIONS; n++) {
      if (graph.locations[at.location].exit) return judge(graph, starts, at)[number]?.holds === true;
      const { edges } = waysOn(graph, at);
      const plain = graph.locations[at.location].at < 0 ? edges.find(({ key }) => key === 'begin') : edges[0];
      if (plain === undefined) return false;
      at = takeEdge(at, plain);
    }
    return false;
  };
  const { runs } = runsOf(graph, start, path);
  let hope = runs[0] === undefined ? false : comesOut(runs[0].standings[0]);
  let last: LostData | null = null;
  for (const run of runs) {
    const after = comesOut(run.standings[run.standings.length - 1]);
    if (hope && !after) {
      const slip = slipIn(graph, run);
      const step = slip?.step ?? decidingAt(graph, graph.locations[run.edges[0].from]).step;
      const choice = slip?.words ?? sayRun(graph, run, text);
      const said = choice === '' ? (step === undefined ? '' : sentenceOf(step, text)) : choice;
      const where = said === '' ? '' : ` (${said})`;
      last =
        step === undefined
          ? {
              step: null,
              words:
                'It depends on how the cards are laid out: laid out as the note writes them, the plainest way would come out.',
            }
          : {
              step: step.number,
              words: `It is lost at step ${step.number}${where}: before that, the plainest way on would still come out.`,
            };
    }
    hope = after;
  }
  return last ?? { step: null, words: 'Not even the plainest performance comes out.' };
}
