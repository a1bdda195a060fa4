import type { EquationData, MomentData, StatementData, TableData } from '@foregone/engine';
import type { Arc, PacketMark, PacketPicture } from '../ui/packet-shape.ts';

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
    return [{ pile, picture: { marks, have: arcsOf(have, pile), need: arcsOf(need, pile) } }];
  });
}

function equationsIn(statements: readonly StatementData[]): EquationData[] {
  return statements.flatMap(({ equations }) => equations);
}

/** Places that an equation ties together: two by an arc, more by a chain of them. */
function arcsOf(equations: readonly EquationData[], pile: string): Arc[] {
  const arcs = new Map<string, Arc>();
  for (const { terms } of equations) {
    const places = [...new Set(terms.filter((term) => term.pile === pile).map(({ place }) => place))].sort(
      (a, b) => a - b,
    );
    for (let i = 1; i < places.length; i += 1) {
      const arc = { from: (places[i - 1] ?? 1) - 1, to: (places[i] ?? 1) - 1 };
      arcs.set(`${arc.from} ${arc.to}`, arc);
    }
  }
  return [...arcs.values()];
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
