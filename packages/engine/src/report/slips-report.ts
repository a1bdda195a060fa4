import type { Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import { listed } from '../insight/altering/choice-words.ts';
import { Slips, type SlipFinding, type SlipOnSentence } from '../insight/slips/judge-slips.ts';
import { contraryTo, strongest, weakerThan, type Less } from '../insight/slips/weaker.ts';
import type { Decision } from '../proving/decision.ts';
import type { Limits } from '../proving/question.ts';
import type { Graph } from '../routine/graph.ts';
import type { Ending, Routine } from '../routine/routine.ts';
import { sentenceOf } from './choices.ts';
import { failureData, type Describe } from './failure.ts';
import type { FailureData } from './report.ts';
import { waysOn, takeEdge, type Standing } from './runs.ts';
import type { RemainsData, SlipRow } from './slips-data.ts';
import { counted, sayChance } from './words.ts';

export interface SlipParts {
  /** The note. */
  readonly text: string;
  readonly routine: Routine;
  readonly decision: Decision;
  readonly limits: Limits;
  readonly describe: Describe;
}

// Ways without harm that are told one by one.
const MOST_TOLD = 3;

/**
 * Every slip in every step, each as soon as it is known; or why nothing is said.
 * @param at only this step, with chances, which cost more
 */
export function slipRows(parts: SlipParts, at?: string): Result<Generator<SlipRow>, Trouble> {
  const { routine, decision, limits } = parts;
  const proved = decision.sentences.filter(({ verdict }) => verdict === 'proved');
  const said = new Set(decision.sentences.map(({ ending }) => ending.text));
  const others = (less: (ending: Ending) => readonly Ending[]): Ending[] =>
    proved
      .flatMap(({ ending }) => less(ending))
      .filter(({ text }) => {
        const isNew = !said.has(text);
        said.add(text);
        return isNew;
      });
  const less = proved.flatMap(({ ending }) => weakerThan(ending, routine.cards));
  const weaker = others((ending) =>
    less.filter(({ above }) => above.has(ending.text)).map((one) => one.ending),
  );
  const besides: Besides = { less, contrary: new Set(others(contraryTo)) };
  const slips = Slips.of(routine, decision, limits, [...weaker, ...besides.contrary]);
  return slips.ok ? good(rows(slips.value, besides, parts, at)) : bad(slips.error);
}

/** Endings besides those of the note. */
interface Besides {
  readonly less: readonly Less[];
  readonly contrary: ReadonlySet<Ending>;
}

function* rows(slips: Slips, besides: Besides, parts: SlipParts, at: string | undefined): Generator<SlipRow> {
  for (const possible of slips.possible)
    if (at === undefined || possible.step.number === at) {
      const finding = slips.finding(possible);
      const isOpen = at !== undefined && (finding.verdict === 'sometimes' || finding.verdict === 'harmful');
      const chance = isOpen ? slips.chance(possible) : null;
      yield {
        ...rowOf(finding, besides, slips.graph, parts),
        chance: chance === null ? null : sayChance(chance),
      };
    }
}

function rowOf(
  finding: SlipFinding,
  besides: Besides,
  graph: Graph,
  parts: SlipParts,
): Omit<SlipRow, 'chance'> {
  const { possible, ways, verdict, sentences, notice } = finding;
  const { step, slip } = possible;
  return {
    step: step.number,
    range: step.range,
    sentence: sentenceOf(step, parts.text),
    slip: slip.id,
    title: slip.title,
    help: slip.help,
    ways,
    verdict,
    words: sayVerdict(finding, graph, parts.decision),
    sentences: sentences.map((one) => ({ text: one.ending.text, verdict: one.verdict })),
    notice,
    remains: verdict === 'harmless' ? [] : remainsOf(finding, besides),
    failure: failureOf(sentences, graph, parts),
  };
}

/** Sentences of the note first, then what says less than those that may fail, then the contrary of one. */
function remainsOf({ sentences, remains }: SlipFinding, { less, contrary }: Besides): RemainsData[] {
  const whole = sentences.filter(({ verdict }) => verdict === 'harmless');
  const certain = new Set([...whole.map(({ ending }) => ending.text), ...remains.map(({ text }) => text)]);
  const weaker = strongest(less, (text) => certain.has(text)).map(({ text }) => text);
  return [
    ...whole.map(({ ending }): RemainsData => ({ words: ending.text, from: 'note' })),
    ...[...new Set(weaker)].map((words): RemainsData => ({ words, from: 'weaker' })),
    ...remains
      .filter((ending) => contrary.has(ending))
      .map(({ text }): RemainsData => ({ words: text, from: 'also' })),
  ];
}

function sayVerdict(finding: SlipFinding, graph: Graph, decision: Decision): string {
  const { verdict } = finding;
  switch (verdict) {
    case 'harmless':
      return 'Harmless, whatever is chosen.';
    case 'fatal':
      return 'The ending fails, whatever is chosen.';
    case 'undecided':
      return `What follows from it was not settled${whyOpen(finding, decision)}.`;
    case 'sometimes':
      return `The ending still comes out, but only sometimes.${sayHarmless(finding, graph)}`;
    case 'harmful':
      return `The ending is no longer certain; whether it ever comes out was not worked out.${sayHarmless(finding, graph)}`;
  }
}

/** Why nothing is said of it. */
function whyOpen({ sentences }: SlipFinding, decision: Decision): string {
  const open = sentences.find(({ verdict }) => verdict === 'undecided')?.ending;
  const method = decision.sentences.find(({ ending }) => ending === open)?.method;
  if (method === 'rule') return ': the proof rests on what you choose, which is not followed through a slip';
  if (method === 'chance') return ': the proof rests on luck, which is not followed through a slip';
  return ': there are too many tables to try';
}

/** The ways of going wrong that do no harm, where there are some. */
function sayHarmless({ possible, sentences, ways }: SlipFinding, graph: Graph): string {
  const sets = sentences.map(({ harmlessKeys }) => harmlessKeys);
  if (ways < 2 || sets.some((set) => set === null)) return '';
  const words = new Map<string, string>();
  for (const { decisions } of possible.moments)
    for (const edge of decisions.flat()) {
      const key = String(edge.key);
      if (sets.every((set) => set?.has(key) === true)) words.set(key, graph.asideOf(edge)?.words ?? key);
    }
  if (words.size === 0) return '';
  if (words.size > MOST_TOLD) return ` In ${words.size} of the ${counted(ways, 'way')} it does no harm.`;
  return ` It does no harm where ${listed([...words.values()])}.`;
}

/** The failing performance of the first sentence that fails. */
function failureOf(sentences: readonly SlipOnSentence[], graph: Graph, parts: SlipParts): FailureData | null {
  const { decision, text, describe } = parts;
  const failing = sentences.find(({ failure }) => failure !== undefined);
  const sentence = decision.sentences.find(({ ending }) => ending === failing?.ending);
  if (failing?.failure === undefined || sentence === undefined) return null;
  const { start, path } = failing.failure;
  let at: Standing = { location: graph.start, table: start };
  for (const edge of path) at = takeEdge(at, edge);
  const stuck = graph.locations[at.location].exit ? undefined : waysOn(graph, at).stuck;
  const way = { start, path, cost: path.reduce((sum, { cost }) => sum + cost, 0) };
  return failureData({ ...decision, graph }, sentence, { way, stuck, shortest: false }, text, describe);
}
