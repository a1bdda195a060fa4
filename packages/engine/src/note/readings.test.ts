import { expect, test } from 'vitest';
import { shortNote } from '../../testing/notes/short.ts';
import { compile } from './compile.ts';
import { read } from './read.ts';

const open = (text: string) =>
  compile(read(text)).diagnostics.filter(({ severity }) => severity === 'reading');

/** Confirms what is open, one after the other, as a person would. */
function confirmAll(text: string): string[] {
  const texts = [text];
  for (let [next] = open(text); next !== undefined; [next] = open(texts.at(-1) ?? '')) {
    const [{ range, text: more }] = next.fixes;
    const now = texts.at(-1) ?? '';
    texts.push(now.slice(0, range.from) + more + now.slice(range.to));
    if (texts.length > 10) throw new Error('confirming leads nowhere');
  }
  return texts;
}

const STEPS = '1. Cut the packet.\n2. Turn over the top 2 cards.';

test.each([
  ['no head', ''],
  ['a head', '---\ntitle: Lamps\n---\n'],
  ['an empty list', '---\nreadings:\ntitle: Lamps\n---\n'],
  ['a list', '---\nreadings:\n  - every: the 2nd, 4th and so on are turned\n---\n'],
  [
    'a list that is not indented',
    '---\nreadings:\n- every: the 2nd, 4th and so on are turned\ntitle: Lamps\n---\n',
  ],
])('a reading is confirmed in a note with %s, and then no longer raised', (_name, head) => {
  const text = head + shortNote(STEPS);
  const texts = confirmAll(text);
  const last = texts.at(-1) ?? '';
  expect(texts.length).toBeGreaterThan(2);
  expect(open(last)).toEqual([]);
  const { diagnostics, readings, routine } = compile(read(last));
  expect(diagnostics).toEqual([]);
  expect(readings.every(({ confirmed }) => confirmed)).toBe(true);
  expect(routine?.title).toBe(head.includes('title') ? 'Lamps' : '');
  expect(last.slice(last.indexOf('## Set-up'))).toBe(text.slice(text.indexOf('## Set-up')));
});

test('an order known by its name is a reading too', () => {
  const text = shortNote(
    '1. Turn the packet over sideways.',
    undefined,
    '- packet: full pack in new pack order, face down',
  );
  const orders = open(text).filter(({ code }) => code === 'set-up-order-taken');
  expect(orders).toHaveLength(1);
  const last = confirmAll(text).at(-1) ?? '';
  expect(open(last)).toEqual([]);
});

test('another meaning is not confirmed by the same word', () => {
  const head = '---\nreadings:\n  - cut: the cut is not completed\n---\n';
  expect(open(head + shortNote('1. Cut the packet.'))).toHaveLength(1);
});
