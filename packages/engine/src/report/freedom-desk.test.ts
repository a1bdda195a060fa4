import { describe, expect, test } from 'vitest';
import { check, freedom } from '../check.ts';
import { FreedomMemory } from '../insight/freedom/memory.ts';
import { DEFAULT_LIMITS } from '../proving/question.ts';
import type { FreedomDesk } from './freedom-desk.ts';

const NOTE = `## Set-up

- packet: 8 cards alternately red and black, face down

## Working

1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.
2. Deal the packet into 2 piles.
3. Gather the piles left on right, then milk the packet.

## Ending

- Every pair faces the same way exactly when it differs in colour.
`;

function deskOf(text: string): FreedomDesk {
  const desk = freedom(check(text));
  if (desk === null || !desk.ok) throw new Error('nothing is proved');
  return desk.value;
}

const desk = deskOf(NOTE);

describe('what is asked at a place', () => {
  test('places have the step that they stand before', () => {
    const found = desk.places.map(({ id, words, sentence, reach }) => [id, words, sentence, reach]);
    expect(found[1]).toEqual(['1.1', 'before step 1.1', 'Cut the packet', 'reached']);
    expect(found.at(-1)).toEqual(['end', 'at the end', '', 'reached']);
  });

  test('a report is plain data, and its rows come in groups', () => {
    const report = desk.report('2');
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
    expect(report?.ended).toBeNull();
    expect(report?.sentences).toHaveLength(1);
    const hands = report?.rows.map((row) => row.hands) ?? [];
    expect(hands.filter((one, i) => one !== hands[i - 1])).toHaveLength(new Set(hands).size);
    expect(new Set(report?.rows.map(({ text }) => text)).size).toBe(report?.rows.length);
  });

  test('safe for some: which, in words, one by one, and as a sentence', () => {
    const row = desk
      .report('2')
      ?.rows.find(({ text }) => text === 'Turn over any number of cards from the top.');
    expect(row).toMatchObject({ status: 'some', words: 'even numbers only' });
    expect(row?.choices).toMatchObject({
      safe: 5,
      of: 9,
      narrowed: 'Turn over an even number of cards from the top.',
    });
    expect(row?.choices?.choices.map(({ isSafe }) => isSafe)).toEqual(
      [0, 1, 2, 3, 4, 5, 6, 7, 8].map((n) => n % 2 === 0),
    );
  });

  test('an unsafe row fails, and the shortest performance shows the step put in', () => {
    const failure = desk.failure('2', 'Milk the packet.');
    expect(failure).toMatchObject({ shortest: true, stuck: '' });
    const step = failure?.performance.steps.find(({ number }) => number === '+');
    expect(step).toMatchObject({ sentence: 'Milk the packet', is: 'move' });
  });

  test('a safe row has none, nor has one that is not there', () => {
    expect(desk.failure('2', 'Cut the packet.')).toBeNull();
    expect(desk.failure('2', 'Swallow the packet.')).toBeNull();
    expect(desk.failure('9', 'Cut the packet.')).toBeNull();
    expect(desk.report('9')).toBeNull();
  });

  test('rows one after the other', () => {
    expect(desk.together('2', ['Cut the packet.', 'In-faro the packet.'])?.status).toBe('safe');
    expect(desk.together('2', ['Cut the packet.', 'Milk the packet.'])?.status).toBe('unsafe');
    expect(desk.together('2', ['Cut the packet.', 'Swallow the packet.'])).toBeNull();
    const all = desk.sequences('2', 2);
    const first = all.next();
    expect(first.done).toBe(false);
    expect(first.value).toMatchObject({ status: 'safe', choices: null });
  });
});

describe('putting a row into the note', () => {
  const changed = (place: string, text: string): string => {
    const fix = desk.edit(place, text);
    if (fix === null) throw new Error('no change is offered');
    return NOTE.slice(0, fix.range.from) + fix.text + NOTE.slice(fix.range.to);
  };

  test('a safe row leaves the note proved, an unsafe one refutes it, in a repetition too', () => {
    expect(check(changed('2', 'Cut the packet.')).report.verdict).toBe('proved');
    expect(check(changed('2', 'Milk the packet.')).report.verdict).toBe('refuted');
    expect(check(changed('1.2', 'In-faro the packet.')).report.verdict).toBe(
      desk.report('1.2')?.rows.find(({ text }) => text === 'In-faro the packet.')?.status === 'safe'
        ? 'proved'
        : 'refuted',
    );
  });

  test('every row of a place reads back as what was judged', () => {
    const rows = desk.report('2')?.rows ?? [];
    expect(rows.filter(({ text }) => desk.edit('2', text) === null).map(({ text }) => text)).toEqual([]);
  });

  test('no line, no change', () => {
    // The milk stands on the line of the gathering, and the end has no line.
    expect(desk.edit('3b', 'Cut the packet.')).toBeNull();
    expect(desk.edit('end', 'Turn the packet over.')).toBeNull();
  });
});

describe('what is asked of a step', () => {
  test('left out or done again', () => {
    const found = [...desk.alterations('1.2')].map(({ kind, text, verdict }) => [kind, text, verdict]);
    expect(found).toContainEqual(['drop', '', 'proved']);
    expect(found).toContainEqual(['repeat', 'any number of times', 'proved']);
    expect(desk.alterationFailure('1.2', 'drop')).toBeNull();
  });

  test('a choice between ways can be done again, a repetition at will is one already', () => {
    const either = '2. Either:\n   - Cut the packet.\n   - Move the top card to the bottom.\n3. Deal';
    const forked = deskOf(NOTE.replace('2. Deal', either).replace('3. Gather', '4. Gather'));
    expect([...forked.alterations('2')].map(({ kind, verdict }) => `${kind} ${verdict}`)).toEqual([
      'drop proved',
      'repeat proved',
    ]);
    expect([...forked.alterations('1')].map(({ kind }) => kind)).toEqual(['drop']);
  });

  test('what must not be changed fails, and how', () => {
    expect([...desk.alterations('2')]).toContainEqual({
      number: '2',
      kind: 'drop',
      text: '',
      verdict: 'refuted',
    });
    const failure = desk.alterationFailure('2', 'drop');
    expect(failure?.stuck).not.toBe('');
  });

  test('the freest version of a step', () => {
    const fixed = deskOf(NOTE.replace('1. Cut the packet.', '1. Cut the packet at 3.'));
    expect([...fixed.alterations('1.1')]).toContainEqual({
      number: '1.1',
      kind: 'widen',
      text: 'Cut the packet.',
      verdict: 'proved',
    });
  });

  test("a choice of the performer may be anybody's", () => {
    const mine = deskOf(NOTE.replace('1. Cut the packet.', '1. You cut the packet.'));
    expect([...mine.alterations('1.1')]).toContainEqual({
      number: '1.1',
      kind: 'hand over',
      text: 'the spectator chooses',
      verdict: 'proved',
    });
  });
});

test('nothing is said of a note that is not proved or not understood', () => {
  const broken = freedom(check(NOTE.replace('top 2 together', 'top 3 together')));
  expect(broken?.ok === false && broken.error.code).toBe('freedom-nothing-proved');
  expect(freedom(check('Set-up'))).toBeNull();
});

test('where the work is spent it says so', () => {
  const checked = check(NOTE);
  const small = freedom(checked, { ...DEFAULT_LIMITS, work: 10 });
  expect(small?.ok === false && small.error.code).toBe('budget-graph');
  let asked = 0;
  const stopped = freedom(checked, { ...DEFAULT_LIMITS, goOn: () => ++asked < 12 });
  if (stopped === null || !stopped.ok) throw new Error('it may begin');
  const report = stopped.value.report('2');
  expect(report?.ended?.code).toBe('budget-graph');
  expect(report?.rows.length).toBeLessThan(12);
});

test('a memory kept over an edit gives the same rows', () => {
  const memory = new FreedomMemory();
  const rowsOf = (text: string) => {
    const found = freedom(check(text), DEFAULT_LIMITS, memory);
    return found !== null && found.ok ? found.value.report('2')?.rows : undefined;
  };
  const rows = rowsOf(NOTE);
  expect(rowsOf(NOTE.replace('1. Any', '1. Any'))).toEqual(rows);
  expect(memory.remembered).toBe(1);
});
