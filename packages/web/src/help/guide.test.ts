import { readdirSync, readFileSync } from 'node:fs';
import { check } from '@foregone/engine';
import { describe, expect, test } from 'vitest';
import { guideNotes } from './guide-notes.ts';

const folder = new URL('../../../../docs/guide/', import.meta.url);
const pages = readdirSync(folder).filter((name) => name.endsWith('.md'));
const all = pages.flatMap((page) =>
  guideNotes(readFileSync(new URL(page, folder), 'utf8')).map((note) => ({ page, ...note })),
);

describe('the guide', () => {
  test('has a note to try on every page', () => {
    expect(new Set(all.map(({ page }) => page))).toEqual(new Set(pages));
    expect(pages.length).toBeGreaterThanOrEqual(4);
  });

  test.each(all.map((note, index) => [`${note.page}, note ${index + 1}: ${note.verdict}`, note] as const))(
    '%s',
    (_, { text, verdict }) => {
      const { verdict: found, diagnostics } = check(text).report;
      const wrong = diagnostics.filter(({ severity }) => severity === 'error').length;
      expect([found, wrong]).toEqual([verdict, verdict === 'not understood' ? 1 : 0]);
    },
  );
});
