import { describe, expect, test } from 'vitest';
import { check } from '../../src/check.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { sameReport } from '../../src/report/same-report.ts';
import { swapsReport } from '../../src/report/swaps-report.ts';
import { provedByWalk } from './by-walk.ts';

function note(setUp: string, working: readonly string[], ending: string): string {
  const steps = working.map((sentence, i) => `${i + 1}. ${sentence}`).join('\n');
  return `## Set-up\n\n- packet: ${setUp}\n\n## Working\n\n${steps}\n\n## Ending\n\n- ${ending}\n`;
}

const RIFFLED = [
  'Cut the packet.',
  'Deal any number of cards to the table and riffle the two packets together.',
];
const COLOURS = note(
  '8 cards alternately red and black, face down',
  RIFFLED,
  'Every pair differs in colour.',
);
const PARITIES = note('AC 2C 3C 4C 5C 6C, face down', RIFFLED, 'Every pair differs in parity.');
const MILKED = note(
  '8 cards alternately red and black, face down',
  ['Milk the packet.'],
  'Every pair differs in colour.',
);
const PAIRS = note(
  '8 cards alternately red and black, face down',
  ['Cut the packet at 0.'],
  'Every pair differs in colour.',
);
const TURNED = note(
  '8 cards alternately red and black, face down',
  ['Cut and turn over the top 2.', 'Deal the packet into a pile, turning every second card.'],
  'Every red card faces one way and every black card the other.',
);

describe('whether two routines rest on the same', () => {
  test.each([
    ['itself', COLOURS, COLOURS, 'the same', 'Their workings can bring about just the same'],
    ['odd and even for red and black', COLOURS, PARITIES, 'the same in another relation', ''],
    [
      'one more structure',
      PAIRS,
      MILKED,
      'one in the other',
      'Their workings do different things: 0 of 1 and 1 ways for the cards to lie are shared.',
    ],
    [
      'another end of the same thing',
      COLOURS,
      MILKED,
      'some shared',
      'The first can bring about all that the other can and more',
    ],
    ['turnover and pairs', TURNED, PAIRS, 'none shared', ''],
  ])('%s', (_name, one, other, verdict, handling) => {
    const found = sameReport(check(one), check(other), DEFAULT_LIMITS);
    if (!found.ok) throw new Error(found.error.code);
    expect(found.value.verdict).toBe(verdict);
    expect(found.value.handling.startsWith(handling)).toBe(true);
    const back = sameReport(check(other), check(one), DEFAULT_LIMITS);
    expect(back.ok && back.value.verdict).toBe(verdict);
    // What they share and what only one has is all there is.
    const { shared, only, chains } = found.value;
    const all = new Set(
      chains.flatMap((chain) =>
        chain.flatMap(({ names }) => names.map(({ trade, name }) => `${trade} ${name}`)),
      ),
    );
    expect(new Set([...shared, ...only[0], ...only[1]].map(({ trade, name }) => `${trade} ${name}`))).toEqual(
      all,
    );
  });
});

describe('the same in other relations', () => {
  test.each([
    ['pairs', COLOURS, 'A-8 of hearts, A-8 of spades'],
    ['turnover', TURNED, 'full pack'],
  ])('%s: every one is a note that walking through all performances proves', (_name, text, hand) => {
    const found = swapsReport(check(text), hand, DEFAULT_LIMITS);
    if (!found.ok) throw new Error(found.error.code);
    const { from, swaps } = found.value;
    expect(from).toEqual(['colour']);
    const proved = swaps.filter(({ verdict }) => verdict === 'proved').map(({ to }) => to);
    expect(proved).toContain('parity');
    for (const { to, note: written, verdict } of swaps) {
      if (verdict !== 'proved' || written === '') continue;
      const { routine } = check(written).compiled;
      expect(`${to} ${routine !== undefined && provedByWalk(routine)}`).toBe(`${to} true`);
    }
    expect(swaps.find(({ to }) => to === 'parity')?.note).not.toBe('');
  });

  test('nothing at hand that could stand in', () => {
    const found = swapsReport(check(COLOURS), 'AH 3H 5H 7H 9H AS 3S 5S 7S 9S', DEFAULT_LIMITS);
    if (!found.ok) throw new Error(found.error.code);
    expect(found.value.swaps).toEqual([]);
    expect(found.value.words).toBe('The cards at hand have nothing that could stand in for colour.');
  });
});
