import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { saidOnJudging, saidOnPerforming, saidOnReading, unmarked } from '../../../testing/notes/shown.ts';
import { compile } from '../compile.ts';
import { read } from '../read.ts';
import { describe } from './describe.ts';
import { MESSAGES } from './index.ts';
import type { Shown } from './message.ts';

const ENGINE = join(import.meta.dirname, '../..');

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return path === import.meta.dirname ? [] : sources(path);
    return /(?<!\.test)\.ts$/.test(entry.name) ? [readFileSync(path, 'utf8')] : [];
  });
}

// Where a code is given: as the first argument, or the second after an outcome.
const GIVEN =
  /\b(?:trouble|stuck|senseless|diagnostic|tell|blame|withTrouble)\(\s*(?:(?:[^()']|\([^()]*\))*?,\s*)?'([a-z]+(?:-[a-z]+)*)'/g;
/** Codes that are put together from parts. */
const COMPUTED = ['too-many-piles', 'too-many-numbers', 'too-many-marks'];

test('every code has its words', () => {
  const codes = new Set(MESSAGES.map(({ code }) => code));
  const given = new Set(
    sources(ENGINE).flatMap((text) => [...text.matchAll(GIVEN)].map((match) => match[1])),
  );
  expect(given.size).toBeGreaterThan(100);
  expect([...given].filter((code) => !codes.has(code)).sort()).toEqual([]);
});

test('every message has its use, and its own file', () => {
  const text = sources(ENGINE).join('\n');
  const unused = MESSAGES.filter(({ code }) => !text.includes(`'${code}'`) && !COMPUTED.includes(code));
  expect(unused.map(({ code }) => code)).toEqual([]);
  const files = readdirSync(import.meta.dirname).filter(
    (file) => !['index.ts', 'describe.ts', 'message.ts'].includes(file) && !file.endsWith('.test.ts'),
  );
  expect(files.sort()).toEqual(MESSAGES.map(({ code }) => `${code}.ts`).sort());
});

const shownBy = (...ways: readonly Shown['by'][]) =>
  MESSAGES.filter(({ shown }) => ways.includes(shown.by)).map((message) => [message.code, message] as const);

test.each(MESSAGES.map((message) => [message.code, message] as const))(
  '%s reads as sentences',
  (code, { shown }) => {
    const { words, remedy } = describe({ code, facts: shown.facts });
    for (const line of [words, remedy]) {
      expect(line).toMatch(/^["\p{Lu}\d].*[.!?]["”]?$/su);
      expect(line).not.toMatch(/undefined|NaN|null|\[object|\{|\}| {2}|""/);
    }
  },
);

test.each(shownBy('note', 'performance', 'judging'))(
  '%s is said of its note, at its place, with its facts',
  (code, { shown }) => {
    if (shown.by === 'program') throw new Error('no note');
    const { text, range } = unmarked(shown.note);
    const said = { note: saidOnReading, performance: saidOnPerforming, judging: saidOnJudging }[shown.by](
      text,
    );
    const own = said.filter((one) => one.code === code);
    expect(own.map(({ range: at, facts }) => ({ range: at, facts }))).toContainEqual({
      range,
      facts: shown.facts,
    });
  },
);

test.each(shownBy('note'))('%s has its severity, and its changes mend it', (code, { severity, shown }) => {
  if (shown.by === 'program') throw new Error('no note');
  const { text, range } = unmarked(shown.note);
  const all = saidOnReading(text).filter((one) => one.code === code);
  const own = compile(read(text)).diagnostics.find(
    (one) => one.code === code && one.range.from === range.from,
  );
  expect(own?.severity).toBe(severity);
  for (const fix of own?.fixes ?? []) {
    const mended = text.slice(0, fix.range.from) + fix.text + text.slice(fix.range.to);
    const left = saidOnReading(mended).filter((one) => one.code === code);
    expect({ fix: fix.label, mends: left.length < all.length }).toEqual({ fix: fix.label, mends: true });
  }
});
