import fc from 'fast-check';
import { expect, test } from 'vitest';
import { circles } from './circles.ts';

const graph = (edges: Record<string, string[]>) => new Map(Object.entries(edges));

test('a line and a diamond have no circle', () => {
  expect(circles(graph({ a: ['b'], b: ['c'], c: [] }))).toEqual([]);
  expect(circles(graph({ a: ['b', 'c'], b: ['d'], c: ['d'], d: [] }))).toEqual([]);
});

test('two files that import each other', () => {
  expect(circles(graph({ a: ['b'], b: ['a'] }))).toEqual([['a', 'b']]);
});

test('a file that imports itself', () => {
  expect(circles(graph({ a: ['a'] }))).toEqual([['a']]);
});

test('the shortest way round is shown, once', () => {
  expect(circles(graph({ a: ['b'], b: ['c', 'a'], c: ['a'] }))).toEqual([['a', 'b']]);
});

test('circles apart from each other are all shown; what only leads into one is not', () => {
  const edges = graph({ x: ['a'], a: ['b'], b: ['a'], c: ['d'], d: ['e'], e: ['c', 'a'] });
  expect(circles(edges)).toEqual([
    ['a', 'b'],
    ['c', 'd', 'e'],
  ]);
});

test('files outside the graph are ignored', () => {
  expect(circles(graph({ a: ['elsewhere'] }))).toEqual([]);
});

test('there is a circle exactly when the files cannot be put in an order', () => {
  const files = fc.constantFrom('a', 'b', 'c', 'd', 'e');
  fc.assert(
    fc.property(fc.array(fc.tuple(files, files), { maxLength: 8 }), (pairs) => {
      const edges = new Map<string, string[]>(['a', 'b', 'c', 'd', 'e'].map((file) => [file, []]));
      for (const [from, to] of pairs) edges.get(from)?.push(to);
      // Take away, again and again, every file that imports nothing that is left.
      const left = new Set(edges.keys());
      const isFree = (file: string) => !(edges.get(file) ?? []).some((next) => left.has(next));
      for (let free = [...left].filter(isFree); free.length > 0; free = [...left].filter(isFree)) {
        for (const file of free) left.delete(file);
      }
      const found = circles(edges);
      expect(found.length > 0).toBe(left.size > 0);
      for (const circle of found) {
        circle.forEach((file, i) => {
          expect(edges.get(file)).toContain(circle[(i + 1) % circle.length]);
        });
      }
    }),
  );
});
