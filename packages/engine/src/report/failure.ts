import type { Trouble } from '../base/diagnostic.ts';
import type { Key } from '../moves/move.ts';
import type { Decision, Failure, SentenceDecision } from '../proving/decision.ts';
import { judge } from './judge.ts';
import { lostAt } from './lost.ts';
import { performanceOf } from './performance.ts';
import type { FailureData } from './report.ts';
import { runsOf, takeEdge, waysOn, type Standing } from './runs.ts';

/** Words for a cause, with what to do about it. */
export type Describe = (trouble: Trouble) => { readonly words: string; readonly remedy: string };

/** A failing performance as plain data; `text` is the note. */
export function failureData(
  decision: Decision,
  { ending }: SentenceDecision,
  { way, stuck, shortest }: Failure,
  text: string,
  describe: Describe,
): FailureData {
  const { graph, starts } = decision;
  const { end } = runsOf(graph, way.start, way.path);
  const judged = graph.locations[end.location].exit ? judge(graph, starts, end) : [];
  const judgment = judged[graph.routine.endings.indexOf(ending)];
  // After a slip a pile that the sentence speaks of may not be there.
  const senseless =
    judgment?.trouble === undefined ? '' : describe(judgment.trouble).words.replace(/\.$/, '');
  const shows = judgment?.shows || senseless;
  return {
    performance: performanceOf(graph, way.start, way.path, text),
    choices: choicesOf(decision, way),
    shortest,
    stuck: stuck === undefined ? '' : describe(stuck).words,
    shows,
    lost: lostAt(graph, starts, ending, way, text),
  };
}

/** The keys that tell this performance from the plainest one from the same start. */
function choicesOf({ graph }: Decision, { start, path }: Failure['way']): Key[] {
  const keys: Key[] = [];
  let at: Standing = { location: graph.start, table: start };
  for (const edge of path) {
    if (edge.kind !== 'slip' && waysOn(graph, at).edges.length > 1) keys.push(edge.key);
    at = takeEdge(at, edge);
  }
  return keys;
}
