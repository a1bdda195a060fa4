import { describe, expect, test } from 'vitest';
import { read } from './read.ts';
import type { Block, Item, Note, Piece } from './note.ts';

const NOTE = `---
title: Lighthouse keepers
minutes: 4
credits:
  - for: turnover principle
    source: a book
readings:
  - cut: the cut is completed
---
Eight keepers, four lamps.

## Set-up
- packet: 2S 9H 4C KD, face down

## Working
1. Any number of times:
   1. Cut the packet.
   2. Turn over
      the top 2 together.

   > "Cut wherever you like.
   > As often as you please."
2. Deal the packet into a pile.

   Keep the deal unhurried.

### A heading inside
3. Cut.

## ENDING:
- Exactly 4 cards are face up.

## Prediction
Four lamps.

## Thanks
To all.
`;

function items(note: Note): readonly Item[] {
  return (note.working?.blocks ?? []).flatMap((block) => (block.is === 'steps' ? block.items : []));
}

/** Every piece of text that keeps its place. */
function pieces(blocks: readonly Block[]): Piece[] {
  return blocks.flatMap((block) =>
    block.is === 'steps' || block.is === 'bullets'
      ? block.items.flatMap(({ sentence, blocks: inner }) => [
          ...(sentence === null ? [] : [sentence]),
          ...pieces(inner),
        ])
      : [],
  );
}

describe('a note', () => {
  const note = read(NOTE);

  test('has its head', () => {
    expect(note.diagnostics).toEqual([]);
    expect(note.title).toBe('Lighthouse keepers');
    expect(note.head).toMatchObject({
      minutes: 4,
      credits: [{ for: 'turnover principle', source: 'a book' }],
      readings: [{ word: 'cut', taken: 'the cut is completed' }],
    });
    expect(NOTE.slice(note.head.range?.from, note.head.range?.to)).toMatch(/^---\n[^]*\n---\n$/);
  });

  test('has its sections, whatever the heading looks like', () => {
    expect(note.setUp?.heading.text).toBe('Set-up');
    expect(note.ending?.heading.text).toBe('ENDING:');
    expect(note.prediction?.blocks).toMatchObject([{ is: 'prose', text: 'Four lamps.' }]);
    expect(note.others.map(({ heading }) => heading.text)).toEqual(['Thanks']);
    expect(note.opening).toMatchObject([{ is: 'prose', text: 'Eight keepers, four lamps.' }]);
  });

  test('has steps within steps, patter and remarks', () => {
    const [first, second, third] = items(note);
    expect(first.sentence?.text).toBe('Any number of times:');
    expect(first.blocks).toMatchObject([
      { is: 'steps', items: [{ sentence: { text: 'Cut the packet.' } }, {}] },
      { is: 'patter', text: '"Cut wherever you like.\nAs often as you please."' },
    ]);
    expect(second.blocks).toMatchObject([{ is: 'prose', text: 'Keep the deal unhurried.' }]);
    expect(third.sentence?.text).toBe('Cut.');
  });
});

const ENDS = { 'line feeds': '\n', 'carriage returns and line feeds': '\r\n', 'carriage returns': '\r' };

test.each(Object.entries(ENDS))(
  'every sentence stands at its place with %s, after a byte order mark too',
  (_name, end) => {
    for (const mark of ['', '\uFEFF']) {
      const text = mark + NOTE.replaceAll('\n', end);
      const note = read(text);
      const blocks = [note.setUp, note.working, note.ending].flatMap((section) => section?.blocks ?? []);
      const all = pieces(blocks);
      expect(all.map((piece) => piece.text.replace(/\s+/g, ' '))).toEqual([
        'packet: 2S 9H 4C KD, face down',
        'Any number of times:',
        'Cut the packet.',
        'Turn over the top 2 together.',
        'Deal the packet into a pile.',
        'Cut.',
        'Exactly 4 cards are face up.',
      ]);
      for (const { text: said, range } of all) expect(text.slice(range.from, range.to)).toBe(said);
      expect(note.head.minutes).toBe(4);
    }
  },
);

test('the title may be the first heading', () => {
  expect(read('# Lamps\nProse.\n\n## Working\n1. Cut.\n')).toMatchObject({
    title: 'Lamps',
    opening: [{ text: 'Prose.' }],
  });
  expect(read('## Working\n1. Cut.\n').title).toBe('');
});

describe('the head', () => {
  const headOf = (yaml: string): Note['head'] => read(`---\n${yaml}\n---\n`).head;

  test('ends with --- or ...', () => {
    expect(read('---\ntitle: A\n...\nProse.\n')).toMatchObject({ title: 'A', opening: [{ text: 'Prose.' }] });
  });

  test('may be empty, or have keys of its own', () => {
    expect(read('---\n---\nProse.\n').diagnostics).toEqual([]);
    expect(read('---\ndifficulty: 3\ntags: [a, b]\n---\n').diagnostics).toEqual([]);
  });

  test('takes aliases, also those that lead round in a circle', () => {
    expect(headOf('title: &t Lamps\ncredits:\n  - *t').credits).toEqual([{ for: '', source: 'Lamps' }]);
    expect(read('---\ncredits: &c\n  - *c\n---\n').diagnostics).toMatchObject([{ code: 'head-value' }]);
    expect(headOf('title: *nowhere').title).toBeNull();
  });

  test('credits may be lines', () => {
    expect(headOf('credits: a book').credits).toEqual([{ for: '', source: 'a book' }]);
    expect(headOf('credits:\n  - a book\n  - 1984').credits.map(({ source }) => source)).toEqual([
      'a book',
      '1984',
    ]);
  });

  test('a line like its opening inside the note is a rule', () => {
    expect(read('Prose.\n\n---\n\n## Working\n1. Cut.\n').head.range).toBeNull();
  });
});
