/** A packet as plain data: what is known of each card, from the top, and which places are tied to which. */
export interface PacketPicture {
  readonly marks: readonly PacketMark[];
  /** What is certainly true: drawn in ink, above. */
  readonly have: readonly Arc[];
  /** What the ending needs: drawn in pencil, below. */
  readonly need: readonly Arc[];
  /** Drawn as a ring, for structures that a cut leaves alone. */
  readonly ring?: boolean;
  /** Stretches of cards that belong together, both ends included. */
  readonly blocks?: readonly Arc[];
}

/** Filled and open tell the two classes in question apart; `unknown` where nothing is certain. */
export type PacketMark = 'filled' | 'open' | 'unknown';

/** Two places of the packet, counted from 0 at the top. */
export interface Arc {
  readonly from: number;
  readonly to: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface PacketShape {
  readonly width: number;
  readonly height: number;
  readonly radius: number;
  readonly marks: readonly Point[];
  readonly have: readonly string[];
  readonly need: readonly string[];
  readonly brackets: readonly string[];
}

const WIDTH = 260;
const EDGE = 6;
const WIDEST_STEP = 20;
const DEEPEST = 26;
/** Above this many arcs on one side only some are drawn, so that the rest can be seen. */
const MOST_ARCS = 24;

/** Where everything of a packet's picture goes, in units of which the picture is 260 wide. */
export function shapeOf(picture: PacketPicture): PacketShape {
  const have = thinned(picture.have);
  const need = thinned(picture.need);
  return picture.ring === true && picture.marks.length > 2
    ? ringShape(picture, have, need)
    : rowShape(picture, have, need);
}

/** Every k-th arc, with the smallest k that leaves few enough; the first and the last always stay. */
export function thinned(arcs: readonly Arc[]): readonly Arc[] {
  const step = Math.ceil(arcs.length / MOST_ARCS);
  return arcs.filter((_, index) => index % step === 0 || index === arcs.length - 1);
}

function rowShape(picture: PacketPicture, have: readonly Arc[], need: readonly Arc[]): PacketShape {
  const count = picture.marks.length;
  const step = Math.min(WIDEST_STEP, (WIDTH - 2 * EDGE) / Math.max(1, count - 1));
  const radius = Math.min(4.2, step * 0.4);
  const widest = Math.max(1, count - 1);
  const depth = ({ from, to }: Arc) => 8 + (DEEPEST - 8) * (Math.abs(to - from) / widest);
  const above = Math.max(0, ...have.map(depth));
  const below = Math.max(0, ...need.map(depth));
  const y = above + radius + 4;
  const at = (place: number) => EDGE + place * step;
  const gap = radius + 2;
  // A cubic reaches three quarters of the way to its handles.
  const bow = ({ from, to }: Arc, start: number, reach: number) =>
    `M${round(at(from))} ${round(start)}C${round(at(from))} ${round(start + reach)} ${round(at(to))} ${round(start + reach)} ${round(at(to))} ${round(start)}`;
  const blocks = picture.blocks ?? [];
  const bracketY = y + gap + below + 3;
  return {
    width: WIDTH,
    height: round(bracketY + (blocks.length > 0 ? 8 : 0)),
    radius: round(radius),
    marks: picture.marks.map((_, place) => ({ x: round(at(place)), y: round(y) })),
    have: have.map((arc) => bow(arc, y - gap, -depth(arc) / 0.75)),
    need: need.map((arc) => bow(arc, y + gap, depth(arc) / 0.75)),
    brackets: blocks.map(
      ({ from, to }) => `M${round(at(from) - radius)} ${round(bracketY)}v4H${round(at(to) + radius)}v-4`,
    ),
  };
}

function ringShape(picture: PacketPicture, have: readonly Arc[], need: readonly Arc[]): PacketShape {
  const count = picture.marks.length;
  const ring = 62;
  const centre: Point = { x: WIDTH / 2, y: ring + 20 };
  const radius = Math.min(4.2, ((Math.PI * ring) / count) * 0.8);
  const on = (place: number, distance: number): Point => {
    const angle = (2 * Math.PI * place) / count - Math.PI / 2;
    return {
      x: round(centre.x + distance * Math.cos(angle)),
      y: round(centre.y + distance * Math.sin(angle)),
    };
  };
  // Inside the ring chords bend towards the centre; outside they bow away from it between neighbours.
  const chord = ({ from, to }: Arc, distance: number, handle: number) => {
    const [a, b, c, d] = [on(from, distance), on(from, handle), on(to, handle), on(to, distance)];
    return `M${a.x} ${a.y}C${b.x} ${b.y} ${c.x} ${c.y} ${d.x} ${d.y}`;
  };
  const gap = radius + 2;
  return {
    width: WIDTH,
    height: 2 * centre.y,
    radius: round(radius),
    marks: picture.marks.map((_, place) => on(place, ring)),
    have: have.map((arc) => chord(arc, ring + gap, ring + gap + 12)),
    need: need.map((arc) => chord(arc, ring - gap, ring * 0.35)),
    brackets: (picture.blocks ?? []).map(({ from, to }) => {
      const [a, b] = [on(from - 0.3, ring + 16), on(to + 0.3, ring + 16)];
      const large = to - from + 0.6 > count / 2 ? 1 : 0;
      return `M${a.x} ${a.y}A${ring + 16} ${ring + 16} 0 ${large} 1 ${b.x} ${b.y}`;
    }),
  };
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
