import { meaningOf } from '../claims/sentence.ts';
import type { Decision, Failure, SentenceDecision } from '../proving/decision.ts';
import type { Trouble } from '../base/diagnostic.ts';
import { slotView } from '../routine/table.ts';
import type { Key } from '../moves/move.ts';
import { coverageOf, type Coverage } from './coverage.ts';
import { explain } from './explain.ts';
import { performanceOf } from './performance.ts';
import type {
  DiagnosticData,
  FailureData,
  ReadingData,
  Report,
  ReportVerdict,
  SentenceReport,
} from './report.ts';
import { beginning } from './play.ts';
import { runsOf, takeEdge, waysOn } from './runs.ts';
import { counted, sayDecisions, sayMethod, sayPerformances, sayReason, sayTrials } from './words.ts';

/** What a report is made from. */
export interface Parts {
  readonly title: string;
  readonly text: string;
  readonly diagnostics: readonly DiagnosticData[];
  readonly readings: readonly ReadingData[];
  /** Undefined when the note was not understood. */
  readonly decision: Decision | undefined;
  /** Words for a cause that a move or a claim gives. */
  readonly say: (trouble: Trouble) => string;
}

export function makeReport({ title, text, diagnostics, readings, decision, say }: Parts): Report {
  const errors = diagnostics.filter(({ severity }) => severity === 'error').length;
  if (decision === undefined || errors > 0) {
    const summary = `Not understood: ${counted(errors, 'thing stands', 'things stand')} in the way of a verdict.`;
    return {
      title,
      verdict: 'not understood',
      summary,
      diagnostics,
      readings,
      sentences: [],
      coverage: null,
    };
  }
  const coverage = coverageOf(decision);
  const sentences = decision.sentences.map((sentence) =>
    sentenceReport(decision, sentence, coverage, text, say),
  );
  const { verdict } = decision;
  const summary = summaryOf(verdict, sentences, coverage);
  return { title, verdict, summary, diagnostics, readings, sentences, coverage };
}

function summaryOf(verdict: ReportVerdict, sentences: readonly SentenceReport[], coverage: Coverage): string {
  const all = sentences.length;
  const count = sentences.filter((sentence) => sentence.verdict === verdict).length;
  const some =
    all === 1 ? 'its sentence' : count === all ? `all ${all} sentences` : `${count} of ${all} sentences`;
  const of = all === 1 ? 'The ending' : `${some[0].toUpperCase()}${some.slice(1)}`;
  switch (verdict) {
    case 'proved':
      return `Proved: ${all === 1 ? 'the ending' : some} for ${sayPerformances(coverage)}.`;
    case 'refuted':
      return `Refuted: ${all === 1 ? 'the ending' : some} can fail.`;
    case 'undecided':
      return `Undecided: ${all === 1 ? 'the ending was' : `${some} ${count === 1 ? 'was' : 'were'}`} neither proved nor refuted.`;
    case 'empty':
      return all === 0
        ? 'Empty: there is no ending to prove.'
        : `Empty: ${of.charAt(0).toLowerCase()}${of.slice(1)} ${count === 1 ? 'says' : 'say'} nothing here.`;
    case 'not understood':
      return 'Not understood.';
  }
}

function sentenceReport(
  decision: Decision,
  sentence: SentenceDecision,
  coverage: Coverage,
  text: string,
  say: (trouble: Trouble) => string,
): SentenceReport {
  const { ending, verdict, method, failure, trials, states, rows } = sentence;
  const failed = failure === undefined ? null : failureData(decision, sentence, failure, text, say);
  return {
    text: ending.text,
    range: ending.range,
    verdict,
    method,
    by: sayMethod(sentence),
    why: whyOf(decision, sentence, failed, coverage, say),
    failure: failed,
    trials: trials ?? null,
    tables: states,
    equations: rows,
  };
}

function whyOf(
  decision: Decision,
  sentence: SentenceDecision,
  failed: FailureData | null,
  coverage: Coverage,
  say: (trouble: Trouble) => string,
): string {
  const { reason } = sentence;
  const cause = reason === undefined ? '' : (sayReason(reason) ?? say(reason));
  switch (sentence.verdict) {
    case 'proved':
      return `True for ${sayPerformances(coverage)}: ${proofIn(decision, sentence)}.`;
    case 'refuted': {
      if (failed === null || sentence.failure === undefined) return cause;
      const way = sayDecisions(sentence.failure.way.cost);
      const what = failed.stuck === '' ? failed.shows : `the performance cannot go on: ${failed.stuck}`;
      return `False ${way}: ${what}.`;
    }
    case 'undecided':
      return `${cause} ${sayTrials(sentence.trials)}`.trim();
    case 'empty':
      return cause;
  }
}

function proofIn({ graph }: Decision, sentence: SentenceDecision): string {
  const { method, states, solved } = sentence;
  switch (method) {
    case 'sizes':
      return 'whatever is chosen, the numbers of cards settle it';
    case 'linear': {
      const needed = solved.reduce((sum, { need }) => sum + (need.at[graph.start]?.length ?? 0), 0);
      if (needed === 0)
        return 'the ending asks nothing of the cards at the start, and every choice comes out right';
      return `the ending needs ${counted(needed, 'equation')} of the cards at the start, and the set-up satisfies ${needed === 1 ? 'it' : 'them'}`;
    }
    case 'exact':
      return `none of the ${counted(states, 'table')} that can be reached breaks it`;
    case 'exact then linear':
      return `it holds from each of the ${counted(states, 'table')} up to the last look at cards`;
    case 'rule':
      return 'the performer has a rule that rests on what is known and works against every choice of the spectators';
    case 'trials':
      return 'no performance that was tried failed';
  }
}

function failureData(
  decision: Decision,
  { ending }: SentenceDecision,
  { way, stuck, shortest }: Failure,
  text: string,
  say: (trouble: Trouble) => string,
): FailureData {
  const { graph, starts } = decision;
  const { end } = runsOf(graph, way.start, way.path);
  const location = graph.locations[end.location];
  let shows = '';
  if (location.exit) {
    const { layout, numbers } = location;
    const piles = graph.routine.setUp.piles;
    const start = Object.fromEntries(piles.map((pile) => [pile.name, pile.cards.map((lying) => lying.card)]));
    const meaning = meaningOf(ending.sentence, { layout, numbers, cards: starts.universe, start });
    const table = slotView(end.table, graph);
    if (meaning.ok) shows = explain(meaning.value.formula, { table, layout, cards: starts.universe });
  }
  return {
    performance: performanceOf(graph, way.start, way.path, text),
    choices: choicesOf(decision, way),
    shortest,
    stuck: stuck === undefined ? '' : say(stuck),
    shows,
  };
}

/** The keys that tell this performance from the plainest one from the same start. */
function choicesOf({ graph }: Decision, { start, path }: Failure['way']): Key[] {
  const keys: Key[] = [];
  let at = beginning(graph, start);
  for (const edge of path) {
    if (waysOn(graph, at).edges.length > 1) keys.push(edge.key);
    at = takeEdge(at, edge);
  }
  return keys;
}
