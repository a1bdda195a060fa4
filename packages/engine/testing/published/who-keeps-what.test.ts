import { describe, expect, test } from 'vitest';
import { outcomes, type Came } from './outcomes.ts';
import type { Laid, Structure } from './structures.ts';
import { MIXES, TABLE } from './who-keeps-what.ts';

// Which mix keeps which structure, eight cards, every start with the structure and every choice. By enumeration; common
// practice, no source.
const N = 8;

/** The packet after a mix: each card where it came to lie, turned as the mix turned it. */
function mixed(start: readonly Laid[], came: readonly Came[]): Laid[] {
  return came.map(({ from, up, end }) => {
    const card = start[from - 1];
    return up === 0 && end === 0 ? card : { x: card.x, up: card.up ^ up, end: card.end ^ end };
  });
}

/** K kept whatever is chosen from whatever start, `.` never, p sometimes. */
function keeps(structure: Structure, ways: readonly (readonly Came[])[]): string {
  let [kept, lost] = [false, false];
  for (const start of structure.starts(N))
    for (const came of ways) {
      if (structure.has(mixed(start, came), start)) kept = true;
      else lost = true;
      if (kept && lost) return 'p';
    }
  return kept ? 'K' : '.';
}

const ways = new Map(Object.entries(MIXES).map(([name, mix]) => [name, outcomes(N, ...mix)]));

describe.each(TABLE.map(([structure, row]) => [structure.name, structure, row] as const))(
  '%s',
  (_name, structure, row) => {
    test('every start has the structure', () => {
      const starts = structure.starts(N);
      expect(starts.length).toBeGreaterThan(0);
      expect(starts.every((start) => structure.has(start, start))).toBe(true);
    });
    test('what keeps it', { timeout: 60_000 }, () => {
      const found = [...ways].map(([mix, all]) => `${mix}: ${keeps(structure, all)}`);
      expect(found).toEqual(row.split(' ').map((mark, i) => `${Object.keys(MIXES)[i]}: ${mark}`));
    });
  },
);
