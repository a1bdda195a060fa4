import { check } from '@foregone/engine';
import { expect, test } from 'vitest';
import { TEMPLATES } from './texts.ts';

test.each(TEMPLATES.map(({ name, text }) => [name, text] as const))(
  'a new note begins with something that always works: %s',
  (_, text) => {
    expect(check(text).report.verdict).toBe('proved');
  },
);
