import { check, compile, read, seeded, Stage } from '@foregone/engine';
import { describe, expect, test } from 'vitest';
import { cardWidthFor, place } from './place.ts';
import { poseAt, sceneAt, timelineOf } from './timeline.ts';

const NOTE = `---
title: Four lamps
---
## Set-up
- packet: 2S 9H 4C KD 7S AH JC 5D, face down
## Working
1. Cut the packet.
2. Turn over the top 2 together.
3. Deal the packet into 4 piles.
4. Gather the piles in any order.
## Ending
- Exactly 2 cards are face up.
`;

function performance(note = NOTE) {
  const { routine } = compile(read(note));
  if (routine === undefined) throw new Error(check(note).report.summary);
  const stage = new Stage(routine, note);
  const played = stage.randomly(seeded(7));
  return { stage, played, scenes: stage.storyboard(played), start: stage.table(stage.begin()) };
}

describe('a performance in time', () => {
  test.each([320, 900, 1600])('ends where the proof says, on a table %i wide', (width) => {
    const { stage, played, scenes, start } = performance();
    const timeline = timelineOf(start, scenes, width);
    expect(poseAt(timeline, timeline.length)).toEqual(place(stage.table(played), width).poses);
    expect(poseAt(timeline, 0)).toEqual(place(start, width).poses);
    for (let t = 0; t <= timeline.length; t += 37) {
      const poses = poseAt(timeline, t);
      expect(poses.size).toBe(8);
      for (const { turn, x } of poses.values()) {
        expect(turn).toBeGreaterThanOrEqual(0);
        expect(turn).toBeLessThanOrEqual(1);
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x + cardWidthFor(width, 8)).toBeLessThanOrEqual(width + 0.5);
      }
    }
  });

  test('scenes follow each other', () => {
    const { scenes, start } = performance();
    const timeline = timelineOf(start, scenes, 900);
    expect(timeline.scenes).toHaveLength(scenes.length + 1);
    expect(sceneAt(timeline, 0)).toBe(-1);
    expect(sceneAt(timeline, timeline.length)).toBe(scenes.length - 1);
  });
});

describe('places', () => {
  test('52 cards and four hands of 13 fit a phone and a projector without cards on one spot', () => {
    for (const width of [328, 1800])
      for (const count of [1, 4]) {
        const piles = Array.from({ length: count }, (_, p) => ({
          name: `pile ${p + 1}`,
          passing: false,
          text: '',
          cards: Array.from({ length: 52 / count }, (_unused, i) => ({
            id: p * 100 + i,
            name: '',
            short: '',
            text: '',
            colour: null,
            up: false,
            end: false,
            marks: [],
          })),
        }));
        const { poses } = place({ piles, numbers: {} }, width);
        const spots = new Set([...poses.values()].map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`));
        expect(spots.size).toBe(52);
      }
  });
});
