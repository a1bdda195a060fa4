import type { Decision, SentenceDecision } from '../proving/decision.ts';
import { coverageOf, type Coverage } from './coverage.ts';
import { failureData, type Describe } from './failure.ts';
import type {
  DiagnosticData,
  FailureData,
  ReadingData,
  Report,
  ReportVerdict,
  SentenceReport,
} from './report.ts';
import { ruleData } from './rule.ts';
import { counted, sayChance, sayDecisions, sayMethod, sayPerformances, sayTrials } from './words.ts';

/** What a report is made from. */
export interface Parts {
  readonly title: string;
  readonly text: string;
  readonly diagnostics: readonly DiagnosticData[];
  readonly readings: readonly ReadingData[];
  /** Undefined when the note was not understood. */
  readonly decision: Decision | undefined;
  /** Words for a cause, with what to do about it. */
  readonly describe: Describe;
}

export function makeReport({ title, text, diagnostics, readings, decision, describe }: Parts): Report {
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
  const sentences = decision.sentences.map((sentence, i) => {
    const told = sentenceReport(decision, sentence, coverage, text, describe);
    const asides = decision.asides[i].map((aside) => describe(aside).words);
    return { ...told, why: [told.why, ...asides].join(' ').trim() };
  });
  const { verdict } = decision;
  const summary = summaryOf(verdict, sentences, coverage);
  return { title, verdict, summary, diagnostics, readings, sentences, coverage };
}

function summaryOf(verdict: ReportVerdict, sentences: readonly SentenceReport[], coverage: Coverage): string {
  const all = sentences.length;
  const count = sentences.filter((sentence) => sentence.verdict === verdict).length;
  const every = all === 2 ? 'both sentences' : `all ${all} sentences`;
  const some = all === 1 ? 'the ending' : count === all ? every : `${count} of ${all} sentences`;
  switch (verdict) {
    case 'proved': {
      const lucky = sentences.filter(({ method }) => method === 'chance').length;
      if (lucky > 0) return `Proved: ${some}, with the chance that is asked for.`;
      return `Proved: ${some} for ${sayPerformances(coverage)}.`;
    }
    case 'refuted': {
      const unlucky = sentences.every((one) => one.verdict !== 'refuted' || one.method === 'chance');
      if (!unlucky) return `Refuted: ${some} can fail.`;
      return `Refuted: ${some} ${count === 1 ? 'holds' : 'hold'} less often than is asked for.`;
    }
    case 'undecided':
      return `Undecided: ${some} ${count === 1 ? 'was' : 'were'} neither proved nor refuted.`;
    case 'empty':
      if (all === 0) return 'Empty: there is no ending to prove.';
      return `Empty: ${some} ${count === 1 ? 'says' : 'say'} nothing here.`;
    case 'not understood':
      return 'Not understood.';
  }
}

function sentenceReport(
  decision: Decision,
  sentence: SentenceDecision,
  coverage: Coverage,
  text: string,
  describe: Describe,
): SentenceReport {
  const { ending, verdict, method, failure, trials, states, rows, rule } = sentence;
  const failed = failure === undefined ? null : failureData(decision, sentence, failure, text, describe);
  return {
    text: ending.text,
    range: ending.range,
    verdict,
    method,
    by: sayMethod(sentence),
    why: whyOf(decision, sentence, failed, coverage, describe),
    failure: failed,
    trials: trials ?? null,
    chance: sentence.chance === undefined ? null : sayChance(sentence.chance),
    rule: rule === undefined ? null : ruleData(decision.graph, rule.lines, text),
    tables: states,
    equations: rows,
  };
}

function whyOf(
  decision: Decision,
  sentence: SentenceDecision,
  failed: FailureData | null,
  coverage: Coverage,
  describe: Describe,
): string {
  const { reason } = sentence;
  const told = reason === undefined ? { words: '', remedy: '' } : describe(reason);
  const cause = `${told.words} ${told.remedy}`.trim();
  if (sentence.method === 'chance' && sentence.chance !== undefined) {
    const chance = sayChance(sentence.chance);
    return sentence.verdict === 'proved'
      ? `With every choice made at random its chance is ${chance}.`
      : cause;
  }
  switch (sentence.verdict) {
    case 'proved':
      return `True for ${sayPerformances(coverage)}: ${proofIn(decision, sentence)}.`;
    case 'refuted': {
      if (failed === null || sentence.failure === undefined) return cause;
      const way = sayDecisions(sentence.failure.way.cost);
      const what = failed.stuck === '' ? `${failed.shows}.` : `the performance cannot go on. ${failed.stuck}`;
      return `False ${way}: ${what} ${cause}`.trim();
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
    case 'chance':
      return 'its chance is as great as the sentence asks for';
    case 'trials':
      return 'no performance that was tried failed';
  }
}
