import { describe, expect, test } from 'vitest';
import { shapeOf, thinned, type Arc, type PacketMark } from './packet-shape.ts';

const marks = (count: number): PacketMark[] =>
  Array.from({ length: count }, (_, place) => (place % 2 === 0 ? 'open' : 'filled'));
const mirror = (count: number): Arc[] =>
  Array.from({ length: Math.floor(count / 2) }, (_, from) => ({ from, to: count - 1 - from }));

describe('a row', () => {
  test.each([0, 1, 2, 12, 52, 104])('of %i stays inside its picture, in order', (count) => {
    const shape = shapeOf({ marks: marks(count), have: [], need: mirror(count) });
    expect(shape.marks).toHaveLength(count);
    const xs = shape.marks.map(({ x }) => x);
    expect(xs).toEqual(xs.toSorted((a, b) => a - b));
    for (const { x, y } of shape.marks) {
      expect(x - shape.radius).toBeGreaterThanOrEqual(0);
      expect(x + shape.radius).toBeLessThanOrEqual(shape.width);
      expect(y).toBeLessThan(shape.height);
    }
    for (let place = 1; place < count; place += 1) {
      expect(xs[place]! - xs[place - 1]!).toBeGreaterThan(2 * shape.radius);
    }
  });

  test('wider ties bow deeper, so that nested ones can be told apart', () => {
    const { need } = shapeOf({ marks: marks(12), have: [], need: mirror(12) });
    const depths = need.map((path) => Number(/C\S+ (\S+)/.exec(path)?.[1]));
    expect(new Set(depths).size).toBe(6);
    expect(depths).toEqual(depths.toSorted((a, b) => b - a));
  });

  test('what is certain lies above the marks and what is needed below', () => {
    const arc = [{ from: 0, to: 3 }];
    const shape = shapeOf({ marks: marks(4), have: arc, need: arc });
    const middle = shape.marks[0]!.y;
    const handle = (path: string | undefined) => Number(/C\S+ (\S+)/.exec(path ?? '')?.[1]);
    expect(handle(shape.have[0])).toBeLessThan(middle);
    expect(handle(shape.need[0])).toBeGreaterThan(middle);
  });
});

test('a ring keeps its marks at one distance from the middle', () => {
  const shape = shapeOf({ marks: marks(10), have: [], need: mirror(10), ring: true });
  const distances = shape.marks.map(({ x, y }) => Math.hypot(x - shape.width / 2, y - shape.height / 2));
  for (const distance of distances) expect(distance).toBeCloseTo(distances[0]!, 1);
});

test.each([0, 1, 24, 25, 51, 500])('%i ties are thinned to few enough, ends kept', (count) => {
  const arcs = Array.from({ length: count }, (_, from) => ({ from, to: from + 1 }));
  const kept = thinned(arcs);
  expect(kept.length).toBeLessThanOrEqual(25);
  expect(kept[0]).toBe(arcs[0]);
  expect(kept.at(-1)).toBe(arcs.at(-1));
  expect(kept.length === arcs.length).toBe(count <= 24);
});
