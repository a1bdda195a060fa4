import { describe, expect, test } from 'vitest';
import { seeded } from '../../src/base/seeded.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { certify } from '../../src/proving/certify.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { recheck } from '../../src/recheck/recheck.ts';
import type { RuleProof, SentenceProof } from '../../src/verdicts/certificate.ts';
import { randomNote } from './random-games.ts';

function proved(text: string) {
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  const decision = decide(routine);
  // As somebody else gets it: through a file.
  const proofs = JSON.parse(
    JSON.stringify(decision.sentences.map((sentence) => certify(decision, sentence))),
  ) as SentenceProof[];
  return {
    routine,
    proofs,
    faults: (all: readonly SentenceProof[]) => recheck(routine, all).map((r) => r.fault),
  };
}

function ruleOf(proof: SentenceProof): RuleProof {
  if (proof.proof !== 'rule') throw new Error(`a proof by ${proof.proof}`);
  return proof.rule;
}

const TAKING = `## Set-up
- packet: 2S 9H 4C KD 7S AH 3D 5D 6C, face down
## Working
1. 2 times:
   1. Push off 1 to 3 cards to the table, openly.
   2. You push off 1 to 3 cards to the table.
## Ending
- The only card left in the packet is the 6C.
`;
const PILES = `## Set-up
- packet: 2S 9H 4C KD 7S AH 3D 5D 6C, face down
## Working
1. The spectator thinks of any card, call it chosen.
2. 2 times:
   1. Deal the packet into 3 piles.
   2. The spectator says which pile holds chosen, call its number N.
   3. You gather the piles in any order.
## Ending
- The chosen card is the top card.
- The bottom card is not chosen.
`;
const ROUNDS = `## Set-up
- packet: 2S 9H 4C KD, face down
## Working
1. Cut the packet, openly.
2. You choose how often: move the top card to the bottom.
## Ending
- The top card is the 4C.
`;

describe('rules as certificates', () => {
  test.each([
    ['one to three taken in turn', TAKING],
    ['pile location', PILES],
    ['as often as needed', ROUNDS],
  ])('%s: the rule is accepted', (_, note) => {
    const { proofs, faults } = proved(note);
    expect(proofs.map(({ proof }) => proof)).toEqual(proofs.map(() => 'rule'));
    expect(faults(proofs)).toEqual(proofs.map(() => undefined));
  });

  test('another answer anywhere is not', () => {
    const { proofs, faults } = proved(TAKING);
    const { text } = proofs[0];
    const rule = ruleOf(proofs[0]);
    expect(rule.choices.length).toBeGreaterThan(3);
    const others = rule.choices.flatMap(({ key: right }, i) =>
      [1, 2, 3, 4, '1']
        .filter((key) => key !== right)
        .map((key) => rule.choices.map((choice, k) => (k === i ? { ...choice, key } : choice))),
    );
    for (const choices of others)
      expect(faults([{ text, proof: 'rule', rule: { ...rule, choices } }])[0]).toBeDefined();
  });

  test('a rule that leaves out a case, tells too little apart or goes on for ever is not', () => {
    const { proofs, faults } = proved(PILES);
    const rule = ruleOf(proofs[0]);
    const with_ = (part: Partial<RuleProof>): SentenceProof[] =>
      proofs.map(({ text }) => ({ text, proof: 'rule', rule: { ...rule, ...part } }));
    const isRejected = (all: readonly SentenceProof[]): boolean => faults(all).every((f) => f !== undefined);
    for (let i = 0; i < rule.choices.length; i++)
      expect(isRejected(with_({ choices: rule.choices.filter((_, k) => k !== i) }))).toBe(true);
    expect(isRejected(with_({ bits: [] }))).toBe(true);
    expect(isRejected(with_({ beliefs: 3 }))).toBe(true);
    expect(isRejected(with_({ tables: 10 }))).toBe(true);
    const endless = proved(ROUNDS);
    const again = ruleOf(endless.proofs[0]);
    const choices = again.choices.map((choice) => ({ ...choice, key: 'again' }));
    const fault = endless.faults([{ ...endless.proofs[0], proof: 'rule', rule: { ...again, choices } }])[0];
    expect(fault?.code).toMatch(/^certificate-rule/);
  });

  test('two sentences must have one rule', () => {
    const { proofs, faults } = proved(PILES);
    const rule = ruleOf(proofs[1]);
    const other: SentenceProof = {
      text: proofs[1].text,
      proof: 'rule',
      rule: { ...rule, tables: rule.tables + 1 },
    };
    expect(faults([proofs[0], other]).map((fault) => fault?.code)).toEqual([
      'certificate-rules-differ',
      'certificate-rules-differ',
    ]);
  });

  test('every rule found for a random game is accepted, and hardly any altered one', () => {
    const random = seeded(31);
    const accepted: boolean[] = [];
    const rejected: boolean[] = [];
    for (let i = 0; i < 90; i++) {
      const { routine } = compile(read(randomNote(random)));
      if (routine === undefined) continue;
      const decision = decide(routine, { ...DEFAULT_LIMITS, states: 20_000, work: 400_000 });
      for (const sentence of decision.sentences) {
        const proof = certify(decision, sentence);
        if (proof?.proof !== 'rule') continue;
        const one = { ...routine, endings: [sentence.ending] };
        const isAccepted = (rule: RuleProof): boolean =>
          recheck(one, [{ ...proof, rule }])[0].fault === undefined;
        accepted.push(isAccepted(proof.rule));
        // A choice for a moment that never comes is none for the one that does.
        const choices = proof.rule.choices.map((choice) => ({ ...choice, digest: '0'.repeat(16) }));
        if (choices.length > 0) rejected.push(!isAccepted({ ...proof.rule, choices }));
      }
    }
    expect(accepted.length).toBeGreaterThan(15);
    expect(rejected.length).toBeGreaterThan(15);
    expect([...accepted, ...rejected].every(Boolean)).toBe(true);
  });
});
