import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compare, type Stretch } from './compare.ts';

const text = (side: readonly Stretch[] | null) => side?.map((stretch) => stretch.text).join('');
const side = (rows: ReturnType<typeof compare>, which: 'before' | 'after') =>
  rows.flatMap((row) => (row[which] === null ? [] : [text(row[which])])).join('\n');
const noteText = fc.array(fc.constantFrom('Cut.', 'Deal 4.', '', 'Turn two over', 'x y z'), {
  maxLength: 12,
});

describe('two texts beside each other', () => {
  test('each side reads as its text', () => {
    fc.assert(
      fc.property(noteText, noteText, (a, b) => {
        const rows = compare(a.join('\n'), b.join('\n'));
        const tidy = (lines: string[]) => lines.join('\n').replace(/\n$/, '');
        expect(side(rows, 'before')).toBe(tidy(a));
        expect(side(rows, 'after')).toBe(tidy(b));
      }),
    );
  });

  test('a text beside itself shows no change', () => {
    fc.assert(
      fc.property(noteText, (a) => {
        const stretches = compare(a.join('\n'), a.join('\n')).flatMap((row) => [...(row.before ?? [])]);
        expect(stretches.filter(({ changed }) => changed)).toEqual([]);
      }),
    );
  });

  test('a changed word is marked, the rest of its line is not', () => {
    const [row] = compare('Deal 4 cards.', 'Deal 5 cards.');
    expect(row!.before!.filter(({ changed }) => changed).map((stretch) => stretch.text)).toEqual(['4']);
    expect(row!.after!.filter(({ changed }) => changed).map((stretch) => stretch.text)).toEqual(['5']);
  });

  test('an added line stands against nothing', () => {
    expect(compare('a\nb\n', 'a\nnew\nb\n').map((row) => row.before === null)).toEqual([false, true, false]);
  });

  test('texts without anything in common are compared in bounded time', () => {
    const long = (word: string) => Array.from({ length: 20_000 }, (_, index) => `${word}${index}`).join('\n');
    const started = performance.now();
    expect(compare(long('a'), long('b'))).toHaveLength(20_000);
    expect(performance.now() - started).toBeLessThan(5_000);
  });
});
