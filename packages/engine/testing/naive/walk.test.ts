import { describe, expect, test } from 'vitest';
import { good } from '../../src/base/result.ts';
import type { Exit } from '../../src/claims/claim.ts';
import { equal, holds, TRUE, type Formula } from '../../src/claims/formula.ts';
import { bitMeasure, numeric } from '../../src/claims/measures.ts';
import { firstSlot } from '../../src/pictures/layout.ts';
import type { Freedom, Routine } from '../../src/routine/routine.ts';
import { unpack } from './cost.ts';
import { performances } from './count.ts';
import { judge } from './judge.ts';
import { Bits, printTable, slotsOfTable, tableKey } from './table.ts';
import type { SaidAt } from './truth.ts';
import { keysTo, TooBig, walkAll } from './walk.ts';
import { anyTimes, either, forEach, numbered, repeat, whenever, working } from './write.ts';

const walk = (routine: Routine, most = 10_000) => walkAll(routine, most, new Bits());

/** Every table at an exit, as text, cheapest first. */
const ends = (routine: Routine): string[] =>
  walk(routine).flatMap(({ exits, start }) =>
    exits.map((node) => printTable(node.moment.table, start.cards)),
  );

const says =
  (formula: (exit: Exit) => Formula): SaidAt =>
  (exit, bits) =>
    good({
      test: (table) => holds(formula(exit), slotsOfTable(table, exit.cards, bits)),
      vacuous: false,
    });

/** The top card of the packet has this value. */
const topIs = (value: number): SaidAt =>
  says((exit) =>
    equal([{ slot: firstSlot(exit.layout, 'packet'), coef: 1, measure: numeric('value') }], value),
  );

function verdict(routine: Routine, meaning: SaidAt) {
  const bits = new Bits();
  const judged = judge(walkAll(routine, 10_000, bits), meaning, bits);
  return judged.verdict === 'refuted'
    ? { ...unpack(judged.cost), stuck: judged.stuck.length, keys: judged.wrong.map(keysTo) }
    : judged.verdict;
}

describe('where performances end', () => {
  test('nothing to do', () => {
    expect(ends(working('1 2 3'))).toEqual(['packet: 1 2 3']);
  });
  test('one cut, plainest first', () => {
    expect(ends(working('1 2 3', 'Cut the packet.'))).toEqual([
      'packet: 1 2 3',
      'packet: 2 3 1',
      'packet: 3 1 2',
    ]);
  });
  test('any number of cuts is one cut', () => {
    expect(ends(working('1 2 3 4', anyTimes('Cut the packet at 1.'))).sort()).toEqual([
      'packet: 1 2 3 4',
      'packet: 2 3 4 1',
      'packet: 3 4 1 2',
      'packet: 4 1 2 3',
    ]);
  });
  test('at least three times', () => {
    const routine = working('1 2 3 4 5', repeat({ of: 'at least', n: 3 }, 'Cut the packet at 1.'));
    expect(ends(routine)).toEqual([
      'packet: 4 5 1 2 3',
      'packet: 5 1 2 3 4',
      'packet: 1 2 3 4 5',
      'packet: 2 3 4 5 1',
      'packet: 3 4 5 1 2',
    ]);
  });
  test('exactly twice, and not at all', () => {
    const cut = 'Cut the packet at 1.';
    expect(ends(working('1 2 3', repeat({ of: 'exactly', n: 2 }, cut)))).toEqual(['packet: 3 1 2']);
    expect(ends(working('1 2 3', repeat({ of: 'exactly', n: 0 }, cut)))).toEqual(['packet: 1 2 3']);
  });
  test('either or', () => {
    const routine = working('1 2 3', either(['Cut the packet at 1.'], [], ['Cut the packet at 2.']));
    expect(ends(routine)).toEqual(['packet: 2 3 1', 'packet: 1 2 3', 'packet: 3 1 2']);
  });
  test('for each pile, with its own number inside and forgotten afterwards', () => {
    const that = { stem: 'pile', n: { var: 'n' } };
    const inside = whenever({ number: 'n', is: 'at most', n: 1 }, ['Cut the packet at 1.']);
    const cut = { ...working('1', 'Cut the packet at 1.').steps[0] };
    if (cut.do !== 'move') throw new Error('a cut is a move');
    const routine = working(
      'packet: 1 2 3; pile 1: 4 5; pile 3: 6 7 8; pile x: 9',
      forEach('pile', 'n', inside, { ...cut, args: { ...cut.args, pile: that } }),
    );
    expect(ends(routine)).toEqual(['packet: 2 3 1 | pile 1: 5 4 | pile 3: 7 8 6 | pile x: 9']);
    expect(walk(routine)[0].exits[0].moment.numbers).toEqual({});
  });
});

describe('what a performance costs', () => {
  const reached = (routine: Routine, table: string) =>
    walk(routine).flatMap(({ exits, start }) =>
      exits.filter((node) => printTable(node.moment.table, start.cards) === table).map((n) => unpack(n.cost)),
    );
  test('again is a decision, and so is a cut that is not the plainest', () => {
    const routine = working('1 2 3 4', anyTimes('Cut the packet.'));
    expect(reached(routine, 'packet: 1 2 3 4')).toEqual([{ off: 0, steps: 0, options: 0 }]);
    expect(reached(routine, 'packet: 3 4 1 2')).toEqual([{ off: 2, steps: 1, options: 1 }]);
  });
  test('forced rounds cost no decision', () => {
    const routine = working('1 2 3 4', repeat({ of: 'at least', n: 2 }, 'Cut the packet at 1.'));
    expect(reached(routine, 'packet: 3 4 1 2')).toEqual([{ off: 0, steps: 2, options: 2 }]);
    expect(reached(routine, 'packet: 1 2 3 4')).toEqual([{ off: 2, steps: 4, options: 4 }]);
  });
  test('the cheaper of two ways counts', () => {
    const one = 'Cut the packet at 1.';
    const routine = working('1 2 3 4', either([one, one], ['Cut the packet at 2.']));
    expect(reached(routine, 'packet: 3 4 1 2')).toEqual([{ off: 0, steps: 2, options: 2 }]);
  });
});

describe('verdicts', () => {
  test('a sentence true at every exit is proved', () => {
    expect(verdict(working('1 2 3', 'Cut the packet at 1.'), topIs(2))).toBe('proved');
  });
  test('one false exit refutes, by its cheapest performance', () => {
    expect(verdict(working('1 2 3', 'Cut the packet.'), topIs(1))).toEqual({
      off: 1,
      steps: 1,
      options: 1,
      stuck: 0,
      keys: [[1], [2]],
    });
  });
  test('stuck refutes even what is always true', () => {
    expect(
      verdict(
        working('1 2 3', either([], ['Cut the packet at 4.'])),
        says(() => TRUE),
      ),
    ).toEqual({
      off: 1,
      steps: 0,
      options: 0,
      stuck: 1,
      keys: [],
    });
  });
  test('a sentence about nothing is empty', () => {
    expect(verdict(working('1 2 3'), () => good({ test: () => true, vacuous: true }))).toBe('empty');
    expect(verdict(working('1 2 3'), () => good({ test: () => false, vacuous: true }))).toBe('empty');
  });
});

describe('what the set-up leaves open', () => {
  const open = (routine: Routine, ...freedoms: Freedom[]): Routine => ({
    ...routine,
    setUp: { ...routine.setUp, freedoms },
  });
  test('any order', () => {
    const routine = open(working('1 2^ 3 4'), { free: 'order', pile: 'packet', from: 1, count: 3 });
    expect(new Set(ends(routine))).toEqual(
      new Set(
        ['2^ 3 4', '2^ 4 3', '3 2^ 4', '3 4 2^', '4 2^ 3', '4 3 2^'].map((rest) => `packet: 1 ${rest}`),
      ),
    );
  });
  test('any faces', () => {
    const routine = open(working('1 2^ 3'), { free: 'faces', pile: 'packet', from: 0, count: 2 });
    expect(new Set(ends(routine))).toEqual(
      new Set(['1 2 3', '1^ 2 3', '1 2^ 3', '1^ 2^ 3'].map((cards) => `packet: ${cards}`)),
    );
  });
  test('any value of an attribute', () => {
    const routine = open(working('1 2'), {
      free: 'attribute',
      attribute: 'value',
      values: [5, 6],
      cards: [0],
    });
    expect(walk(routine).map(({ start }) => start.cards.map((card) => card.attributes.value))).toEqual([
      [5, 2],
      [6, 2],
    ]);
    expect(verdict(routine, topIs(5))).toMatchObject({ off: 0, steps: 0, options: 0 });
  });
});

describe('how much there is', () => {
  test('performances are counted, not tables', () => {
    const cut = 'Cut the packet.';
    expect(performances(walk(working('1 2 3', cut, cut))[0])).toBe(9n);
    expect(performances(walk(working('1 2 3', either([], ['Cut the packet at 5.'])))[0])).toBe(2n);
    expect(performances(walk(working('1 2 3', anyTimes(cut)))[0])).toBeNull();
    expect(performances(walk(working('1 2 3'))[0])).toBe(1n);
  });
  test('no more nodes than asked for', () => {
    expect(() => walk(working(numbered(9), 'Cut the packet.'), 5)).toThrow(TooBig);
  });
  test('tables that differ in one bit are two tables', () => {
    const [a] = walk(working('1 2'));
    const [b] = walk(working("1 2'"));
    const [c] = walk(working('1 2^'));
    expect(new Set([a, b, c].map(({ root }) => tableKey(root.moment.table))).size).toBe(3);
  });
});

test('faces are read from the table', () => {
  const up = says((exit) =>
    equal([{ slot: firstSlot(exit.layout, 'packet'), coef: 1, measure: bitMeasure('up') }], 1),
  );
  expect(verdict(working('1^ 2'), up)).toBe('proved');
  expect(verdict(working('1 2^'), up)).toMatchObject({ off: 0 });
});
