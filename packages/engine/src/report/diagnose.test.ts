import { expect, test } from 'vitest';
import { lineAndColumn } from './diagnose.ts';

test.each([
  ['', 0, 1, 1],
  ['abc', 2, 1, 3],
  ['a\nb', 1, 1, 2],
  ['a\nb', 2, 2, 1],
  ['a\r\nb', 3, 2, 1],
  ['a\rb\r', 4, 3, 1],
  ['\n\n\n', 2, 3, 1],
  ['♠♥\n10♣', 5, 2, 3],
])('%j at %i is line %i, column %i', (text, at, line, column) => {
  expect(lineAndColumn(text, at)).toEqual({ line, column });
});
