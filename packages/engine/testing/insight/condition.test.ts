import { describe, expect, test } from 'vitest';
import { conditionFor, conditionsFor, type Condition } from '../../src/insight/conditions/condition.ts';
import { stepsOf } from '../../src/insight/altering/places.ts';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { decide } from '../../src/proving/decide.ts';
import type { Limits } from '../../src/proving/question.ts';
import type { Routine } from '../../src/routine/routine.ts';
import { holdsAlways } from './altered.ts';

const LIMITS: Limits = { work: 2_000_000, states: 50_000, trials: 0, seed: 1 };

function routineOf(setUp: string, working: string, ending: string): Routine {
  const text = `## Set-up\n\n- ${setUp}\n\n## Working\n\n${working}\n\n## Ending\n\n- ${ending}\n`;
  const { routine, diagnostics } = compile(read(text));
  if (routine === undefined) throw new Error(`${text}\n${JSON.stringify(diagnostics)}`);
  return routine;
}

const best = (routine: Routine): Condition | null => conditionFor(routine, routine.endings[0], LIMITS);
const all = (routine: Routine): Condition[] => [...conditionsFor(routine, routine.endings[0], LIMITS)];

/** The numbers that a condition leaves. */
function left({ routine, step }: Condition): readonly unknown[] | undefined {
  const [found] = stepsOf(routine).filter(({ number }) => number === step);
  return found.do === 'move' ? found.only?.keys : undefined;
}

interface Numbered {
  readonly what: string;
  readonly setUp: string;
  readonly working: (choice: string) => string;
  readonly ending: string;
  /** The sentence's choice as it is left open, and as just one number of it. */
  readonly open: string;
  readonly just: (n: number) => string;
  readonly from: number;
  readonly to: number;
  readonly words: string;
  readonly text: string;
}

const NUMBERED: readonly Numbered[] = [
  {
    what: 'a cut that must be even',
    setUp: 'packet: 6 cards alternately red and black, face down',
    working: (cut) => `1. Cut the packet${cut}.`,
    ending: 'The top card of the packet is red.',
    open: '',
    just: (n) => ` at ${n}`,
    from: 0,
    to: 5,
    words: 'the number at step 1 is even',
    text: 'Cut the packet at an even number.',
  },
  {
    what: 'a block that must be even',
    setUp: 'packet: 6 cards alternately red and black, face down',
    working: (block) =>
      `1. Turn over ${block} cards from the top.\n2. Deal the packet into a pile, turning every second card.`,
    ending: 'Exactly 3 cards are face up.',
    open: 'any number of',
    just: (n) => `${n}`,
    from: 0,
    to: 6,
    words: 'the number at step 1 is even',
    text: 'Turn over an even number of cards from the top.',
  },
  {
    what: 'a number with one digit sum',
    setUp: 'packet: 8 cards, QH, 16 cards, face down',
    working: (range) =>
      `1. The spectator names a number ${range}, call it N.\n2. Deal N cards to the table.\n` +
      '3. Add up the digits of N, call the sum S.\n4. Deal S cards from the table to the left.',
    ending: 'The top card of the table is the QH.',
    open: 'from 8 to 24',
    just: (n) => `from ${n} to ${n}`,
    from: 8,
    to: 24,
    words: 'N is between 10 and 19',
    text: 'The spectator names a number from 10 to 19, call it N.',
  },
  {
    what: 'a card that must stay in the middle',
    setUp: 'packet: AS 2S 3S 4S AS 2S 3S 4S, from two packs, face down',
    working: (where) => `1. Cut the packet.\n2. Bury the top 3 cards ${where}.`,
    ending: 'The top card and the bottom card are the two halves of one card.',
    open: 'anywhere',
    just: (n) => `under ${n} cards`,
    from: 0,
    to: 5,
    words: 'at step 2 they go neither back on top nor right to the bottom',
    text: 'Bury the top 3 cards in the middle.',
  },
];

describe.each(NUMBERED)('$what', ({ setUp, working, ending, open, just, from, to, words, text }) => {
  const routine = routineOf(setUp, working(open), ending);

  test('is found, worded and written', () => {
    expect(best(routine)).toMatchObject({ kind: 'number', words, text });
  });

  test('leaves just the numbers that work by brute force', () => {
    const works = Array.from({ length: to - from + 1 }, (_, i) => from + i).filter((n) =>
      holdsAlways(routineOf(setUp, working(just(n)), ending)),
    );
    const found = best(routine);
    expect(found === null ? [] : left(found)).toEqual(works);
    expect(found?.share).toBeCloseTo(works.length / (to - from + 1), 12);
  });

  test('the routine with the condition is proved, also as the note would write it', () => {
    const found = best(routine);
    expect(found === null ? '' : decide(found.routine).verdict).toBe('proved');
    const [step] = routine.steps.filter(({ number }) => number === found?.step);
    const written = routineOf(
      setUp,
      working(open)
        .split('\n')
        .map((line) => (line.startsWith(`${step.number}.`) ? `${step.number}. ${text}` : line))
        .join('\n'),
      ending,
    );
    expect(decide(written).verdict).toBe('proved');
  });
});

test('a branch that must not be taken', () => {
  const routine = routineOf(
    'packet: 6 cards alternately red and black, face down',
    '1. Any number of times:\n   1. Either:\n      - Cut the packet.\n      - Turn over the top 2 together.\n      - Turn over the top 3 together.\n2. Deal the packet into a pile, turning every second card.',
    'Exactly 3 cards are face up.',
  );
  expect(best(routine)).toMatchObject({
    kind: 'way',
    step: '1.1',
    words: 'way 3 of step 1.1 is never taken ("Turn over the top 3 cards.")',
  });
});

test('a repetition that may be done once', () => {
  const routine = routineOf(
    'packet: 6 cards alternately red and black, face down',
    '1. Any number of times:\n   1. Deal any number of cards to the table and riffle the two packets together.',
    'Every pair differs in colour.',
  );
  expect(all(routine).map(({ words }) => words)).toContain('step 1 is done at most once');
});

test('an order that must be cyclic', () => {
  const routine = routineOf(
    'packet: A-6 of spades, face down',
    '1. Deal the packet into 5 piles.\n2. Gather the piles in any order.',
    'The packet is back in its starting order going round.',
  );
  const [found] = all(routine).filter(({ kind }) => kind === 'wording');
  expect(found).toMatchObject({ step: '2' });
  expect(decide(found.routine).verdict).toBe('proved');
});

test('nothing is said of what is proved, of what no condition saves, and of what the performer chooses', () => {
  const setUp = 'packet: AS 2S 3S 4S, face down';
  expect(all(routineOf(setUp, '1. Cut the packet.', 'All cards are face down.'))).toEqual([]);
  expect(all(routineOf(setUp, '1. Cut the packet.', 'All cards are face up.'))).toEqual([]);
  expect(all(routineOf(setUp, '1. You cut the packet.', 'All cards are face up.'))).toEqual([]);
});
