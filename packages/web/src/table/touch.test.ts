import { compile, read, Stage, type Played } from '@foregone/engine';
import { describe, expect, test } from 'vitest';
import { wayTouched } from './touch.ts';

function touching(step: string) {
  const note = `## Set-up\n- packet: 8 cards, face down\n\n## Working\n1. ${step}\n\n## Ending\n- Every card is face down.\n`;
  const stage = new Stage(compile(read(note)).routine!, note);
  const touch = (played: Played, pile: string, place: number) => {
    const table = stage.table(played);
    const { id } = table.piles.find(({ name }) => name === pile)!.cards[place - 1]!;
    return wayTouched(stage.next(played).ways, table, (key) => stage.table(stage.take(played, key)), {
      pile,
      place,
      id,
    });
  };
  return { stage, start: stage.filled(), touch };
}

describe('touching a card', () => {
  test('cuts there', () => {
    const { start, touch } = touching('Cut the packet.');
    expect(touch(start, 'packet', 3)).toBe(3);
  });

  test('turns that pair', () => {
    const { start, stage, touch } = touching('Take pairs off the packet, leaving or turning each.');
    const key = touch(start, 'packet', 1);
    const turned = stage
      .table(stage.take(start, key!))
      .piles.flatMap(({ cards }) => cards.filter(({ up }) => up));
    expect(turned).toHaveLength(2);
    expect(touch(start, 'packet', 8)).toBeUndefined();
  });

  test('drops a card from that side of a riffle', () => {
    const { start, stage, touch } = touching('Riffle the packet.');
    const halves = stage.take(start, 4);
    const names = stage.table(halves).piles.map(({ name }) => name);
    expect(names).toContain('left');
    expect(touch(halves, 'left', 2)).toBe('left');
    expect(touch(halves, 'right', 1)).toBe('right');
  });
});
