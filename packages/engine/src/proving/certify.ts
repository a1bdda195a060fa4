import { Budget } from '../base/budget.ts';
import { SetDigest } from '../base/digest.ts';
import type { ClosedSet, FamilyProof, RuleProof, SentenceProof } from '../verdicts/certificate.ts';
import { classesOf } from './classes.ts';
import type { Decision, Reads, SentenceDecision, Solved } from './decision.ts';
import { exactSearch } from './exact.ts';
import type { WrittenRule } from './rule.ts';
import { maskFor } from './space.ts';

/** The proof of a proved sentence as plain data; null for any other verdict. */
export function certify(decision: Decision, sentence: SentenceDecision): SentenceProof | null {
  if (sentence.verdict !== 'proved') return null;
  const { text } = sentence.ending;
  const families = sentence.solved.map((solved) => familyProof(decision, solved));
  switch (sentence.method) {
    case 'sizes':
      return { text, proof: 'sizes' };
    case 'linear':
      return { text, proof: 'invariant', families };
    case 'exact':
      return { text, proof: 'closed set', set: closedSet(decision, sentence, false) };
    case 'exact then linear':
      return { text, proof: 'closed set then invariant', set: closedSet(decision, sentence, true), families };
    case 'rule':
      return sentence.rule === undefined
        ? null
        : { text, proof: 'rule', rule: ruleProof(decision, sentence.rule, sentence.reads) };
    case 'chance':
    case 'trials':
      return null;
  }
}

function ruleProof({ graph }: Decision, rule: WrittenRule, reads: Reads | undefined): RuleProof {
  const { attributes, bits } = reads ?? { attributes: [], bits: [] };
  const { beliefs, tables } = rule;
  const choices = rule.lines.map(({ location, digest, key }) => ({
    at: graph.locations[location].key,
    digest,
    key,
  }));
  return { attributes, bits, beliefs, tables, choices };
}

function familyProof(decision: Decision, solved: Solved): FamilyProof {
  const { graph, starts } = decision;
  const { problem, kernel, need } = solved;
  const { p, d, m, width, space } = problem;
  const ops = new Set<number>();
  const bits = new Set(problem.members.flatMap((member) => member.space.bits));
  const mask = maskFor([...bits].map((bit) => graph.bits.indexOf(bit)));
  const locations: Record<string, number[][]> = {};
  need.at.forEach((rows, location) => {
    if (rows === undefined) return;
    locations[graph.locations[location].key] = rows.map((r) => {
      const sparse: number[] = [];
      const vector = need.rows.vector(r);
      for (let i = 0; i < width; i++) {
        const value = kernel.entry(vector, i);
        if (value !== 0) sparse.push(i, value);
      }
      return sparse;
    });
  });
  // Also where nothing is needed yet: the checker wants to know how every operation acts on the columns. Up to the last look at cards it
  // follows tables, not columns.
  for (const edge of graph.edges)
    if (!graph.locations[edge.from].looksAhead)
      for (const op of edge.effect.ops ?? []) if ((op & mask) !== 0) ops.add((op & mask) >>> 0);
  return {
    p,
    d,
    m,
    members: problem.members.map((member) => ({
      bits: member.space.bits,
      columns: Array.from({ length: d }, (_, k) =>
        starts.universe.flatMap((card) =>
          Array.from({ length: 1 << member.space.bits.length }, (_unused, setting) => {
            const word = member.space.bits.reduce(
              (w, bit, i) => w | (((setting >> i) & 1) << graph.bits.indexOf(bit)),
              0,
            );
            return member.space.valuesOf(card, word)[k];
          }),
        ),
      ),
      constants: member.constants,
    })),
    under: Object.fromEntries([...ops].map((op) => [String(op), space.under(op)])),
    locations,
  };
}

function closedSet(decision: Decision, sentence: SentenceDecision, untilLastLook: boolean): ClosedSet {
  const { graph, starts } = decision;
  const reads = sentence.reads ?? { attributes: [], bits: [] };
  const classes = classesOf(starts.universe, new Set(reads.attributes), new Set(reads.bits), graph);
  const digest = new SetDigest();
  let tables = 0;
  // The verdict came from this same search within its budget, so it ends.
  exactSearch(graph, classes, starts.all(), new Budget(Infinity), (location, table) => {
    const here = graph.locations[location];
    const codes = Array.from({ length: graph.cards }, (_, slot) => {
      const word = classes.bits.reduce((w, kind) => w | (table.bit(slot, graph.bits.names[kind]) << kind), 0);
      return classes.codeOf(table.card(slot), word);
    });
    digest.add(`${here.key}|${codes.join()}`);
    tables++;
    return here.exit || (untilLastLook && !here.looksAhead) ? 'halt' : 'go on';
  });
  return { attributes: reads.attributes, bits: reads.bits, tables, digest: digest.hex() };
}
