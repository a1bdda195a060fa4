import { describe, expect, test } from 'vitest';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';
import type { SentenceDecision } from '../../src/proving/decision.ts';
import { ruleData } from '../../src/report/rule.ts';

function decided(setUp: string, working: string, ...endings: readonly string[]) {
  const text = `## Set-up
- packet: ${setUp}
## Working
${working}
## Ending
${endings.map((ending) => `- ${ending}`).join('\n')}
`;
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  const decision = decide(routine);
  const rules = decision.sentences.map(({ rule }) => rule && ruleData(decision.graph, rule.lines, text));
  return { sentences: decision.sentences, rules };
}

const verdicts = (all: readonly SentenceDecision[]) => all.map(({ verdict }) => verdict);
const cards = (n: number): string =>
  `${'2S 9H 4C KD 7S AH 3D 5D 6C 8H JC QS'.split(' ').slice(0, n).join(' ')}, face down`;

/** Pick two, the other removes one, in turn, until one card is left. */
function pickTwo(n: number, first: 'spectator' | 'performer'): string {
  const lines: string[] = [];
  for (let left = n, who = first; left > 1; left--, who = who === 'spectator' ? 'performer' : 'spectator') {
    const spectators = 'The spectator picks any 2 cards to the hand, openly.';
    const picks = who === 'spectator' ? spectators : 'You pick any 2 cards to the hand.';
    const theirs = 'The spectator takes out any card of the hand to the discard, openly.';
    const removes = who === 'spectator' ? 'You take out any card of the hand to the discard.' : theirs;
    lines.push(picks, removes, 'Put the hand on the packet.');
  }
  return lines.map((line, i) => `${i + 1}. ${line}`).join('\n');
}

describe('pick two, remove one, in turn (from the trade, no source): the target survives', () => {
  test.each([
    [2, 'spectator', 'proved'],
    [3, 'spectator', 'refuted'],
    [4, 'spectator', 'proved'],
    [5, 'spectator', 'refuted'],
    [2, 'performer', 'refuted'],
    [3, 'performer', 'proved'],
    [4, 'performer', 'refuted'],
    [5, 'performer', 'proved'],
  ] as const)('%i cards, the %s picks first: %s', (n, first, verdict) => {
    const { sentences } = decided(cards(n), pickTwo(n, first), 'The only card left in the packet is the 2S.');
    expect(verdicts(sentences)).toEqual([verdict]);
  });
});

describe('one to three cards taken in turn (common practice, no source)', () => {
  const working = (rounds: number) => `1. ${rounds} times:
   1. Push off 1 to 3 cards to the table, openly.
   2. You push off 1 to 3 cards to the table.`;

  test.each([
    [5, 1, '7S', 'proved'],
    [9, 2, '6C', 'proved'],
    [8, 2, '5D', 'refuted'],
    [10, 2, '8H', 'refuted'],
  ])('%i cards in %i rounds: the last is left, %s: %s', (n, rounds, last, verdict) => {
    const { sentences } = decided(
      cards(n),
      working(rounds),
      `The only card left in the packet is the ${last}.`,
    );
    expect(verdicts(sentences)).toEqual([verdict]);
  });

  test('the performer makes up four each time, whatever came before', () => {
    const { rules } = decided(cards(9), working(2), 'The only card left in the packet is the 6C.');
    expect(rules[0]?.map(({ step, when, key }) => [step, when, key])).toEqual([
      ['1.2', ['takes 1 card'], 3],
      ['1.2', ['takes 2 cards'], 2],
      ['1.2', ['takes 3 cards'], 1],
    ]);
  });

  test('in secret the performer cannot answer, and is told which secret it is', () => {
    const secret = working(1).replace('openly', 'in secret');
    const [one] = decided(cards(5), secret, 'The only card left in the packet is the 7S.').sentences;
    expect(one.verdict).toBe('refuted');
    expect(one.reason).toEqual({ code: 'needs-secret', facts: { step: '1.1' } });
  });
});

describe('pile location with the order of gathering as the performer likes', () => {
  const rounds = (n: number, piles: number) => `1. The spectator thinks of any card, call it chosen.
2. ${n} times:
   1. Deal the packet into ${piles} piles.
   2. The spectator says which pile holds chosen, call its number N.
   3. You gather the piles in any order.`;

  test.each([
    [9, 2, 3, '1st', 'proved'],
    [9, 2, 3, '6th', 'proved'],
    [9, 1, 3, '1st', 'refuted'],
    [8, 3, 2, '5th', 'proved'],
  ])(
    '%i cards, %i rounds of %i piles: it can be brought to the %s place: %s',
    (n, times, piles, place, verdict) => {
      const { sentences } = decided(
        cards(n),
        rounds(times, piles),
        `The chosen card is at the ${place} place.`,
      );
      expect(verdicts(sentences)).toEqual([verdict]);
    },
  );

  test('two sentences that ask for different orders have no rule in common', () => {
    const { sentences } = decided(
      cards(9),
      rounds(2, 3),
      'The chosen card is the top card.',
      'The chosen card is the bottom card.',
      'All cards are face down.',
    );
    expect(verdicts(sentences)).toEqual(['proved', 'refuted', 'proved']);
    expect(sentences[1].reason?.code).toBe('no-common-rule');
    expect(sentences[1].failure).toBeDefined();
    expect(sentences[2].method).not.toBe('rule');
  });

  test('sentences that one rule serves get the same rule', () => {
    const { sentences } = decided(
      cards(9),
      rounds(2, 3),
      'The chosen card is the top card.',
      'The chosen card is at the 1st place, and the bottom card is not chosen.',
    );
    expect(verdicts(sentences)).toEqual(['proved', 'proved']);
    expect(sentences[0].rule).toEqual(sentences[1].rule);
  });
});

describe('repetitions', () => {
  test('one that the performer controls must come to an end', () => {
    const [one] = decided(
      cards(3),
      '1. You choose how often, at least once:\n   1. Turn over the packet, openly.\n   2. You turn over the packet.\n2. Turn over the packet.',
      'All cards are face down.',
    ).sentences;
    expect(one.verdict).toBe('refuted');
  });

  test('the performer may go on until it is right, if it will be', () => {
    const working = '1. You choose how often:\n   1. Move the top card to the bottom.';
    expect(verdicts(decided(cards(5), working, 'The top card is the 4C.').sentences)).toEqual(['proved']);
  });

  test('but not if only luck could make it right', () => {
    const working = '1. You choose how often:\n   1. The spectator cuts the packet, openly.';
    expect(verdicts(decided(cards(3), working, 'The top card is the 4C.').sentences)).toEqual(['refuted']);
  });

  test('going on for ever is the spectator\u2019s own affair', () => {
    const working = '1. Any number of times:\n   1. Cut the packet, openly.\n2. You cut the packet.';
    expect(verdicts(decided(cards(3), working, 'The top card is the 4C.').sentences)).toEqual(['proved']);
  });
});

describe('what is seen and what is not', () => {
  const answer = '2. You may turn over the packet.';
  const down = 'All cards are face down.';

  test.each([
    ['1. The spectator may turn over the packet.', 'proved'],
    ['1. The spectator may turn over the packet, in secret.', 'refuted'],
    ['1. Either:\n   - Turn over the packet.\n   - Cut the packet.', 'proved'],
    ['1. Either:\n   - Turn over the packet, in secret.\n   - Cut the packet, in secret.', 'refuted'],
    ['1. Any number of times: turn over the packet.', 'proved'],
    ['1. Any number of times: turn over the packet, in secret.', 'refuted'],
  ])('%s %s', (first, verdict) => {
    const { sentences } = decided(cards(2), `${first}\n${answer}`, down);
    expect(verdicts(sentences)).toEqual([verdict]);
    expect(sentences[0].reason?.code).toBe(verdict === 'refuted' ? 'needs-secret' : undefined);
  });

  test('a cut is seen to be made, but not where', () => {
    const working = '1. The spectator cuts the packet.\n2. You cut the packet.';
    const [one] = decided(cards(3), working, 'The top card is the 2S.').sentences;
    expect([one.verdict, one.reason]).toEqual(['refuted', { code: 'needs-secret', facts: { step: '1' } }]);
  });

  test('what the performer counts is known from then on', () => {
    const working =
      '1. Deal 1 to 3 cards to the table, in secret.\n2. You count the table, call the number K.\n' +
      '3. You put the table on the packet.\n4. You cut the packet.';
    // A deal of one, two or three reverses so many; the cut that brings the 2S to the top depends on how many.
    const [one] = decided(cards(4), working, 'The top card is the 2S.').sentences;
    expect(one.verdict).toBe('proved');
    const [unknown] = decided(
      cards(4),
      working
        .replace('2. You count the table, call the number K.\n', '')
        .replace('3. ', '2. ')
        .replace('4. ', '3. '),
      'The top card is the 2S.',
    ).sentences;
    expect(unknown.verdict).toBe('refuted');
  });

  test('what the set-up leaves open is not known to the performer', () => {
    const { sentences } = decided(
      '2S 9H, in any order, face down',
      '1. You cut the packet.',
      'The top card is the 2S.',
    );
    expect(verdicts(sentences)).toEqual(['refuted']);
  });

  test('where any choice will do no rule is needed', () => {
    const [one] = decided(cards(12), '1. You cut the packet.\n2. Riffle the packet.', down).sentences;
    expect([one.verdict, one.rule]).toEqual(['proved', undefined]);
  });

  test('a sentence about nothing is not proved by a rule', () => {
    const { sentences } = decided(
      cards(3),
      '1. You may turn over the packet.',
      'If the 2S is red, then the 9H is face up.',
    );
    expect(verdicts(sentences)).toEqual(['empty']);
  });
});
