import { describe, expect, test } from 'vitest';
import { check } from '../../src/check.ts';
import { scaling } from '../../src/insight/likeness/scaling.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import { sizesReport } from '../../src/report/sizes-report.ts';
import { provedByWalk } from './by-walk.ts';

function note(setUp: string, working: readonly string[], endings: readonly string[]): string {
  const steps = working.map((sentence, i) => `${i + 1}. ${sentence}`).join('\n');
  const list = endings.map((sentence) => `- ${sentence}`).join('\n');
  return `## Set-up\n\n- packet: ${setUp}\n\n## Working\n\n${steps}\n\n## Ending\n\n${list}\n`;
}

function sizesTo(most: number, text: string) {
  const found = sizesReport(check(text), { most }, DEFAULT_LIMITS);
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
}

const SECOND = 'Deal the packet into a pile, turning every second card.';
const CATO = ['Cut and turn over the top 2.', 'Cut and turn over the top 2.', SECOND];
const RIFFLED = ['Deal any number of cards to the table and riffle the two packets together.'];

describe('which numbers of cards work', () => {
  test.each([
    [
      'turnover',
      note('8 cards alternately red and black, face down', CATO, [
        'Every red card faces one way and every black card the other.',
      ]),
      'even numbers',
    ],
    [
      'three suits coming round, dealt and riffled',
      note('clubs hearts spades repeated, 9 cards, face down', RIFFLED, [
        'Every three has one of each suit.',
      ]),
      'all tried',
    ],
    [
      'mates in a mirror',
      note(
        'A-4 of clubs and their mates in mirror order, face down',
        ['Milk the packet.'],
        ['Every pair is a pair of mates.'],
      ),
      'all tried',
    ],
    [
      'the last of a down-under deal',
      note(
        '8 cards in any order, face down',
        ['The spectator notes the bottom card, call it chosen.', 'Deal the packet down-under into a pile.'],
        ['The top card is chosen.'],
      ),
      'powers of 2',
    ],
    [
      'half of them face up',
      note('2S 9H 4C KD, face down', [SECOND, 'Cut the packet.'], ['Exactly 2 cards are face up.']),
      'all tried',
    ],
  ])('%s', (_name, text, pattern) => {
    const { rows, pattern: found, how } = sizesTo(10, text);
    expect({ found, how }).toEqual({ found: pattern, how: 'proved' });
    // The whole table again, every size by trying all performances.
    const scaled = scaling(text, 'scaled');
    if (typeof scaled === 'string') throw new Error(scaled);
    for (const { cards, verdict } of rows.filter((row) => row.cards <= 8)) {
      const { routine } = compile(read(scaled.at(cards) ?? ''));
      const truth = routine === undefined ? 'does not fit' : provedByWalk(routine) ? 'proved' : 'refuted';
      expect(`${cards} ${verdict}`).toBe(`${cards} ${truth}`);
    }
  });
});

describe('what grows', () => {
  test('numbers that are the packet, its half or its middle', () => {
    const text = note(
      '10 cards face down',
      ['Cut the packet at 5.', 'Turn over the top 2 cards.'],
      ['The 5th card is face down and exactly 10 cards are in the packet.'],
    );
    const scaled = scaling(text, 'scaled');
    if (typeof scaled === 'string') throw new Error(scaled);
    expect(scaled.at(14)).toBe(
      note(
        '14 cards face down',
        ['Cut the packet at 7.', 'Turn over the top 2 cards.'],
        ['The 7th card is face down and exactly 14 cards are in the packet.'],
      ),
    );
    // Half of an odd packet is no number of cards.
    expect(scaled.at(13)).toBeNull();
    const kept = scaling(text, 'kept');
    if (typeof kept === 'string') throw new Error(kept);
    expect(kept.at(13)).toBe(text.replace('10 cards face', '13 cards face'));
  });

  test.each([
    ['AC 5C 4H AD, face down', 'sizes-named-cards'],
    ['full pack in any order, face down', 'sizes-one'],
    ['12 cards, QH, 7 cards, face down', 'sizes-one'],
  ])('%s: %s', (setUp, code) => {
    const found = sizesReport(
      check(note(setUp, ['Cut the packet.'], ['All cards are face down.'])),
      {},
      DEFAULT_LIMITS,
    );
    expect(found.ok ? '' : found.error.code).toBe(code);
  });
});
