import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { compile } from '../../src/note/compile.ts';
import { read } from '../../src/note/read.ts';
import { shortNote } from './short.ts';

function seconds(work: () => void): number {
  const before = performance.now();
  work();
  return (performance.now() - before) / 1000;
}

const LAMPS = readFileSync(join(import.meta.dirname, 'corpus/lighthouse.txt'), 'utf8');
// What reading the note above twenty times takes on a quiet machine of 2024, warm.
const QUIET = 0.04;

/** How many times slower than a quiet machine this one is just now, with all else that it is doing. */
function busy(): number {
  const often = (): void => {
    for (let i = 0; i < 20; i++) compile(read(LAMPS));
  };
  return Math.max(1, Math.min(seconds(often), seconds(often)) / QUIET);
}

/** Seconds a quiet machine would take: the best of a few tries, as soon as one is good enough. */
function quietSeconds(work: () => void, enough: number, tries = 4): number {
  let best = Infinity;
  for (let i = 0; i < tries && best >= enough; i++) {
    const before = busy();
    const spent = seconds(work);
    best = Math.min(best, spent / Math.max(before, busy()));
  }
  return best;
}

const many = (n: number, line: (i: number) => string): string =>
  Array.from({ length: n }, (_, i) => line(i)).join('\n');
const filled = (length: number, piece: string): string => piece.repeat(Math.floor(length / piece.length));
const LONG = 1900;

const NOTES: Readonly<Record<string, string>> = {
  'the same step ten thousand times': shortNote(many(10_000, () => '1. Cut the packet.')),
  'ten thousand different steps': shortNote(many(10_000, (i) => `1. Cut the packet at ${i}.`)),
  'a new pile at every step': shortNote(many(10_000, (i) => `1. Deal ${i} cards to the pile${i}.`)),
  'a new name at every step': shortNote(
    many(8_000, (i) => `1. The spectator notes the top card, call it m${i}.`),
  ),
  'nothing understood': shortNote(many(8_000, (i) => `1. Frobnicate ${i}, then or and or then and cut it.`)),
  'half understood': shortNote(many(8_000, (i) => `1. Cut the packet at foo${i} and the and or.`)),
  'words of joining': shortNote(many(240, () => `1. ${filled(LONG, 'cut or deal and turn over then ')}`)),
  'one long list of piles': shortNote(many(240, () => `1. Put ${filled(LONG, 'pile 1 on ')}`)),
  colons: shortNote(many(240, () => `1. ${filled(LONG, 'twice: ')}`)),
  'open quotes': shortNote(many(240, () => `1. ${filled(LONG, '"“')}`)),
  commas: shortNote(many(240, () => `1. ${filled(LONG, 'if a, ')}`)),
  'brackets in the ending': shortNote(
    '1. Cut the packet.',
    many(240, () => `- ${filled(900, '(')}${filled(900, ')')}`),
  ),
  'joints in the ending': shortNote(
    '1. Cut the packet.',
    many(240, () => `- ${filled(160, 'a exactly when ')}b if c`),
  ),
  'weakened for ever': shortNote(
    '1. Cut the packet.',
    many(240, () => `- ${filled(LONG, 'up to a cut ')}`),
  ),
  'lists in lists': shortNote(many(300, (i) => `${'   '.repeat(i)}1. Twice:`)),
  'a tower of quotes': `${'> '.repeat(200_000)}\n`,
  'a tower of quotes on every line': many(15_000, () => '> '.repeat(16)),
  headings: '# a\n'.repeat(58_000),
  fences: '```\n'.repeat(58_000),
  'a set-up without end': `## Set-up\n${many(10_000, (i) => `- pile ${i}: 2H ${i} red cards`)}`,
  'a head that is deep': `---\na: ${'['.repeat(5000)}\n---\n`,
  'a head of dashes': `---\n${'- '.repeat(7000)}\n---\n`,
  'a head of circles': `---\n${filled(16_000, 'a: &x [*x]\n')}---\n`,
  'a megabyte of steps': shortNote(many(55_000, () => '1. Cut the packet.')),
  'a megabyte without sense': filled(1 << 20, '~`*[{('),
  'half a megabyte of characters': Array.from({ length: 500_000 }, (_, i) =>
    String.fromCharCode((i * 7919 + i * i) % 65_536),
  ).join(''),
};

test.each(Object.entries(NOTES))(
  '%s is answered or refused in time',
  (_name, text) => {
    expect(quietSeconds(() => compile(read(text)), 2)).toBeLessThan(2);
  },
  240_000,
);

test('a note of ten kilobytes is read at once', () => {
  const text = shortNote(
    many(190, (i) => `1. Cut the packet at ${i % 52}; turn over the top ${(i % 7) + 1} together.`),
  );
  expect(text.length).toBeGreaterThan(10_000);
  expect(quietSeconds(() => compile(read(text)), 0.05, 12)).toBeLessThan(0.05);
}, 120_000);

test('ten thousand steps are all there', () => {
  const { routine } = compile(read(shortNote(many(10_000, (i) => `1. Cut the packet at ${i % 9}.`))));
  expect(routine?.steps).toHaveLength(10_000);
  expect(routine?.steps.at(-1)?.number).toBe('10000');
}, 120_000);
