import { describe, expect, test } from 'vitest';
import { seeded } from '../../src/base/seeded.ts';
import { blame, check, slipsOf, type Checked } from '../../src/check.ts';
import { SLIPS } from '../../src/insight/slips/index.ts';
import { DEFAULT_LIMITS } from '../../src/proving/question.ts';
import type { SlipRow } from '../../src/report/slips-data.ts';
import { Stage, type Played } from '../../src/report/stage.ts';
import { noteOf, slippable } from './slippable.ts';

function rowsOf(checked: Checked, at?: string): SlipRow[] {
  const rows = slipsOf(checked, DEFAULT_LIMITS, at);
  if (rows === null || !rows.ok) throw new Error('no rows');
  return [...rows.value];
}

function stageOf({ compiled: { routine }, text }: Checked): Stage {
  if (routine === undefined) throw new Error('no routine');
  return new Stage(routine, text);
}

describe.each(slippable)('%s', (_name, text) => {
  const checked = check(text);
  const rows = rowsOf(checked);

  test('what is said of a slip is what comes of it at the table', () => {
    const stage = stageOf(checked);
    const random = seeded(11);
    const any = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)];
    let made = 0;
    for (let run = 0; run < 40; run++) {
      let played: Played = stage.filled(random);
      let slipped: { readonly slip: string; readonly step: string } | null = null;
      for (let n = 0; n < 60 && !played.ended && played.stuck === undefined; n++) {
        const next = stage.next(played);
        const { key } = any(next.ways);
        const slips = stage.isBetweenSteps(played) ? stage.slips(played, key) : [];
        if (slipped === null && slips.length > 0 && random() < 0.3) {
          const one = any(slips);
          slipped = { slip: one.slip, step: next.step?.number ?? '' };
          played = stage.slip(played, one.slip, any(one.ways).key, key);
          made++;
        } else played = stage.take(played, key);
      }
      if (slipped === null || !played.ended) continue;
      const { slip, step } = slipped;
      const row = rows.find((one) => one.slip === slip && one.step === step);
      expect(`${step} ${slip} ${row?.slip}`).toBe(`${step} ${slip} ${slip}`);
      const judged = new Map(stage.judge(played).map((one) => [one.text, one.holds === true]));
      const promised = {
        harmless: [true],
        fatal: [false],
        sometimes: [true, false],
        harmful: [true, false],
        undecided: [true, false],
      };
      for (const one of row?.sentences ?? [])
        expect([`${step} ${slip}`, ...promised[one.verdict]]).toContain(judged.get(one.text));
      const told = stage.performance(played).steps.filter((one) => one.slip !== undefined);
      expect(told.map(({ number }) => number)).toEqual([step]);
      for (const { beats, after } of stage.storyboard(played))
        expect((beats.at(-1)?.after ?? after).piles).toEqual(after.piles);
    }
    expect(made).toBeGreaterThan(10);
  });

  test('a row has its failing performance exactly where something can fail', () => {
    for (const { verdict, failure, slip, remains, sentences } of rows) {
      if (verdict === 'undecided') continue;
      expect(`${slip} ${failure === null}`).toBe(`${slip} ${verdict === 'harmless'}`);
      if (failure === null) continue;
      expect(failure.stuck === '' ? failure.shows : failure.stuck).not.toBe('');
      expect(failure.performance.steps.filter((one) => one.slip !== undefined).length).toBe(1);
      const certain = sentences.filter((one) => one.verdict === 'harmless').map((one) => one.text);
      expect(remains.filter(({ from }) => from === 'note').map(({ words }) => words)).toEqual(certain);
    }
  });
});

test('every kind of slip comes up somewhere', () => {
  const met = new Set(slippable.flatMap(([, text]) => rowsOf(check(text)).map(({ slip }) => slip)));
  expect(SLIPS.map(({ id }) => id).filter((id) => !met.has(id))).toEqual([]);
});

test('what is asked about one step is what is said of it among all, and how likely besides', () => {
  const [, text] = slippable[3];
  const checked = check(text);
  const all = rowsOf(checked);
  const asked = ['1', '2', '3'].flatMap((step) => rowsOf(checked, step));
  expect(asked.map((row) => ({ ...row, chance: null }))).toEqual(all);
  expect(asked.filter(({ chance, verdict }) => verdict !== 'sometimes' && chance !== null)).toEqual([]);
  // Of five cards one of two face-down ones is dropped and comes to the one place on top: 2 in 25.
  expect(asked.flatMap(({ chance }) => chance ?? [])).toContain('23 in 25 (0.92)');
});

test('may be stopped at any time', () => {
  const [, text] = slippable[1];
  const checked = check(text);
  for (const most of [1, 3, 10, 30, 100]) {
    let asked = 0;
    const limits = { ...DEFAULT_LIMITS, goOn: () => ++asked < most };
    const rows = slipsOf(checked, limits);
    if (rows === null) throw new Error('not understood');
    if (!rows.ok) continue;
    for (const { verdict } of rows.value)
      expect(['harmless', 'sometimes', 'fatal', 'harmful', 'undecided']).toContain(verdict);
  }
  const none = slipsOf(checked, { ...DEFAULT_LIMITS, work: 5 });
  expect(none?.ok).toBe(false);
});

describe('what is to blame', () => {
  test('the step that loses it, the condition that saves it, the choices that raise its chance', () => {
    const checked = check(
      noteOf(
        'A-4 of spades, face down',
        '1. Turn the packet over.\n2. Cut the packet.',
        'The bottom card is the AS.',
      ),
    );
    expect(blame(checked)).toEqual([
      {
        sentence: 'The bottom card is the AS',
        step: '2',
        words: 'It is lost at step 2 (cuts 1): before that, the plainest way on would still come out.',
        condition: { step: '2', words: 'the number at step 2 is 0', text: 'Cut the packet at 0.' },
        chance: '1 in 4 (0.25)',
        // Cutting nothing is said by the condition.
        raises: [],
      },
    ]);
  });

  test('several choices that only together decide: the best of each step', () => {
    const checked = check(
      noteOf(
        'A-3 of spades, face down',
        '1. Cut the packet.\n2. Turn any card over in place.\n3. Cut the packet.',
        'The top card is the AS and the top card is face up.',
      ),
    );
    const [one] = blame(checked);
    // 3 x 3 x 3 performances alike: the ace on top, and just it turned.
    expect(one.chance).toBe('1 in 9 (0.1111)');
    expect(one.condition).toBeNull();
    expect(one.raises).toEqual([]);
  });

  test('nothing where nothing can fail', () => {
    expect(blame(check(slippable[0][1]))).toEqual([]);
  });

  test('a plainest performance that fails', () => {
    const checked = check(
      noteOf('A-3 of spades, face down', '1. Cut the packet.', 'The top card is face up.'),
    );
    expect(blame(checked)).toMatchObject([
      { step: null, words: 'Not even the plainest performance comes out.', condition: null },
    ]);
  });
});
