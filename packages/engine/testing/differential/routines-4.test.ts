import { expect, test } from 'vitest';
import { ROUTINES, tryChunk } from './chunk.ts';

test('the engine agrees with the walk, part 4 of 4', { timeout: 600_000 }, () => {
  expect(tryChunk(4, ROUTINES / 4)).toEqual([]);
});
