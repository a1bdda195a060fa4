import type { Decision } from '../proving/decision.ts';
import type { Routine, Step } from '../routine/routine.ts';

/** How much was covered, in exact figures. */
export interface Coverage {
  readonly cards: number;
  /** Sentences of the working, those inside blocks included. */
  readonly steps: number;
  /** Moments a performance can be at, cards aside. */
  readonly locations: number;
  /** Ways from moment to moment; null where they depend on what is seen of the cards. */
  readonly edges: number | null;
  /** Tables kept by complete searches, and equations kept by linear algebra, all sentences together. */
  readonly tables: number;
  readonly equations: number;
  /** Ways through the working, as an exact whole number; `unlimited` with an endless repetition; null where it was not counted. */
  readonly performances: string | null;
  /** Ways to lay the cards out at the start, as an exact whole number. */
  readonly starts: string;
}

export function coverageOf(decision: Decision): Coverage {
  const { graph, region, sentences, performances } = decision;
  const sum = (of: (sentence: Decision['sentences'][number]) => number): number =>
    sentences.reduce((all, sentence) => all + of(sentence), 0);
  return {
    cards: graph.cards,
    steps: countSteps(graph.routine.steps),
    locations: region === undefined ? graph.locations.length : region.order.length,
    edges: region === undefined ? null : region.edges,
    tables: sum(({ states }) => states),
    equations: sum(({ rows }) => rows),
    performances: region === undefined ? null : performances === null ? 'unlimited' : String(performances),
    starts: String(countStarts(graph.routine, decision.starts.count)),
  };
}

function countSteps(steps: readonly Step[]): number {
  return steps.reduce((sum, step) => {
    switch (step.do) {
      case 'move':
        return sum + 1;
      case 'repeat':
      case 'each':
        return sum + 1 + countSteps(step.body);
      case 'either':
        return sum + 1 + step.branches.reduce((all, branch) => all + countSteps(branch), 0);
      case 'if':
        return sum + 1 + countSteps(step.then) + countSteps(step.otherwise);
    }
  }, 0);
}

/** Orders of every stretch of places that may be filled anyhow, facings of every place that may lie anyhow, and open attributes. */
function countStarts({ setUp }: Routine, attributes: bigint): bigint {
  let count = attributes;
  const faces = new Set<string>();
  const stretches = new Map<string, { from: number; to: number }[]>();
  for (const freedom of setUp.freedoms) {
    if (freedom.free === 'attribute') continue;
    const { pile, from } = freedom;
    const to = from + freedom.count;
    if (freedom.free === 'faces') for (let k = from; k < to; k++) faces.add(`${pile} ${k}`);
    else if (to > from) stretches.set(pile, joined([...(stretches.get(pile) ?? []), { from, to }]));
  }
  count *= 2n ** BigInt(faces.size);
  for (const { from, to } of [...stretches.values()].flat())
    for (let k = 2; k <= to - from; k++) count *= BigInt(k);
  return count;
}

/** Stretches that share a place are one: exchanges in both bring about every order of all their cards. */
function joined(stretches: readonly { from: number; to: number }[]): { from: number; to: number }[] {
  const result: { from: number; to: number }[] = [];
  for (const { from, to } of [...stretches].sort((a, b) => a.from - b.from)) {
    const last = result[result.length - 1];
    if (last !== undefined && from < last.to) last.to = Math.max(last.to, to);
    else result.push({ from, to });
  }
  return result;
}
