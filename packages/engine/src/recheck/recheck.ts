import { trouble, type Trouble } from '../base/diagnostic.ts';
import { holds, type Formula } from '../claims/formula.ts';
import { meaningOf } from '../claims/sentence.ts';
import { followers } from '../routine/program.ts';
import { Graph } from '../routine/graph.ts';
import { Budget } from '../base/budget.ts';
import type { Ending, Routine } from '../routine/routine.ts';
import { startingOrders, startsOf, type Starts } from '../routine/starts.ts';
import type { ClosedSet, RuleProof, SentenceProof } from '../verdicts/certificate.ts';
import { checkClosedSet, looksFurther } from './closed-set.ts';
import type { ToldApart } from './codes.ts';
import { checkInvariant, impliesAtExit, type Arrival } from './invariant.ts';
import { checkRule } from './rule-walk.ts';

export interface Rechecked {
  readonly text: string;
  /** Undefined when the proof was accepted, or when there is none to check. */
  readonly fault: Trouble | undefined;
  /** True where the certificate says nothing of the sentence. */
  readonly silent?: true;
}

/**
 * Checks the proofs of a routine's sentences: every location and edge is made anew from the routine, and each must bear the proof
 * out. Shares with the prover what moves and sentences mean, and the making of the graph; none of its search. Throws BudgetEnded when
 * the work allowed is spent.
 */
export function recheck(
  routine: Routine,
  proofs: readonly SentenceProof[],
  budget = new Budget(Infinity),
): Rechecked[] {
  const graph = new Graph(routine);
  const starts = startsOf(routine);
  const rules = proofs.flatMap((proof) => (proof.proof === 'rule' ? [proof.rule] : []));
  return routine.endings.map((ending, i) => {
    const proof = proofs[i];
    const { text } = ending;
    if (proof === undefined) return { text, fault: trouble('certificate-missing') };
    if (proof.proof === 'none') return { text, fault: undefined, silent: true };
    if (proof.proof === 'rule' && !rules.every((rule) => isSameRule(rule, rules[0])))
      return { text, fault: trouble('certificate-rules-differ') };
    return { text, fault: checkSentence(graph, starts, ending, proof, budget) };
  });
}

/** The performer can follow only one rule in one performance. */
function isSameRule(one: RuleProof, other: RuleProof): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function checkSentence(
  graph: Graph,
  starts: Starts,
  ending: Ending,
  proof: Exclude<SentenceProof, { proof: 'none' }>,
  budget: Budget,
): Trouble | undefined {
  const formulaAt = (exit: number): Formula | Trouble => {
    const { layout, numbers } = graph.locations[exit];
    const start = startingOrders(graph.routine);
    const meaning = meaningOf(ending.sentence, { layout, numbers, cards: starts.universe, start });
    return meaning.ok ? meaning.value.formula : meaning.error;
  };
  switch (proof.proof) {
    case 'closed set': {
      const fault = looksMissing(graph, proof.set);
      if (fault !== undefined) return fault;
      return checkClosedSet(graph, starts.universe, starts.all(), proof.set, false, budget, (exit, table) => {
        const formula = formulaAt(exit);
        if ('code' in formula) return formula;
        if (looksFurther(formula, proof.set))
          return trouble('certificate-shape', { what: 'what the set tells apart' });
        return holds(formula, table)
          ? undefined
          : trouble('certificate-claim', { location: graph.locations[exit].key });
      }).fault;
    }
    case 'closed set then invariant': {
      const missing = looksMissing(graph, proof.set);
      if (missing !== undefined) return missing;
      const { fault, arrivals } = checkClosedSet(
        graph,
        starts.universe,
        starts.all(),
        proof.set,
        true,
        budget,
        () => trouble('certificate-shape', { what: 'an exit before the last look' }),
      );
      if (fault !== undefined) return fault;
      return checkLinear(graph, starts, proof.families, arrivals, formulaAt, proof.set, budget);
    }
    case 'rule': {
      const missing = looksMissing(graph, proof.rule);
      if (missing !== undefined) return missing;
      return checkRule(graph, starts.universe, starts.all(), proof.rule, budget, (exit, table) => {
        const formula = formulaAt(exit);
        if ('code' in formula) return formula;
        if (looksFurther(formula, proof.rule))
          return trouble('certificate-shape', { what: 'what the set tells apart' });
        return holds(formula, table)
          ? undefined
          : trouble('certificate-claim', { location: graph.locations[exit].key });
      });
    }
    case 'invariant':
    case 'sizes': {
      if (graph.locations[graph.start].looksAhead)
        return trouble('certificate-shape', { what: 'a routine that looks at cards' });
      const arrivals = starts.spanning.map((table) => ({ location: graph.start, table }));
      return checkLinear(
        graph,
        starts,
        proof.proof === 'sizes' ? [] : proof.families,
        arrivals,
        formulaAt,
        undefined,
        budget,
      );
    }
  }
}

function checkLinear(
  graph: Graph,
  starts: Starts,
  families: Extract<SentenceProof, { proof: 'invariant' }>['families'],
  arrivals: readonly Arrival[],
  formulaAt: (exit: number) => Formula | Trouble,
  set: ClosedSet | undefined,
  budget: Budget,
): Trouble | undefined {
  const locations = graph.reach([...new Set(arrivals.map((a) => a.location))], budget);
  for (const id of locations)
    if (graph.waysFrom(id).stuck !== undefined)
      return trouble('certificate-stuck', { location: graph.locations[id].key });
  for (const family of families) {
    const fault = checkInvariant(graph, starts.universe, family, locations, arrivals, budget);
    if (fault !== undefined) return fault;
  }
  for (const exit of locations.filter((id) => graph.locations[id].exit)) {
    const formula = formulaAt(exit);
    if ('code' in formula) return formula;
    if (set !== undefined && looksFurther(formula, set))
      return trouble('certificate-shape', { what: 'what the set tells apart' });
    if (!impliesAtExit(graph, starts.universe, families, exit, formula))
      return trouble('certificate-claim', { location: graph.locations[exit].key });
  }
  return undefined;
}

/** A set that tells apart less than the working looks at proves nothing. */
function looksMissing(graph: Graph, set: ToldApart): Trouble | undefined {
  const todo = [graph.program.start];
  const seen = new Set(todo);
  for (const at of todo) {
    const instruction = graph.program.instructions[at];
    if (instruction.do === 'move' && instruction.move.looks !== undefined) {
      const { attributes, bits } = instruction.move.looks;
      if (
        attributes(instruction.args).some((name) => !set.attributes.includes(name)) ||
        bits(instruction.args).some((name) => !set.bits.includes(name))
      )
        return trouble('certificate-shape', { what: 'what the set tells apart' });
    }
    for (const next of followers(instruction))
      if (!seen.has(next)) {
        seen.add(next);
        todo.push(next);
      }
  }
  return undefined;
}
