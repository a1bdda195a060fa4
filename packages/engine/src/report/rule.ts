import { START, type Key } from '../moves/move.ts';
import type { PublicEvent } from '../proving/beliefs.ts';
import type { RuleLine } from '../proving/rule.ts';
import type { Graph } from '../routine/graph.ts';
import { decidingAt, sayControl } from './choices.ts';
import type { RuleData } from './report.ts';

/**
 * A rule in words: what the performer chooses at each step, and after which of the last things that became public; nothing is said of
 * these where they make no difference.
 */
export function ruleData(graph: Graph, rule: readonly RuleLine[], text: string): RuleData[] {
  const steps = new Map<string, RuleLine[]>();
  for (const line of rule) if (line.begins) steps.set(line.step, [...(steps.get(line.step) ?? []), line]);
  return [...steps.values()].flatMap((lines) => stepData(graph, lines, text));
}

function stepData(graph: Graph, lines: readonly RuleLine[], text: string): RuleData[] {
  const cases = lines.flatMap((line) =>
    line.ways.map((way) => ({ line, words: wordsOf(graph, way, text), choice: choiceOf(graph, line, text) })),
  );
  const longest = Math.max(0, ...cases.map(({ words }) => words.length));
  for (let length = 0; ; length++) {
    const byWhen = new Map<string, RuleData>();
    const settled = cases.every(({ line, words, choice }) => {
      const when = length === 0 ? [] : words.slice(-length);
      const known = byWhen.get(when.join('\n'));
      if (known === undefined) byWhen.set(when.join('\n'), { step: line.step, when, key: line.key, choice });
      return known === undefined || known.choice === choice;
    });
    if (settled || length >= longest) return [...byWhen.values()];
  }
}

function choiceOf(graph: Graph, { location, keys }: RuleLine, text: string): string {
  return said(graph, location, keys, text);
}

/** What became public, one entry for each doing of a step. */
function wordsOf(graph: Graph, way: readonly PublicEvent[], text: string): string[] {
  const runs: { location: number; keys: Key[] }[] = [];
  for (const { is, location, key } of way) {
    const { at, phase } = graph.locations[location];
    const last = runs.at(-1);
    const goesOn =
      is === 'choice' && phase !== START && last !== undefined && graph.locations[last.location].at === at;
    if (goesOn) last.keys.push(key);
    else runs.push({ location, keys: [key] });
  }
  return runs.map(({ location, keys }) => said(graph, location, keys, text)).filter((words) => words !== '');
}

function said(graph: Graph, id: number, keys: readonly Key[], text: string): string {
  const location = graph.locations[id];
  const instruction = graph.instructionOf(location);
  const { step } = decidingAt(graph, location);
  if (instruction?.do === 'move')
    return instruction.move.say(instruction.args, keys, graph.view(location)) || keys.join(', ');
  return step === undefined ? keys.join(', ') : sayControl(step, keys[0], text) || keys.join(', ');
}
