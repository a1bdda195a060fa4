import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe as group, expect, test } from 'vitest';
import { compile } from '../../src/note/compile.ts';
import { format } from '../../src/note/format.ts';
import { describe } from '../../src/note/messages/describe.ts';
import { printWorking } from '../../src/note/print.ts';
import { read } from '../../src/note/read.ts';
import { SENTENCES } from './rich-note.ts';

const FOLDER = join(import.meta.dirname, 'corpus');
const CORPUS = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.txt'))
  .map((file) => readFileSync(join(FOLDER, file), 'utf8'));

/** What must hold of any text at all. */
function survives(text: string): void {
  const note = read(text);
  const { diagnostics, routine, readings } = compile(note);
  for (const { range, fixes } of diagnostics)
    for (const { from, to } of [range, ...fixes.map((fix) => fix.range)]) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeGreaterThanOrEqual(from);
      expect(to).toBeLessThanOrEqual(text.length);
    }
  for (const one of diagnostics) expect(describe(one).remedy).not.toBe('');
  expect(routine === undefined).toBe(diagnostics.some(({ severity }) => severity === 'error'));
  if (routine !== undefined) printWorking(routine.steps);
  expect(JSON.parse(JSON.stringify({ note, readings }))).toEqual({ note, readings });
  const formatted = format(text);
  expect(format(formatted)).toBe(formatted);
  // What is no sentence stays as it is.
  expect(read(formatted).head).toEqual(note.head);
  expect(compile(read(formatted)).routine === undefined).toBe(routine === undefined);
}

const WORDS = (
  'cut|deal|turn|over|the|packet|pile|1|2|N|it|them|top|card|cards|and|or|then|if|otherwise|either|may|you|spectator|' +
  'any number of times|at least|:|;|.|,|(|)|"|“|½|🃏|in secret|up to a cut|that pile'
).split('|');
const MARKS = [
  '\n',
  '\r\n',
  '\n\n',
  '- ',
  '1. ',
  '   ',
  '> ',
  '# ',
  '## Working\n',
  '## Ending\n',
  '## Set-up\n- packet: AC 2C\n',
  '---\n',
  '\t',
  '\0',
  '\uFEFF',
  '\uD800',
];

const soup = fc
  .array(
    fc.oneof(
      fc.constantFrom(...WORDS),
      fc.constantFrom(...MARKS),
      fc.string({ maxLength: 6, unit: 'binary' }),
    ),
    { maxLength: 60 },
  )
  .map((parts) => parts.join(' '));

/** A note of the corpus with pieces cut out, doubled, exchanged and put in. */
const mangled = fc
  .tuple(
    fc.constantFrom(...CORPUS),
    fc.array(
      fc.tuple(
        fc.nat(2000),
        fc.nat(40),
        fc.oneof(fc.constant(''), fc.constantFrom(...WORDS, ...MARKS, ...SENTENCES.slice(0, 50))),
      ),
      { minLength: 1, maxLength: 6 },
    ),
  )
  .map(([text, changes]) =>
    changes.reduce((now, [at, length, put]) => {
      const place = now.length === 0 ? 0 : at % now.length;
      return now.slice(0, place) + put + now.slice(place + length);
    }, text),
  );

group('whatever the text', () => {
  test.each(CORPUS.map((text, i) => [i, text] as const))('note %i of the corpus survives', (_i, text) => {
    expect(() => survives(text)).not.toThrow();
  });

  test('any characters', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 300 }), survives), { numRuns: 100 });
  }, 120_000);

  test('any words and marks', () => {
    fc.assert(fc.property(soup, survives), { numRuns: 100 });
  }, 120_000);

  test('notes that were mangled', () => {
    fc.assert(fc.property(mangled, survives), { numRuns: 60 });
  }, 120_000);
});
