import { describe, expect, test } from 'vitest';
import { seeded } from '../src/base/seeded.ts';
import { compile } from '../src/note/compile.ts';
import { read } from '../src/note/read.ts';
import { certify } from '../src/proving/certify.ts';
import { decide } from '../src/proving/decide.ts';
import { recheck } from '../src/recheck/recheck.ts';
import { Graph } from '../src/routine/graph.ts';
import type { Routine } from '../src/routine/routine.ts';
import { startsOf, type TableSlots } from '../src/routine/starts.ts';
import { afterEdge } from '../src/routine/table.ts';
import type { FamilyProof, SentenceProof } from '../src/verdicts/certificate.ts';

function routineOf(text: string): Routine {
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  return routine;
}

const NOTES = [
  `## Set-up
- packet: 2S 9H 4C KD 7S AH, face down
## Working
1. Any number of times: cut the packet, then turn over the top 2 together.
2. Deal the packet into a pile, turning every second card.
## Ending
- Exactly 3 cards are face up.
`,
  `## Set-up
- packet: 6 cards alternately red and black, face down
## Working
1. Deal any number of cards to the table.
2. Riffle the packet and the table together.
## Ending
- Every pair has one card of each colour.
`,
  `## Set-up
- packet: 2S 9H 4C KD 7S, face down
## Working
1. Any number of times: cut the packet.
2. Turn over the top 2 together.
## Ending
- At least 3 cards are face down.
`,
];

/** Every (location, table) pair that is reached, walked through plainly. */
function reached(graph: Graph, routine: Routine): { location: number; table: TableSlots }[] {
  const start = { location: graph.start, table: startsOf(routine).base };
  const list = [start];
  const key = (at: { location: number; table: TableSlots }): string =>
    `${at.location}|${at.table.cards.map((card, s) => `${card.id}.${at.table.bits[s]}`).join()}`;
  const seen = new Set([key(start)]);
  for (const at of list)
    for (const edge of graph.waysFrom(at.location).edges) {
      const next = { location: edge.to, table: afterEdge(at.table, edge) };
      if (seen.has(key(next))) continue;
      seen.add(key(next));
      list.push(next);
    }
  return list;
}

/** Whether some equation of the family is false of some table that is really reached there: then it is no invariant. */
function isFalse(
  graph: Graph,
  routine: Routine,
  family: FamilyProof,
  tables: ReturnType<typeof reached>,
): boolean {
  const { universe } = startsOf(routine);
  for (const { location, table } of tables)
    for (const row of family.locations[graph.locations[location].key] ?? [])
      for (const member of family.members) {
        const settings = 1 << member.bits.length;
        let sum = 0;
        for (let i = 0; i < row.length; i += 2) {
          const fixed = graph.cards * family.d;
          if (row[i] >= fixed) sum += row[i + 1] * member.constants[row[i] - fixed];
          else {
            const slot = Math.floor(row[i] / family.d);
            let setting = 0;
            member.bits.forEach(
              (bit, b) => (setting |= ((table.bits[slot] >>> graph.bits.indexOf(bit)) & 1) << b),
            );
            const at = universe.indexOf(table.cards[slot]) * settings + setting;
            sum += row[i + 1] * member.columns[row[i] % family.d][at];
          }
        }
        if (sum % family.p !== 0) return true;
      }
  return false;
}

/** The family with one entry of one equation changed, or an equation copied to another location. */
function altered(family: FamilyProof, width: number, random: () => number): FamilyProof {
  const below = (n: number): number => Math.floor(random() * n);
  const keys = Object.keys(family.locations).filter((key) => family.locations[key].length > 0);
  const from = keys[below(keys.length)];
  const rows = family.locations[from].map((row) => [...row]);
  const row = rows[below(rows.length)];
  if (random() < 0.5) {
    const to = keys[below(keys.length)];
    return { ...family, locations: { ...family.locations, [to]: [...family.locations[to], row] } };
  }
  const index = below(width);
  const known = row.findIndex((value, i) => i % 2 === 0 && value === index);
  if (known >= 0) row[known + 1] = (row[known + 1] + 1 + below(family.p - 1)) % family.p;
  else row.push(index, 1 + below(family.p - 1));
  return { ...family, locations: { ...family.locations, [from]: rows } };
}

describe('certificates', () => {
  test.each(NOTES.map((note, i) => [i, note] as const))('note %i: the proof is accepted', (_, note) => {
    const routine = routineOf(note);
    const decision = decide(routine);
    const proofs = decision.sentences.map((sentence) => certify(decision, sentence));
    expect(proofs.every((proof) => proof !== null)).toBe(true);
    const through = JSON.parse(JSON.stringify(proofs)) as SentenceProof[];
    expect(recheck(routine, through).map((r) => r.fault)).toEqual(through.map(() => undefined));
  });

  test('a thousand altered proofs that are false of reached tables are all rejected', () => {
    const random = seeded(2026);
    let rejected = 0;
    const cases = NOTES.slice(0, 2).map((note) => {
      const routine = routineOf(note);
      const decision = decide(routine);
      const proof = certify(decision, decision.sentences[0]);
      if (proof?.proof !== 'invariant') throw new Error('expected an invariant');
      const graph = new Graph(routine);
      return { routine, proof, graph, tables: reached(graph, routine) };
    });
    for (let tries = 0; rejected < 1000 && tries < 20_000; tries++) {
      const { routine, proof, graph, tables } = cases[tries % cases.length];
      const family = proof.families[0];
      const changed = altered(family, graph.cards * family.d + family.m, random);
      if (!isFalse(graph, routine, changed, tables)) continue;
      const [result] = recheck(routine, [{ ...proof, families: [changed, ...proof.families.slice(1)] }]);
      expect(result.fault).toBeDefined();
      rejected++;
    }
    expect(rejected).toBe(1000);
  });

  test('a proof of another sentence, of fewer tables or of nothing is rejected', () => {
    const routine = routineOf(NOTES[2]);
    const decision = decide(routine);
    const proof = certify(decision, decision.sentences[0]);
    if (proof?.proof !== 'closed set') throw new Error('expected a closed set');
    const { text } = proof;
    const wrong: SentenceProof[] = [
      { text, proof: 'sizes' },
      { text, proof: 'invariant', families: [] },
      { ...proof, set: { ...proof.set, tables: proof.set.tables - 1 } },
      { ...proof, set: { ...proof.set, digest: '0000000000000000' } },
      { ...proof, set: { ...proof.set, bits: [] } },
    ];
    for (const one of wrong) expect(recheck(routine, [one])[0].fault).toBeDefined();
    expect(recheck(routine, [])[0].fault).toBeDefined();
  });
});
