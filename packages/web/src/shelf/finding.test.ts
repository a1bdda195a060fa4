import { describe, expect, test } from 'vitest';
import { noteWith, summaryWith } from '../../testing/notes.ts';
import { facetValues, NO_FILTER, passes, toggled } from './facets.ts';
import { firstWords } from './first-words.ts';
import { createIndex } from './search-index.ts';

const notes = [
  noteWith({
    id: 'boat',
    title: 'The night boat',
    text: 'Twelve passengers, six cabins. Cut the packet.',
    summary: summaryWith({ verdict: 'proved', cards: 12, minutes: 4, moves: ['cut', 'milk'] }),
  }),
  noteWith({
    id: 'café',
    title: 'Corner café',
    text: 'Ten regulars and their tables.',
    summary: summaryWith({ verdict: 'refuted', cards: 10, minutes: 8, moves: ['cut', 'deal'] }),
  }),
  noteWith({
    id: 'pack',
    title: 'A whole pack',
    text: 'Everybody deals.',
    summary: summaryWith({ verdict: 'proved', cards: 52, moves: ['riffle'], structures: ['mirror pairs'] }),
  }),
  noteWith({ id: 'new', title: 'Not read yet' }),
];

describe('words', () => {
  const index = createIndex();
  index.update(notes);
  test.each([
    ['passengers', ['boat']],
    ['passeng', ['boat']],
    ['pasengers', ['boat']],
    ['cafe', ['café']],
    ['CUT packet', ['boat']],
    ['mirror', ['pack']],
    ['riffle', ['pack']],
    ['zebra', []],
    ['', []],
  ])('%s', (words, ids) => {
    expect(index.find(words)).toEqual(ids);
  });

  test('a title counts more than a mention', () => {
    index.update([
      ...notes,
      noteWith({ id: 'mention', text: 'Seen on a boat once, between two other boats.' }),
    ]);
    expect(index.find('boat')).toEqual(['boat', 'mention']);
  });

  test('what changes is found by its new words only, what goes is not found', () => {
    const changed = { ...notes[0]!, revision: 2, text: 'Now a train.', title: 'The night train' };
    index.update([changed, notes[1]!]);
    expect(index.find('passengers')).toEqual([]);
    expect(index.find('train')).toEqual(['boat']);
    expect(index.find('whole')).toEqual([]);
  });
});

describe('facets', () => {
  test('values in their own order, with what each would leave', () => {
    expect(facetValues(notes, NO_FILTER, 'verdict')).toEqual([
      { value: 'proved', words: 'Always works', count: 2 },
      { value: 'refuted', words: 'Can fail', count: 1 },
    ]);
    expect(facetValues(notes, NO_FILTER, 'cards').map(({ words, count }) => [words, count])).toEqual([
      ['9 to 16', 2],
      ['full pack', 1],
    ]);
    expect(facetValues(notes, NO_FILTER, 'moves')[0]).toEqual({ value: 'cut', words: 'cut', count: 2 });
  });

  test('one of the values in each facet has to fit', () => {
    const filter = toggled(
      toggled(NO_FILTER, 'cards', new Set(['9 to 16', 'full pack'])),
      'verdict',
      new Set(['proved']),
    );
    expect(notes.filter((note) => passes(note, filter)).map(({ id }) => id)).toEqual(['boat', 'pack']);
    // The counts of a facet do not look at its own choices.
    expect(facetValues(notes, filter, 'verdict').map(({ count }) => count)).toEqual([2, 1]);
  });

  test('a choice that leaves nothing can still be taken back', () => {
    const filter = toggled(NO_FILTER, 'moves', new Set(['faro']));
    expect(facetValues(notes, filter, 'moves')).toContainEqual({ value: 'faro', words: 'faro', count: 0 });
  });
});

describe('the line under a title', () => {
  test.each([
    ['after head and heading', '---\ntitle: A\n---\n\n# A\n\nSix cabins.\n', 'Six cabins.'],
    ['without its signs', '*Six* cabins, see [the boat](boat.md).', 'Six cabins, see the boat.'],
    ['no step, no bullet, no patter', '## Working\n1. Cut.\n- packet\n> "Cut."\n', ''],
    ['not too long', 'x'.repeat(500), `${'x'.repeat(139)}…`],
    ['with an open head', '---\ntitle: A\n', 'title: A'],
  ])('%s', (_what, text, words) => {
    expect(firstWords(text)).toBe(words);
  });
});
