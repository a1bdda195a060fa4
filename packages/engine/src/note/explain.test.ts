import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../base/diagnostic.ts';
import { shortNote, troubles } from '../../testing/notes/short.ts';
import { compile } from './compile.ts';
import { read } from './read.ts';

/** The first error of a note, and the note as each of its changes would make it. */
function first(text: string): { error: Diagnostic; mended: string[] } {
  const error = compile(read(text)).diagnostics.find(({ severity }) => severity === 'error');
  if (error === undefined) throw new Error('there is no error');
  const mended = error.fixes.map(
    ({ range, text: put }) => text.slice(0, range.from) + put + text.slice(range.to),
  );
  return { error, mended };
}

const errors = (text: string): string[] =>
  compile(read(text)).diagnostics.flatMap(({ severity, code }) => (severity === 'error' ? [code] : []));

test('a name that an unread sentence may bring is not missed after it; another is', () => {
  const step = (name: string): string =>
    shortNote(`1. Deal about half of it into a heap.\n2. Riffle ${name} and the packet together.`);
  expect(errors(step('the heap'))).toEqual(['sentence-not-understood']);
  expect(errors(step('the rest'))).toEqual(['sentence-not-understood', 'unknown-pile']);
});

describe('what is offered mends it', () => {
  test.each([
    ['1. Trun the packet over.', 'Turn the packet over'],
    ['1. Cut teh packet an complete the cut.', 'Cut the packet and complete the cut'],
    ['1. Deal the packt into 3 piles, then gather the piles left on right.', 'packet'],
    ['1. Any nmber of times:\n   1. Cut the packet.', 'Any number of times'],
    ['1. Cut it.', 'the packet'],
    ['1. As often as you like: cut the packet.', 'Any number of times'],
    ['1. The spectator names a number from 1 to 4, call it N.\n2. Cut the packet at M.', 'N'],
  ])('%s', (working, label) => {
    const { error, mended } = first(shortNote(working));
    expect(error.fixes.map((fix) => fix.label)).toContain(label);
    for (const text of mended) expect(errors(text)).toEqual([]);
  });

  test.each([
    ['- All cards are faec down.', 'All cards are face down'],
    ['- The top card is red and the botom card is black.', 'the bottom card is black'],
  ])('%s', (ending, label) => {
    const { error, mended } = first(shortNote('1. Cut the packet.', ending));
    expect(error.fixes.map((fix) => fix.label.toLowerCase())).toContain(label.toLowerCase());
    for (const text of mended) expect(errors(text)).toEqual([]);
  });
});

describe('the place is where the sentence is lost', () => {
  test.each([
    ['1. Bury the top card beneath the moon.', 'sentence-not-understood "moon"'],
    ['1. Juggle the packet.', 'sentence-not-understood "Juggle the packet"'],
    ['1. Cut the packet, then juggle it, then turn it over.', 'sentence-not-understood "juggle it"'],
    ['1. The spectator buries.', 'sentence-ends-early "The spectator buries"'],
    ['1. Cut the moon.', 'unknown-pile "moon"'],
    ['1. Cut the packet at ½.', 'stray-sign "½"'],
  ])('%s', (working, trouble) => {
    expect(troubles(working)).toContain(trouble);
  });

  test('what was expected there is said', () => {
    const { error } = first(shortNote('1. Bury the top card beneath the moon.'));
    expect(error.facts.word).toBe('moon');
    expect(error.facts.expected).not.toEqual([]);
  });
});

test('a note without a working or a set-up says so', () => {
  expect(errors('Prose.')).toEqual(['no-set-up', 'no-working']);
  expect(errors(shortNote('Prose.'))).toEqual(['no-steps']);
  expect(errors('## Set-up\n\n## Working\n\n## Ending\n')).toEqual(['no-set-up-lines', 'no-steps']);
});

test('so many troubles are told, and the rest are counted', () => {
  const { diagnostics } = compile(read(shortNote('1. Juggle.\n'.repeat(3000))));
  expect(diagnostics).toHaveLength(201);
  expect(diagnostics.at(-1)).toMatchObject({ code: 'and-more', facts: { more: 2800 } });
});
