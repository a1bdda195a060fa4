import type { Pattern } from './form.ts';

/** A structure as a drawing of its pile: marks in a row (or a ring), arcs between related places, blocks taken together. */
export interface Picture {
  /** Cards in each pile that is drawn. */
  readonly piles: readonly { readonly name: string; readonly cards: number }[];
  readonly arcs: readonly {
    readonly from: number;
    readonly to: number;
    readonly relation: 'alike' | 'opposite' | 'sum' | 'step';
  }[];
  readonly blocks: readonly (readonly number[])[];
  readonly ring: boolean;
}

export function pictureOf(
  pattern: Pattern,
  piles: readonly { readonly name: string; readonly cards: number }[],
  ring: boolean,
): Picture {
  const base = { piles, ring, arcs: [], blocks: [] };
  const total = piles.reduce((sum, { cards }) => sum + cards, 0);
  switch (pattern.of) {
    case 'pairs':
      return {
        ...base,
        // Where two cards are followed, the places come twice.
        arcs: pattern.pairs.map(([from, to]) => ({ from, to: to % total, relation: pattern.relation })),
      };
    case 'same step':
      return { ...base, arcs: pattern.pairs.map(([from, to]) => ({ from, to, relation: 'step' as const })) };
    case 'same sum':
      return {
        ...base,
        arcs: pattern.groups.map(([from, to]) => ({ from, to, relation: 'sum' as const })),
      };
    case 'one of each':
      return { ...base, blocks: pattern.groups };
    case 'balanced':
      return {
        ...base,
        arcs: pattern.groups.flatMap(({ plus }) =>
          plus.length === 2 ? [{ from: plus[0], to: plus[1], relation: 'sum' as const }] : [],
        ),
      };
    case 'parity':
      return {
        ...base,
        arcs: pattern.groups.flatMap((group) =>
          group.slice(1).map((to) => ({ from: group[0], to, relation: 'step' as const })),
        ),
      };
    case 'total':
      return { ...base, blocks: [pattern.places] };
    case 'count':
      return { ...base, blocks: [pattern.plus, pattern.minus].filter((group) => group.length > 0) };
  }
}

const STEP = 14;
const MARK = 4;
const GAP = 20;

/**
 * The drawing as SVG text in plain data: no fonts, no script, colours by `currentColor`. Related cards that are alike have plain arcs,
 * opposite ones dashed. Numbers are rounded to one decimal.
 */
export function svgOf(picture: Picture): string {
  const xs: number[] = [];
  let x = STEP / 2;
  for (const { cards } of picture.piles) {
    for (let i = 0; i < cards; i++) {
      xs.push(x);
      x += STEP;
    }
    x += GAP;
  }
  const width = Math.max(STEP, x - GAP + STEP / 2 - STEP / 2);
  const spans = picture.arcs.map(({ from, to }) => Math.abs(xs[to] - xs[from]));
  const height = Math.min(MOST_HIGH, Math.max(0, ...spans) / 2);
  const base = height + 2;
  const most = Math.max(1, ...spans);
  const arcs = picture.arcs.map(({ from, to, relation }) => {
    const [a, b] = [xs[Math.min(from, to)], xs[Math.max(from, to)]];
    const tall = height * ((b - a) / most) * (4 / 3);
    const dash = relation === 'opposite' ? ' stroke-dasharray="3 2"' : '';
    return `<path d="M${round(a)} ${round(base)}C${round(a)} ${round(base - tall)} ${round(b)} ${round(base - tall)} ${round(b)} ${round(base)}" fill="none" stroke="currentColor" stroke-width="0.8"${dash}/>`;
  });
  const marks = xs.map(
    (at) =>
      `<rect x="${round(at - MARK / 2)}" y="${round(base + 1)}" width="${MARK}" height="${MARK * 2}" fill="currentColor"/>`,
  );
  const under = base + 2 * MARK + 3;
  const blocks = picture.blocks
    .flatMap((places) => runsOf(places))
    .map(
      ([from, to]) =>
        `<path d="M${round(xs[from] - MARK)} ${round(under)}v3H${round(xs[to] + MARK)}v-3" fill="none" stroke="currentColor" stroke-width="0.8"/>`,
    );
  const ring = picture.ring
    ? `<path d="M${round(xs[0] - MARK)} ${round(under + 5)}H${round((xs.at(-1) ?? 0) + MARK)}" fill="none" stroke="currentColor" stroke-width="0.8" stroke-dasharray="1 3"/>`
    : '';
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${round(width)} ${round(under + 7)}">${arcs.join('')}${marks.join('')}${blocks.join('')}${ring}</svg>`;
}

const MOST_HIGH = 60;

function round(n: number): string {
  return String(Math.round(n * 10) / 10);
}

/** Places that follow one another, as first and last. */
function runsOf(places: readonly number[]): (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const place of [...places].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === place - 1) last[1] = place;
    else runs.push([place, place]);
  }
  return runs;
}
