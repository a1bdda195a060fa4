import { describe, expect, test } from 'vitest';
import { plus, rational, times, ZERO } from '../../src/base/rational.ts';
import { Slips } from '../../src/insight/slips/judge-slips.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { naiveSlipChance } from '../naive/slip-chance.ts';
import { noteOf } from './slippable.ts';

// Each with the number of times that its steps are done.
const FINITE: readonly (readonly [string, number, string])[] = [
  [
    'cuts and a turn',
    1,
    noteOf(
      '4 cards alternately red and black, face down',
      '1. Cut the packet.\n2. Turn over the top 2 together.\n3. Cut the packet at 2.',
      'Exactly 2 cards are face up.',
      'As many face-up cards as face-down cards are red.',
    ),
  ],
  [
    'three rounds',
    3,
    noteOf(
      'AC 2H 2C AS, face down',
      '1. 3 times:\n   1. Out-faro the packet.\n   2. Turn over the top 2 together.',
      'An even number of cards are face up.',
    ),
  ],
  [
    'a deal cut short',
    1,
    noteOf(
      'A-5 of spades, face down',
      '1. Deal 2 cards to the table.\n2. Put the table on the packet.\n3. Deal the packet into a pile.',
      'The bottom card of the packet is the 2S.',
    ),
  ],
];

describe.each(FINITE)('%s', (_name, doings, text) => {
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  const decision = decide(routine);
  const slips = Slips.of(routine, decision, DEFAULT_LIMITS);
  if (!slips.ok) throw new Error(JSON.stringify(slips.error));
  const proved = decision.sentences.filter(({ verdict }) => verdict === 'proved').map(({ ending }) => ending);

  test('the chance after every slip is that of following every way', () => {
    let told = 0;
    for (const possible of slips.value.possible) {
      const chance = slips.value.chance(possible);
      if (chance?.kind !== 'exact') continue;
      told++;
      const { step, slip } = possible;
      let sum = ZERO;
      for (let doing = 0; doing < doings; doing++)
        sum = plus(sum, naiveSlipChance(routine, step, slip, proved, doing));
      const right = times(sum, rational(1n, BigInt(doings)));
      const say = ({ n, d }: typeof right): string => `${step.number} ${slip.id}: ${n} in ${d}`;
      expect(say(chance.value)).toBe(say(right));
      const { verdict } = slips.value.finding(possible);
      expect(`${step.number} ${slip.id} ${verdict}`).toBe(
        `${step.number} ${slip.id} ${right.n === right.d ? 'harmless' : right.n === 0n ? 'fatal' : 'sometimes'}`,
      );
    }
    expect(told).toBeGreaterThan(3);
  });
});
