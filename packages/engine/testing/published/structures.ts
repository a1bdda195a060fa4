/**
 * Structures of a packet as predicates, each with every start that has it: a card is only its class (or value), its face
 * and its end. Definitions S1 to S25 as usual in the trade, written as equations.
 */
export interface Laid {
  /** Class, value or mark of the card. */
  readonly x: number;
  readonly up: number;
  readonly end: number;
}

export interface Structure {
  readonly name: string;
  /** Every packet of n cards with the structure; up to renaming where only "same" and "different" matter. */
  readonly starts: (n: number) => readonly (readonly Laid[])[];
  /** Whether a packet has it; `start` for structures that are kept only as they were. */
  readonly has: (packet: readonly Laid[], start: readonly Laid[]) => boolean;
}

/** Every list of n digits below k. */
export function words(n: number, k: number): number[][] {
  let all: number[][] = [[]];
  for (let i = 0; i < n; i++) all = all.flatMap((word) => Array.from({ length: k }, (_, d) => [...word, d]));
  return all;
}

export function orders<T>(list: readonly T[]): T[][] {
  if (list.length === 0) return [[]];
  return list.flatMap((first, i) => orders(list.filter((_, k) => k !== i)).map((rest) => [first, ...rest]));
}

/** All face down, ends alike. */
function faceDown(classes: readonly number[]): Laid[] {
  return classes.map((x) => ({ x, up: 0, end: 0 }));
}

const mod = (a: number, n: number): number => ((a % n) + n) % n;

/** Two classes, equal numbers or not, of which `related` says which patterns have the structure. */
function ofClasses(name: string, related: (x: readonly number[]) => boolean): Structure {
  return {
    name,
    starts: (n) => words(n, 2).filter(related).map(faceDown),
    has: (packet) => related(packet.map(({ x }) => x)),
  };
}

/** Mates are told apart from all other cards: one start up to renaming for each way to pair the places. */
function ofMates(name: string, pairings: (n: number) => readonly ((p: number) => number)[]): Structure {
  const paired = (x: readonly number[], mate: (p: number) => number): boolean =>
    x.every((card, i) => mate(i + 1) !== i + 1 && x[mate(i + 1) - 1] === card);
  return {
    name,
    starts: (n) =>
      pairings(n).map((mate) => faceDown(Array.from({ length: n }, (_, i) => Math.min(i + 1, mate(i + 1))))),
    has: (packet) =>
      pairings(packet.length).some((mate) =>
        paired(
          packet.map(({ x }) => x),
          mate,
        ),
      ),
  };
}

/** Something of every card and its place, modulo 2, is the same all through; every class and facing that makes it so. */
function ofParity(name: string, value: (card: Laid, place: number) => number): Structure {
  const same = (packet: readonly Laid[]): boolean => {
    const first = value(packet[0], 1) & 1;
    // A plain loop: this is asked for half a million packets.
    for (let i = 1; i < packet.length; i++) if ((value(packet[i], i + 1) & 1) !== first) return false;
    return true;
  };
  return {
    name,
    starts: (n) =>
      words(n, 2).flatMap((x) =>
        words(n, 2)
          .map((f) => x.map((one, i) => ({ x: one, up: f[i], end: 0 })))
          .filter(same),
      ),
    has: same,
  };
}

const constant = (list: readonly number[]): boolean => list.every((v) => v === list[0]);
const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

/** Faces only: the class plays no part. */
function ofFacesAlone(
  name: string,
  starts: (f: readonly number[]) => boolean,
  has: (f: readonly number[], start: readonly number[]) => boolean,
): Structure {
  return {
    name,
    starts: (n) =>
      words(n, 2)
        .filter(starts)
        .map((f) => f.map((up) => ({ x: 0, up, end: 0 }))),
    has: (packet, start) =>
      has(
        packet.map(({ up }) => up),
        start.map(({ up }) => up),
      ),
  };
}

export const alternating = ofClasses('S1 alternating', (x) => x.every((v, i) => i === 0 || v !== x[i - 1]));

export const mirroredOpposites = ofClasses('S2 mirrored opposites', (x) =>
  x.every((v, i) => v !== x[x.length - 1 - i]),
);

export const mirroredMates = ofMates('S2 mirrored mates', (n) => [(p) => n + 1 - p]);

/** The sum of the places of mates is the same odd number modulo n; with an even one two cards would be their own mates. */
export const cyclicMirror = ofMates('S3 cyclic mirror', (n) =>
  Array.from({ length: n / 2 }, (_, i) => 2 * i + 1).map((s) => (p: number) => mod(s - p - 1, n) + 1),
);

export const halfOffset = ofMates('S4 half-offset', (n) => [(p) => mod(p - 1 + n / 2, n) + 1]);

/** Opposites half the packet apart. */
export const halfOffsetOpposites = ofClasses('S4 half-offset opposites', (x) =>
  x.every((v, i) => v !== x[(i + x.length / 2) % x.length]),
);

export const adjacentMates = ofMates('S5 adjacent mates', () => [(p) => (p % 2 === 1 ? p + 1 : p - 1)]);

export const oppositesInPairs = ofClasses('S5 opposites in pairs', (x) =>
  x.every((v, i) => v !== x[i % 2 === 0 ? i + 1 : i - 1]),
);

/** f + x + p the same for all. */
export const faceClassParity = ofParity('S6 face-class parity', ({ up, x }, p) => up + x + p);

/** f + x the same for all. */
export const classByFace = ofParity('S7 class shown by face', ({ up, x }) => up + x);

/** Each block of k from the top shows k classes once each. */
export function blockForm(k: number): Structure {
  const blocks = (x: readonly number[]): boolean =>
    x.every((_, i) => i % k !== 0 || new Set(x.slice(i, i + k)).size === k);
  return {
    name: `S8 block form, k=${k}`,
    starts: (n) => {
      let all: number[][] = [[]];
      const one = orders(Array.from({ length: k }, (_, i) => i));
      for (let i = 0; i < n / k; i++) all = all.flatMap((x) => one.map((block) => [...x, ...block]));
      return all.map(faceDown);
    },
    has: (packet) => blocks(packet.map(({ x }) => x)),
  };
}

/** Every class again after k places, and k classes. */
export function exactPeriod(k: number): Structure {
  return {
    name: `S8 exact period ${k}`,
    starts: (n) => [faceDown(Array.from({ length: n }, (_, i) => i % k))],
    has: (packet) =>
      new Set(packet.slice(0, k).map(({ x }) => x)).size === k &&
      packet.every(({ x }, i) => i < k || x === packet[i - k].x),
  };
}

/** Equal numbers face up at odd and at even places. */
export const oddAsEven = ofFacesAlone(
  'S10 odd = even face-ups',
  (f) => balance(f) === 0,
  (f) => balance(f) === 0,
);

function balance(f: readonly number[]): number {
  return sum(f.map((up, i) => (i % 2 === 0 ? up : -up)));
}

export const faceUpCount = ofFacesAlone(
  'face-up count (not n/2)',
  (f) => 2 * sum(f) !== f.length,
  (f, start) => sum(f) === sum(start),
);

/** One card is followed; its place stays odd or stays even. */
export const placeParity: Structure = {
  name: 'S11 parity of a place',
  starts: (n) =>
    Array.from({ length: n }, (_, p) => Array.from({ length: n }, (_c, i) => (i === p ? 1 : 0))).map(
      faceDown,
    ),
  has: (packet, start) => placeOf(packet, 1) % 2 === placeOf(start, 1) % 2,
};

function placeOf(packet: readonly Laid[], x: number): number {
  return packet.findIndex((card) => card.x === x);
}

/** From the key (class 1) to the card (class 2) round the packet: the same distance, which is not half of it. */
export const keyDistance: Structure = {
  name: 'S12 key distance',
  starts: (n) =>
    words(2, n)
      .filter(([key, card]) => key !== card && 2 * mod(card - key, n) !== n)
      .map(([key, card]) => Array.from({ length: n }, (_, i) => (i === key ? 1 : i === card ? 2 : 0)))
      .map(faceDown),
  has: (packet, start) =>
    mod(placeOf(packet, 2) - placeOf(packet, 1) - placeOf(start, 2) + placeOf(start, 1), packet.length) === 0,
};

/** Values rise by the same step all round, modulo n. */
export const cyclicStack: Structure = {
  name: 'S13 cyclic stack',
  starts: (n) =>
    words(2, n)
      .filter(([, d]) => gcd(d, n) === 1)
      .map(([from, d]) => faceDown(Array.from({ length: n }, (_, i) => mod(from + i * d, n)))),
  has: (packet) => stepOf(packet) !== null,
};

/** The common step of a cyclic stack, or null. */
export function stepOf(packet: readonly Laid[]): number | null {
  const n = packet.length;
  const steps = packet.map(({ x }, i) => mod(packet[(i + 1) % n].x - x, n));
  return constant(steps) ? steps[0] : null;
}

export function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

/** One card lies the other way round than all others, and it stays that card. */
export const oneEndDiffers: Structure = {
  name: 'S25 one end differs',
  starts: (n) =>
    Array.from({ length: n }, (_, p) =>
      Array.from({ length: n }, (_c, i) => ({ x: i, up: 0, end: i === p ? 1 : 0 })),
    ),
  has: (packet, start) => {
    const odd = (list: readonly Laid[]): number[] => {
      const turned = list.filter(({ end }) => end === 1);
      const rest = list.filter(({ end }) => end === 0);
      return (turned.length === 1 ? turned : rest).map(({ x }) => x);
    };
    return odd(packet).length === 1 && odd(packet)[0] === odd(start)[0];
  },
};
