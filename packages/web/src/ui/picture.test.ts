import type { EquationData, MomentData } from '@foregone/engine';
import { expect, test } from 'vitest';
import { picturesOf } from './picture.ts';

const equation = (...places: readonly number[]): EquationData => ({
  p: 2,
  whole: false,
  total: 0,
  terms: places.map((place) => ({ pile: 'packet', place, coef: 1, trait: 'red cards' })),
});
const moment = (size: number, have: readonly EquationData[], need: readonly EquationData[]): MomentData => ({
  sizes: { packet: size },
  numbers: {},
  certain: have.length,
  needed: need.length,
  have: [{ words: '', equations: have }],
  need: [{ words: '', equations: need }],
});

test('cards tied each to the next all the way round make a ring', () => {
  const round = [1, 2, 3, 4, 5, 6].map((place) => equation(place, (place % 6) + 1));
  expect(picturesOf(moment(6, round, []), undefined)[0]?.picture.ring).toBe(true);
  expect(picturesOf(moment(6, round.slice(1), []), undefined)[0]?.picture.ring).toBe(false);
});

test('neighbours that belong together stand under a bracket, others on a chain of arcs', () => {
  const [found] = picturesOf(moment(8, [], [equation(1, 2, 3, 4), equation(5, 6, 7, 8)]), undefined);
  expect(found?.picture).toMatchObject({
    need: [],
    blocks: [
      { from: 0, to: 3 },
      { from: 4, to: 7 },
    ],
  });
  expect(picturesOf(moment(8, [], [equation(1, 3, 8)]), undefined)[0]?.picture).toMatchObject({
    blocks: [],
    need: [
      { from: 0, to: 2 },
      { from: 2, to: 7 },
    ],
  });
});
