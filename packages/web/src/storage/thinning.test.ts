import { describe, expect, test } from 'vitest';
import type { VersionRecord } from './records.ts';
import { APART, MOST, thinned } from './thinning.ts';

const DAY = 86_400_000;
const now = 1_000 * DAY;

function history(ages: readonly number[], part: Partial<VersionRecord> = {}): VersionRecord[] {
  return ages.map((age, key) => ({
    key,
    note: 'a',
    made: now - age,
    kind: 'automatic',
    name: '',
    text: '',
    ...part,
  }));
}

function left(versions: readonly VersionRecord[]): VersionRecord[] {
  const gone = new Set(thinned(versions, now));
  return versions.filter(({ key }) => !gone.has(key));
}

describe('thinning', () => {
  test('a working hour is kept whole', () => {
    const versions = history(Array.from({ length: 29 }, (_, index) => index * APART));
    expect(left(versions)).toHaveLength(29);
  });

  test('the older, the sparser', () => {
    const everyTwoMinutes = (from: number, to: number) =>
      Array.from({ length: (to - from) / APART }, (_, index) => from + index * APART);
    expect(left(history(everyTwoMinutes(DAY / 4, DAY / 2))).length).toBeLessThanOrEqual(25);
    expect(left(history(everyTwoMinutes(2 * DAY, 3 * DAY))).length).toBeLessThanOrEqual(25);
    expect(left(history(everyTwoMinutes(20 * DAY, 30 * DAY))).length).toBeLessThanOrEqual(11);
    expect(left(history(everyTwoMinutes(200 * DAY, 228 * DAY))).length).toBeLessThanOrEqual(5);
  });

  test('the last of each stretch stays, and thinning twice changes nothing', () => {
    const versions = history(Array.from({ length: 3_000 }, (_, index) => index * index * 1_000));
    const once = left(versions);
    expect(left(once)).toEqual(once);
    expect(once[0]).toBe(versions[0]);
    // Of the oldest stretch something is left, so a note's beginnings never vanish.
    expect(now - once.at(-1)!.made).toBeGreaterThan(90 * DAY);
  });

  test.each(['named', 'conflict', 'recovered', 'folder'] as const)('%s ones always stay', (kind) => {
    expect(thinned(history(Array(500).fill(400 * DAY), { kind }), now)).toEqual([]);
  });

  test('there is an end to it', () => {
    expect(left(history(Array.from({ length: 1_000 }, (_, index) => index * 7 * DAY))).length).toBe(MOST);
  });
});
