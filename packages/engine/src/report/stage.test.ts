import { describe, expect, test } from 'vitest';
import { noteText, routineIn } from '../../testing/note-text.ts';
import { seeded } from '../base/seeded.ts';
import { Stage } from './stage.ts';
import type { TableData } from './table-data.ts';

const NOTES: readonly (readonly [string, string])[] = [
  [
    'turnover',
    noteText(
      ['packet: 6 cards alternately red and black, face down'],
      [
        'Any number of times:',
        '   1. Cut the packet.',
        '   2. Turn over the top 2 together.',
        'Deal the packet into a pile, turning every second card.',
      ],
      ['Exactly 3 cards are face up.'],
    ),
  ],
  [
    'riffle with faces',
    noteText(
      ['packet: any 6 cards, in any order, face up or down as they like'],
      ['Turn over any number of cards and riffle them into the rest.', 'Shuffle the packet.'],
      ['Exactly 3 cards are face up.'],
    ),
  ],
  [
    'piles that are looked into',
    noteText(
      ['packet: 9 cards, face down'],
      [
        'The spectator notes any card, call it chosen.',
        '2 times:',
        '   1. Deal the packet into 3 piles.',
        '   2. The spectator says which pile holds chosen, call its number N.',
        '   3. Gather the piles with pile N in the middle.',
      ],
      ['The 5th card is chosen.'],
    ),
  ],
  [
    'open attributes and a choice of ways',
    noteText(
      ['packet: 5 cards, each red or black, face down'],
      [
        'Either:',
        '   - Milk the packet.',
        '   - Do nothing.',
        'Overhand-shuffle the packet.',
        'Take pairs off the top, leaving or turning each.',
      ],
      ['The top card is red.'],
    ),
  ],
];

/** What lies where, without what only exists in a step. */
function lying({ piles }: TableData): unknown {
  return piles.map(({ name, text }) => [name, text]);
}

describe.each(NOTES)('%s', (_name, text) => {
  const stage = new Stage(routineIn(text), text);

  test('the actions of the storyboard make the tables of the performance', () => {
    for (let seed = 0; seed < 30; seed++) {
      const played = stage.randomly(seeded(seed));
      const performance = stage.performance(played);
      const scenes = stage.storyboard(played);
      expect(scenes.length).toBe(performance.steps.length);
      let before = performance.start;
      scenes.forEach((scene, i) => {
        expect(lying(scene.before)).toEqual(lying(before));
        expect(lying(scene.beats.at(-1)?.after ?? scene.before)).toEqual(lying(scene.after));
        expect(lying(scene.after)).toEqual(lying(performance.steps[i].after));
        expect(scene.after.piles.some(({ passing }) => passing)).toBe(false);
        before = scene.after;
      });
      expect(lying(performance.end)).toEqual(lying(before));
    }
  });

  test('no card is lost on the way, and every one keeps its number', () => {
    const performance = stage.performance(stage.randomly(seeded(7)));
    const ids = ({ piles }: TableData): number[] =>
      piles.flatMap(({ cards }) => cards.map(({ id }) => id)).sort((a, b) => a - b);
    for (const { after } of performance.steps) expect(ids(after)).toEqual(ids(performance.start));
    expect(performance.cards.map(({ id }) => id)).toEqual(ids(performance.start));
  });

  test('the same seed gives the same performance, and its keys give it again where the cards are known', () => {
    const first = stage.performance(stage.randomly(seeded(3)));
    expect(stage.performance(stage.randomly(seeded(3)))).toEqual(first);
    // One at a time, by hand, from the same start.
    const whole = stage.randomly(seeded(3));
    let played = stage.begin();
    for (const edge of whole.path) {
      const { ways } = stage.next(played);
      expect(ways.map(({ key }) => key)).toContain(edge.key);
      played = stage.take(played, edge.key);
    }
    expect(played.at.location).toBe(whole.at.location);
    expect(played.ended).toBe(true);
  });
});

describe('by choices', () => {
  const [, text] = NOTES[0];
  const stage = new Stage(routineIn(text), text);

  test('choices in order, the plainest way for the rest', () => {
    const played = stage.byKeys(['again', '2']);
    expect(played.ok).toBe(true);
    if (!played.ok) return;
    const { steps, start } = stage.performance(played.value);
    expect(start.piles.map(({ text: cards }) => cards)).toEqual(['r1 b2 r3 b4 r5 b6']);
    expect(steps.map(({ number, choice }) => [number, choice])).toEqual([
      ['1', 'once more'],
      ['1.1', 'cuts 2'],
      ['1.2', ''],
      ['1', 'stops'],
      ['2', ''],
    ]);
    expect(steps[2].after.piles.map(({ text: cards }) => cards)).toEqual(['b4^ r3^ r5 b6 r1 b2']);
    expect(stage.judge(played.value)).toEqual([
      { text: 'Exactly 3 cards are face up', holds: true, shows: '', trouble: undefined },
    ]);
  });

  test('a choice that is not there, and choices that are left', () => {
    expect(stage.byKeys(['again', '9'])).toEqual({
      ok: false,
      error: {
        code: 'no-such-choice',
        facts: { choice: '9', position: 2, step: '1.1', known: ['0', '1', '2', '3', '4', '5'] },
      },
    });
    expect(stage.byKeys(['stop', 'again'])).toEqual({
      ok: false,
      error: { code: 'choices-left', facts: { left: ['again'] } },
    });
  });

  test('the ways on are said in the words of the trade', () => {
    const { step, ways } = stage.next(stage.take(stage.begin(), 'again'));
    expect(step).toEqual({ number: '1.1', sentence: 'Cut the packet', who: 'spectator' });
    expect(ways.map(({ words }) => words)).toEqual([
      'cuts nothing',
      'cuts 1',
      'cuts 2',
      'cuts 3',
      'cuts 4',
      'cuts 5',
    ]);
  });
});

test('a performance that cannot go on says why', () => {
  const text = noteText(
    ['packet: 4 cards, face down'],
    ['The spectator names a number from 3 to 6, call it N.', 'Deal N cards to the table.'],
    ['All cards are face down.'],
  );
  const stage = new Stage(routineIn(text), text);
  const played = stage.byKeys(['5']);
  expect(played.ok && played.value).toMatchObject({ ended: false, stuck: { code: 'not-enough-cards' } });
  expect(played.ok && stage.judge(played.value)).toEqual([]);
});
