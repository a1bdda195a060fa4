import type { EquationData, MomentData, StatementData, TableData } from '@foregone/engine';
import type { Arc, PacketMark, PacketPicture } from './packet-shape.ts';

type CardData = TableData['piles'][number]['cards'][number];

/** Above this many cards a packet is too long for its picture to say anything. */
const MOST_CARDS = 60;

/** A picture of one pile at one moment. */
export interface PilePicture {
  readonly pile: string;
  readonly picture: PacketPicture;
}

/**
 * The piles of a moment of which something is certain or needed.
 *
 * @param table how the cards lie there in one performance, for what the marks are filled by
 */
export function picturesOf(moment: MomentData, table: TableData | undefined): PilePicture[] {
  const have = equationsIn(moment.have);
  const need = equationsIn(moment.need);
  const all = [...need, ...have];
  return Object.entries(moment.sizes).flatMap(([pile, size]) => {
    if (size === 0 || size > MOST_CARDS) return [];
    const isHere = ({ terms }: EquationData) => terms.some((term) => term.pile === pile);
    if (!all.some(isHere)) return [];
    const trait = all.find(isHere)?.terms[0]?.trait ?? '';
    const cards = table?.piles.find(({ name }) => name === pile)?.cards;
    const marks = Array.from({ length: size }, (_, place): PacketMark => {
      const known = knownAt(have, pile, place + 1);
      if (known !== undefined) return known ? 'filled' : 'open';
      const card = cards?.length === size ? cards[place] : undefined;
      return card === undefined ? 'unknown' : (markBy(trait, card) ?? 'unknown');
    });
    const [certain, needed] = [tiesOf(have, pile, size), tiesOf(need, pile, size)];
    const blocks = needed.blocks.length > 0 ? needed.blocks : certain.blocks;
    const ring = goesRound(certain.arcs, size);
    return [{ pile, picture: { marks, have: certain.arcs, need: needed.arcs, ring, blocks } }];
  });
}

/** Above this many cards in a ring its marks would run into each other. */
const MOST_IN_RING = 32;

/** Whether every card is tied to the next, and the last to the first. */
function goesRound(arcs: readonly Arc[], size: number): boolean {
  if (size < 5 || size > MOST_IN_RING) return false;
  const known = new Set(arcs.map(({ from, to }) => `${from} ${to}`));
  return (
    known.has(`0 ${size - 1}`) &&
    Array.from({ length: size - 1 }, (_, place) => known.has(`${place} ${place + 1}`)).every(Boolean)
  );
}

function equationsIn(statements: readonly StatementData[]): EquationData[] {
  return statements.flatMap(({ equations }) => equations);
}

/** Places that an equation ties together: two by an arc, a stretch of neighbours by a bracket, others by a chain of arcs. */
function tiesOf(
  equations: readonly EquationData[],
  pile: string,
  size: number,
): { arcs: Arc[]; blocks: Arc[] } {
  const arcs = new Map<string, Arc>();
  const blocks = new Map<string, Arc>();
  const key = ({ from, to }: Arc) => `${from} ${to}`;
  for (const { terms } of equations) {
    const places = [
      ...new Set(terms.filter((term) => term.pile === pile).map(({ place }) => place - 1)),
    ].sort((a, b) => a - b);
    const [first = 0] = places;
    const last = places.at(-1) ?? first;
    // Of all cards together a picture has nothing to tell.
    if (places.length === size && size > 2) continue;
    if (places.length > 2 && last - first === places.length - 1) {
      const block = { from: first, to: last };
      blocks.set(key(block), block);
      continue;
    }
    for (let i = 1; i < places.length; i += 1) {
      const arc = { from: places[i - 1] ?? 0, to: places[i] ?? 0 };
      arcs.set(key(arc), arc);
    }
  }
  // Brackets that overlap could not be told apart; those that lie side by side can.
  const apart = [...blocks.values()].sort((a, b) => a.from - b.from);
  const overlap = apart.some((block, i) => i > 0 && block.from <= (apart[i - 1]?.to ?? -1));
  return { arcs: [...arcs.values()], blocks: overlap ? [] : apart };
}

/** What an equation of one term alone says of its place; undefined where none does. */
function knownAt(equations: readonly EquationData[], pile: string, place: number): boolean | undefined {
  for (const { terms, total, p } of equations) {
    const [term] = terms;
    if (terms.length !== 1 || term?.pile !== pile || term.place !== place) continue;
    const value = ((total % p) + p) % p;
    if (value === 0) return false;
    if (value === ((term.coef % p) + p) % p) return true;
  }
  return undefined;
}

function markBy(trait: string, { up, end, colour, marks }: CardData): PacketMark | undefined {
  const yes = (is: boolean): PacketMark => (is ? 'filled' : 'open');
  if (/face.up/.test(trait)) return yes(up);
  if (/face.down/.test(trait)) return yes(!up);
  if (/\bends?\b/.test(trait)) return yes(end);
  if (/\bred\b/.test(trait) && colour !== null) return yes(colour === 'red');
  if (/\bblack\b/.test(trait) && colour !== null) return yes(colour === 'black');
  return marks.includes(trait) ? 'filled' : undefined;
}
