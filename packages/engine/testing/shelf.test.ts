import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parseDocument } from 'yaml';
import { certificateOf, check, recheckCertificate } from '../src/check.ts';
import { compile } from '../src/note/compile.ts';
import { format } from '../src/note/format.ts';
import { read } from '../src/note/read.ts';
import { worst } from '../src/proving/decision.ts';

const NOTES = join(import.meta.dirname, '../../../notes');
const files = readdirSync(NOTES).filter((file) => file.endsWith('.md') && file !== 'README.md');

/** What the head of a note says it must get: one verdict, or one for each sentence. */
function expected(text: string): unknown {
  const head = /^---\n([\s\S]*?)\n---\n/.exec(text)?.[1] ?? '';
  return (parseDocument(head).toJS() as { expect?: unknown }).expect;
}

test('the shelf has notes of all sizes, proved and refuted', () => {
  const verdicts = files.map((file) => expected(readFileSync(join(NOTES, file), 'utf8'))).flat();
  expect(files.length).toBeGreaterThanOrEqual(12);
  expect(new Set(verdicts)).toEqual(new Set(['proved', 'refuted']));
});

describe.each(files)('%s', (file) => {
  const text = readFileSync(join(NOTES, file), 'utf8');
  const checked = check(text);
  const { report, decision } = checked;

  test('gets the verdict it says it must get', () => {
    const wanted = expected(text);
    expect(report.diagnostics.filter(({ severity }) => severity !== 'reading')).toEqual([]);
    const verdicts = report.sentences.map(({ verdict }) => verdict);
    expect(Array.isArray(wanted) ? verdicts : report.verdict).toEqual(wanted);
    expect(report.verdict).toBe(worst(verdicts));
  });

  test(
    'every proof is accepted by the checker, every failure is a whole performance',
    { timeout: 120_000 },
    () => {
      const made = certificateOf(checked);
      expect(made.ok).toBe(report.sentences.some(({ verdict }) => verdict === 'proved'));
      const answer = made.ok ? recheckCertificate(JSON.stringify(made.value)) : undefined;
      const refused = answer?.ok === true ? answer.value.sentences.filter(({ accepted }) => !accepted) : [];
      expect(refused.filter(({ silent }) => silent !== true)).toEqual([]);
      const unproved = report.sentences
        .filter(({ verdict }) => verdict !== 'proved')
        .map(({ text: one }) => one);
      expect(made.ok ? refused.map(({ text: one }) => one) : unproved).toEqual(unproved);
      expect(answer?.ok ?? true).toBe(true);
      for (const { failure, verdict } of report.sentences) {
        expect(failure === null).toBe(verdict !== 'refuted');
        expect(failure === null || (failure.stuck === '') !== (failure.shows === '')).toBe(true);
      }
      expect(decision?.sentences.length).toBe(report.sentences.length);
    },
  );

  test('can be printed anew without changing what it means, and tells who is owed what', () => {
    const meaning = (note: string): unknown =>
      JSON.parse(
        JSON.stringify(compile(read(note)).routine, (key, value: unknown) =>
          key === 'range' || key === 'text' ? undefined : value,
        ),
      );
    expect(meaning(format(text))).toEqual(meaning(text));
    expect(checked.note.title).not.toBe('');
    expect(checked.note.head.minutes).toBeGreaterThan(0);
    for (const { for: what, source } of checked.note.head.credits)
      expect(what !== '' && source !== '').toBe(true);
  });
});
