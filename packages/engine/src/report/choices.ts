import { isStuck, START, type Key, type Option } from '../moves/move.ts';
import { printOrdinal } from '../phrases/tokens.ts';
import type { Edge, Graph, Location } from '../routine/graph.ts';
import type { Chooser, Step } from '../routine/routine.ts';
import { seenHere, waysOn, type Run, type Standing } from './runs.ts';

/** The step a location belongs to, with who decides there. */
export interface Deciding {
  readonly step: Step | undefined;
  readonly who: Chooser;
  readonly secret: boolean;
}

export function decidingAt(graph: Graph, location: Location): Deciding {
  const instruction = graph.instructionOf(location);
  const step = instruction !== undefined && 'step' in instruction ? instruction.step : undefined;
  if (step === undefined || step.do === 'each') return { step, who: 'spectator', secret: false };
  return { step, who: step.who, secret: step.do === 'move' && step.secret };
}

/** The slip that a run is, in words; undefined for what the working says. */
export function slipIn(
  graph: Graph,
  { edges }: Run,
): { readonly step: Step; readonly words: string } | undefined {
  const asides = edges.flatMap((edge) => graph.asideOf(edge) ?? []);
  const [first] = asides;
  if (first === undefined) return undefined;
  return { step: first.step, words: asides.map(({ words }) => words).join(' and ') };
}

/** What was chosen in a run, in the trade's words; empty when there was nothing to choose. */
export function sayRun(graph: Graph, run: Run, text: string): string {
  const location = graph.locations[run.edges[0].from];
  const { step } = decidingAt(graph, location);
  if (step === undefined || run.kind === 'set-up' || run.kind === 'slip') return '';
  if (run.kind === 'control') return sayControl(step, run.edges[0].key, text);
  if (run.standings.slice(0, -1).every((at) => waysOn(graph, at).edges.length < 2)) return '';
  const instruction = graph.instructionOf(location);
  if (instruction?.do !== 'move') return '';
  const seen = seenHere(graph, run.standings[0]);
  const keys = run.edges.map(({ key }) => key);
  return instruction.move.say(instruction.args, keys, graph.view(location, seen));
}

/** Words for one way on at a moment; a decision in the middle of a mix is called by its key. */
export function sayWay(graph: Graph, at: Standing, edge: Edge, text: string): string {
  const location = graph.locations[at.location];
  const { step } = decidingAt(graph, location);
  if (edge.kind === 'control' && step !== undefined) return sayControl(step, edge.key, text);
  const instruction = graph.instructionOf(location);
  const isWhole = location.phase === START && graph.locations[edge.to].phase === START;
  if (instruction?.do !== 'move' || !isWhole) return String(edge.key);
  const view = graph.view(location, seenHere(graph, at));
  return instruction.move.say(instruction.args, [edge.key], view) || String(edge.key);
}

/** A choice of a block in words; empty for a step that has none. */
export function sayControl(step: Step, key: Key, text: string): string {
  if (step.do === 'repeat') return key === 'again' ? 'once more' : 'stops';
  if (step.do !== 'either') return '';
  const branch = step.branches[Number(key) - 1];
  const way = `${ORDINALS[Number(key) - 1] ?? printOrdinal(Number(key))} way`;
  if (branch.length === 0) return `${way}: nothing`;
  const said = sentenceOf(branch[0], text);
  return said === '' ? way : `${way}: ${said}`;
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'];

/** A step's sentence as the note writes it, on one line, without what it numbers. */
export function sentenceOf(step: Pick<Step, 'range'>, text: string): string {
  return text.slice(step.range.from, step.range.to).replace(/\s+/g, ' ').trim();
}

/** The actions of an option, made again from its key; those of a slip are kept. */
export function optionOf(
  graph: Graph,
  at: Standing,
  edge: Edge,
): Pick<Option, 'key' | 'actions'> | undefined {
  const aside = graph.asideOf(edge);
  if (aside !== undefined) return aside;
  const location = graph.locations[at.location];
  const instruction = graph.instructionOf(location);
  if (instruction?.do !== 'move') return undefined;
  const found = instruction.move.options(instruction.args, graph.view(location, seenHere(graph, at)));
  return isStuck(found) ? undefined : found.find(({ key }) => key === edge.key);
}
