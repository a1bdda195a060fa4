import { describe, expect, test } from 'vitest';
import {
  applied,
  endingsIn,
  insertEnding,
  insertStep,
  moveStep,
  removeEnding,
  removeStep,
  replaceEnding,
  replaceSentence,
  sectionAt,
  setPacket,
  stepAt,
  stepsIn,
} from './steps.ts';

const NOTE = `---
title: Lamps
---
1. Not a step.

## Set-up
- packet: 8 cards, face down

## Working
1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.

   > "As you like."

2. Deal the packet into a pile.
3. Cut the packet at 4.

## Ending
- Every card is face down.
`;

const change = (made: ReturnType<typeof moveStep>) => applied(NOTE, made!);
const sentences = (text: string) => stepsIn(text).map(({ number, sentence }) => `${number} ${sentence}`);

describe('steps in the text', () => {
  test('are those of the working, counted through', () => {
    expect(sentences(NOTE)).toEqual([
      '1 Any number of times:',
      '1.1 Cut the packet.',
      '1.2 Turn over the top 2 together.',
      '2 Deal the packet into a pile.',
      '3 Cut the packet at 4.',
    ]);
    expect(sentences('no note')).toEqual([]);
  });

  test('are found at the caret', () => {
    expect(stepAt(NOTE, NOTE.indexOf('top 2'))?.number).toBe('1.2');
    expect(stepAt(NOTE, NOTE.indexOf('As you'))?.number).toBe('1');
    expect(stepAt(NOTE, 3)).toBeUndefined();
    expect(sectionAt(NOTE, NOTE.indexOf('Deal'))).toBe('working');
    expect(sectionAt(NOTE, NOTE.indexOf('Every'))).toBe('ending');
    expect(sectionAt(NOTE, 5)).toBeUndefined();
  });

  test('change places with all that belongs to them', () => {
    expect(change(moveStep(NOTE, '2', -1))).toContain(`## Working
1. Deal the packet into a pile.

2. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 together.

   > "As you like."
3. Cut the packet at 4.`);
    expect(sentences(change(moveStep(NOTE, '1.1', 1)))[1]).toBe('1.1 Turn over the top 2 together.');
    expect(moveStep(NOTE, '1', -1)).toBeUndefined();
    expect(moveStep(NOTE, '3', 1)).toBeUndefined();
    expect(moveStep(NOTE, '1.2', 1)).toBeUndefined();
  });

  test('moving down and up again is the same note', () => {
    const down = change(moveStep(NOTE, '2', 1));
    expect(sentences(down).slice(3)).toEqual(['2 Cut the packet at 4.', '3 Deal the packet into a pile.']);
    expect(applied(down, moveStep(down, '3', -1)!)).toBe(NOTE);
  });

  test('the caret goes with the sentence', () => {
    const made = moveStep(NOTE, '3', -1)!;
    expect(applied(NOTE, made).slice(made.caret)).toMatch(/^Cut the packet at 4/);
  });

  test('are taken out, and the rest is numbered anew', () => {
    const text = change(removeStep(NOTE, '2'));
    expect(sentences(text).at(-1)).toBe('2 Cut the packet at 4.');
    expect(text).toContain('2. Cut the packet at 4.\n\n## Ending');
    expect(sentences(change(removeStep(NOTE, '3')))).toHaveLength(4);
    expect(change(removeStep(NOTE, '3'))).toContain('pile.\n\n## Ending');
    expect(sentences(change(removeStep(NOTE, '1.1')))[1]).toBe('1.1 Turn over the top 2 together.');
  });

  test('are put in before another, inside a block, at the end, and where there are none', () => {
    const before = change(insertStep(NOTE, 'Milk the packet.', '2'));
    expect(before).toContain(
      '2. Milk the packet.\n3. Deal the packet into a pile.\n4. Cut the packet at 4.\n',
    );
    const inside = change(insertStep(NOTE, 'Milk the packet.', '1.2'));
    expect(inside).toContain('   2. Milk the packet.\n   3. Turn over the top 2 together.\n');
    const last = change(insertStep(NOTE, 'Milk the packet.', undefined));
    expect(last).toContain('3. Cut the packet at 4.\n4. Milk the packet.\n\n## Ending');
    const none = applied(
      '# X\n\n## Working\n',
      insertStep('# X\n\n## Working\n', 'Cut the packet.', undefined)!,
    );
    expect(sentences(none)).toEqual(['1 Cut the packet.']);
    expect(sentences(applied('', insertStep('', 'Cut the packet.', undefined)!))).toEqual([
      '1 Cut the packet.',
    ]);
  });

  test('get another sentence', () => {
    expect(change(replaceSentence(NOTE, '1.1', 'Cut the packet at 2.'))).toContain(
      '   1. Cut the packet at 2.\n',
    );
  });

  test('endings are put in after the last one', () => {
    expect(change(insertEnding(NOTE, 'The top card is red.'))).toMatch(
      /face down\.\n- The top card is red\.\n$/,
    );
    expect(applied('', insertEnding('', 'The top card is red.'))).toBe(
      '\n## Ending\n\n- The top card is red.\n',
    );
  });
});

describe('the packet of a set-up', () => {
  const put = (text: string) => applied(text, setPacket(text, 'packet: 10 cards'));
  test.each([
    [
      '## Set-up\n\n- packet: 8 cards\n- hand: 2 cards\n',
      '## Set-up\n\n- packet: 10 cards\n- hand: 2 cards\n',
    ],
    ['## Set-up\n\n## Working\n', '## Set-up\n\n- packet: 10 cards\n\n## Working\n'],
    ['# A\n\n## Working\n\n1. Cut.\n', '# A\n\n## Set-up\n\n- packet: 10 cards\n\n## Working\n\n1. Cut.\n'],
    ['# A', '# A\n## Set-up\n\n- packet: 10 cards\n\n'],
    ['', '## Set-up\n\n- packet: 10 cards\n\n'],
  ])('%#', (before, after) => {
    expect(put(before)).toBe(after);
  });
});

describe('the sentences of an ending', () => {
  const text = '## Ending\n\n- One card.\n* Two cards.\n\nWords.\n';
  test('are found, replaced and taken out', () => {
    const [one, two] = endingsIn(text);
    expect([one!.sentence, two!.sentence]).toEqual(['One card.', 'Two cards.']);
    expect(applied(text, replaceEnding(two!, 'Three.'))).toBe(text.replace('Two cards.', 'Three.'));
    expect(applied(text, removeEnding(text, one!))).toBe('## Ending\n\n* Two cards.\n\nWords.\n');
    expect(endingsIn('## Working\n- One.\n')).toEqual([]);
  });
});
