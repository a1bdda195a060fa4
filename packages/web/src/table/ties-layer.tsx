import type { MomentData, TableData } from '@foregone/engine';
import type { Arc } from '../ui/packet-shape.ts';
import { thinned } from '../ui/packet-shape.ts';
import { picturesOf } from '../ui/picture.ts';
import { cardWidthFor, type Placed, type Pose } from './place.ts';

interface TiesLayerProps {
  readonly moment: MomentData;
  readonly table: TableData;
  readonly placed: Placed;
  readonly width: number;
}

const DEEPEST = 34;

/** Drawn over the performer's cards in pencil: what is needed of them now, pairs by arcs and stretches by brackets. */
export function TiesLayer({ moment, table, placed, width }: TiesLayerProps) {
  const card = cardWidthFor(width, placed.poses.size);
  const paths = picturesOf(moment, table).flatMap(({ pile, picture }) => {
    const cards = table.piles.find(({ name }) => name === pile)?.cards ?? [];
    const at = (place: number) => placed.poses.get(cards[place]?.id ?? -1);
    const arcs = thinned(picture.need).flatMap((arc) => arcBetween(arc, at, card, width));
    const blocks = (picture.blocks ?? []).flatMap((block) => bracketUnder(block, at, card));
    return [...arcs, ...blocks];
  });
  if (paths.length === 0) return null;
  return (
    <svg className="ties" width={width} height={placed.height} aria-hidden="true">
      {paths.map((d, index) => (
        <path key={index} d={d} />
      ))}
    </svg>
  );
}

type At = (place: number) => Pose | undefined;

function arcBetween({ from, to }: Arc, at: At, card: number, width: number): string[] {
  const [a, b] = [at(from), at(to)];
  if (a === undefined || b === undefined) return [];
  const foot = card * (10 / 7) + 4;
  const [x1, x2] = [a.x + card / 2, b.x + card / 2];
  // Cards in different rows of a long pile are tied from edge to edge.
  if (Math.abs(a.y - b.y) > 1) {
    const middle = (a.y + foot + b.y) / 2;
    return [`M${x1} ${a.y + foot}C${x1} ${middle + 10} ${x2} ${middle - 10} ${x2} ${b.y - 2}`];
  }
  const depth = (8 + (DEEPEST - 8) * (Math.abs(x2 - x1) / Math.max(1, width))) / 0.75;
  const y = a.y + foot;
  return [`M${x1} ${y}C${x1} ${y + depth} ${x2} ${y + depth} ${x2} ${y}`];
}

function bracketUnder({ from, to }: Arc, at: At, card: number): string[] {
  const [a, b] = [at(from), at(to)];
  if (a === undefined || b === undefined || Math.abs(a.y - b.y) > 1) return [];
  const y = a.y + card * (10 / 7) + 4;
  return [`M${a.x + 2} ${y}v6H${b.x + card - 2}v-6`];
}
