import { describe, expect, test } from 'vitest';
import { check } from '../src/check.ts';
import { format } from '../src/note/format.ts';
import { compile } from '../src/note/compile.ts';
import { read } from '../src/note/read.ts';
import { decide } from '../src/proving/decide.ts';
import { DEFAULT_LIMITS } from '../src/proving/question.ts';

const note = (setUp: string, working: string, ending: string): string => `## Set-up
- packet: ${setUp}

## Working
${working}

## Ending
- ${ending}
`;

function decided(text: string, limits = DEFAULT_LIMITS) {
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
  return decide(routine, limits).sentences[0];
}

const FOUR = '2S 9H 4C KD, face down';

describe('a chance that is asked for', () => {
  test.each([
    ['1. Shuffle the packet.', 'With probability at least 0.5, the top card is red.', 'proved'],
    ['1. Shuffle the packet.', 'With probability at least 0.51, the top card is red.', 'refuted'],
    ['1. Shuffle the packet.', 'With probability at least 1 in 4, the top card is the 2S.', 'proved'],
    ['1. Shuffle the packet.', 'With probability at least 26%, the top card is the 2S.', 'refuted'],
    // Two of six pairs of places are of one colour.
    [
      '1. Shuffle the packet.',
      'With probability at least 2 in 3, the top 2 cards differ in colour.',
      'proved',
    ],
    [
      '1. Shuffle the packet.',
      'With probability at least 0.67, the top 2 cards differ in colour.',
      'refuted',
    ],
    ['1. Cut the packet.', 'With probability at least 0.1, all cards are face down.', 'proved'],
    // Always so, however often it is done.
    [
      '1. Any number of times: cut the packet.',
      'With probability at least 0.9, all cards are face down.',
      'proved',
    ],
    [
      '1. Any number of times: cut the packet.',
      'With probability at least 0.9, the top card is red.',
      'undecided',
    ],
    ['1. You cut the packet.', 'With probability at least 0.1, the top card is the 2S.', 'proved'],
    ['1. You cut the packet.', 'With probability at least 0.9, the top card is the 2S.', 'undecided'],
  ])('%s %s %s', (working, ending, verdict) => {
    expect(decided(note(FOUR, working, ending)).verdict).toBe(verdict);
  });

  test('beyond what can be followed it stays open, with its interval', () => {
    const text = note(
      'full pack in new pack order, face down',
      '1. Shuffle the packet.',
      'With probability at least 0.4, the top 13 cards are one of each value.',
    );
    const limits = { ...DEFAULT_LIMITS, states: 500, trials: 40 };
    const one = decided(text, limits);
    expect(one.verdict).toBe('undecided');
    expect(one.chance?.kind).toBe('estimate');
    expect(one.reason?.code).toBe('chance-estimate');
    expect(decided(text, limits)).toMatchObject({ chance: one.chance });
  });

  test('ends that a shuffle leaves to chance cost nothing where nobody looks at them', () => {
    const text = note(
      'full pack in new pack order, face down',
      '1. Shuffle the packet.',
      'With probability at least 0.5, the top card is red.',
    );
    expect(decided(text).verdict).toBe('undecided');
    const small = note(
      '2S 9H 4C KD 7S AH 3D 5D 6C 8H, face down',
      '1. Shuffle the packet.',
      'With probability at least 1 in 1024, all cards point the same way.',
    );
    // Two of the 1,024 ways the ends may lie.
    expect(decided(small).chance).toMatchObject({ kind: 'exact', value: { n: 1n, d: 512n } });
  });

  test('the report says how likely it is', () => {
    const { report } = check(
      note(FOUR, '1. Shuffle the packet.', 'With probability at least 0.5, the top card is red.'),
    );
    expect(report.summary).toBe('Proved: the ending, with the chance that is asked for.');
    expect(report.sentences[0].why).toBe('With every choice made at random its chance is 1 in 2 (0.5).');
    expect(report.sentences[0].chance).toBe('1 in 2 (0.5)');
  });

  test('format keeps it', () => {
    const text = note(FOUR, '1. Cut the packet.', 'With probability at least 4 in 5, the top card is red.');
    expect(format(text)).toBe(text);
    const percent = note(
      FOUR,
      '1. Cut the packet.',
      'the top card is red with a chance of at least 80 percent.',
    );
    expect(format(percent)).toBe(
      note(FOUR, '1. Cut the packet.', 'With probability at least 0.80, the top card is red.'),
    );
  });
});
