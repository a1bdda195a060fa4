import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endings, meant, richNote, workings } from '../../testing/notes/rich-note.ts';
import { compileInside } from './compile.ts';
import { format } from './format.ts';
import { read } from './read.ts';

const NOTE = `\uFEFF---
title:   Lamps   # as it was
readings: [ ]
---
Cut the packet, said the   keeper.

## Set-up
* packet: two of spades, 9H 4C KD face down
- warm: hearts

   A remark: cut the packet.

## Working
1. As often as they like:
   1. give the packet a cut
   2. The spectator turns over the top 2 together, in secret;   and you turn the packet over.

   > Cut the packet, out of your sight.
2. Frobnicate the packet, then cut the packet at 3.
3. **Cut** the packet.
4. cut the packet, then
   turn it over any number of times.

## Ending
- all cards are face down and all the cards are black
- if the top card is red then the bottom card is black.
`;

describe('format', () => {
  test('writes what is understood as it prints, and leaves all else alone', () => {
    expect(format(NOTE)).toBe(`\uFEFF---
title:   Lamps   # as it was
readings: [ ]
---
Cut the packet, said the   keeper.

## Set-up
* packet: 2S 9H 4C KD, face down
- warm: hearts

   A remark: cut the packet.

## Working
1. Any number of times:
   1. Cut the packet.
   2. Turn over the top 2 cards, in secret;   you turn the packet over.

   > Cut the packet, out of your sight.
2. Frobnicate the packet, then cut the packet at 3.
3. **Cut** the packet.
4. Cut the packet, then
   turn the packet over any number of times.

## Ending
- All cards are face down and all cards are black.
- If the top card is red, then the bottom card is black.
`);
  });

  test('keeps line ends of every kind', () => {
    for (const end of ['\r\n', '\r'])
      expect(format(NOTE.replaceAll('\n', end))).toBe(format(NOTE).replaceAll('\n', end));
  });
});

const codes = (text: string): string[] =>
  compileInside(read(text), false).compiled.diagnostics.flatMap(({ code, severity }) =>
    severity === 'reading' ? [] : [code],
  );

test('format keeps the meaning of every working, and is settled after once', () => {
  fc.assert(
    fc.property(workings, (working) => {
      const text = richNote(working);
      const formatted = format(text);
      const steps = (note: string): unknown => meant(compileInside(read(note), false).steps);
      expect(steps(formatted)).toEqual(steps(text));
      expect(codes(formatted)).toEqual(codes(text));
      expect(format(formatted)).toBe(formatted);
    }),
    { numRuns: 25 },
  );
}, 120_000);

test('format keeps the meaning of every ending, and is settled after once', () => {
  fc.assert(
    fc.property(endings, (ending) => {
      const text = richNote('1. Cut the packet.', ending);
      const formatted = format(text);
      const said = (note: string): unknown =>
        compileInside(read(note), false).endings.map(({ sentence }) => sentence);
      expect(said(text)).toHaveLength(1);
      expect(said(formatted)).toEqual(said(text));
      expect(format(formatted)).toBe(formatted);
    }),
    { numRuns: 25 },
  );
}, 120_000);
