import type { NoteRecord } from '../storage/records.ts';
import { sayVerdict } from '../ui/verdict.tsx';

/** What notes on the shelf can be told apart by, besides their words. */
export const FACETS = ['verdict', 'cards', 'minutes', 'moves', 'structures'] as const;
export type Facet = (typeof FACETS)[number];

export const FACET_WORDS: Readonly<Record<Facet, string>> = {
  verdict: 'Verdict',
  cards: 'Cards',
  minutes: 'Minutes',
  moves: 'Moves',
  structures: 'Structures',
};

/** The chosen values of each facet: one of them must fit, in every facet that has any. */
export type Filter = { readonly [Name in Facet]: ReadonlySet<string> };

export const NO_FILTER: Filter = {
  verdict: new Set(),
  cards: new Set(),
  minutes: new Set(),
  moves: new Set(),
  structures: new Set(),
};

export interface FacetValue {
  readonly value: string;
  readonly words: string;
  /** How many notes would be shown with this value alone in its facet. */
  readonly count: number;
}

interface Span {
  readonly upTo: number;
  readonly words: string;
}

const CARDS: readonly Span[] = [
  { upTo: 8, words: 'up to 8' },
  { upTo: 16, words: '9 to 16' },
  { upTo: 32, words: '17 to 32' },
  { upTo: 51, words: '33 to 51' },
  { upTo: 52, words: 'full pack' },
  { upTo: Infinity, words: 'more than 52' },
];

const MINUTES: readonly Span[] = [
  { upTo: 2, words: 'up to 2' },
  { upTo: 5, words: '3 to 5' },
  { upTo: 10, words: '6 to 10' },
  { upTo: Infinity, words: 'more than 10' },
];

/** The values a note has in a facet; none while the engine has not read it. */
export function valuesOf({ summary }: Pick<NoteRecord, 'summary'>, facet: Facet): readonly string[] {
  if (summary === null) return [];
  switch (facet) {
    case 'verdict':
      return [summary.verdict];
    case 'cards':
      return spanOf(CARDS, summary.cards);
    case 'minutes':
      return spanOf(MINUTES, summary.minutes);
    case 'moves':
    case 'structures':
      return summary[facet];
  }
}

export function passes(note: Pick<NoteRecord, 'summary'>, filter: Filter, except?: Facet): boolean {
  return FACETS.every((facet) => {
    const chosen = filter[facet];
    return facet === except || chosen.size === 0 || valuesOf(note, facet).some((value) => chosen.has(value));
  });
}

/** The values of a facet among notes, with how many notes each would leave; chosen ones are listed even at 0. */
export function facetValues(
  notes: readonly NoteRecord[],
  filter: Filter,
  facet: Facet,
): readonly FacetValue[] {
  const counts = new Map<string, number>([...filter[facet]].map((value) => [value, 0]));
  for (const note of notes) {
    if (!passes(note, filter, facet)) continue;
    for (const value of new Set(valuesOf(note, facet))) counts.set(value, (counts.get(value) ?? 0) + 1);
  }
  return [...counts]
    .map(([value, count]) => ({ value, count, words: wordsOf(facet, value) }))
    .sort((a, b) => order(facet, a) - order(facet, b) || b.count - a.count || (a.words < b.words ? -1 : 1));
}

export function toggled(filter: Filter, facet: Facet, values: ReadonlySet<string>): Filter {
  return { ...filter, [facet]: values };
}

export function wordsOf(facet: Facet, value: string): string {
  const isVerdict = (word: string): word is Parameters<typeof sayVerdict>[0] =>
    VERDICT_ORDER.some((verdict) => verdict === word);
  return facet === 'verdict' && isVerdict(value) ? sayVerdict(value) : value;
}

const VERDICT_ORDER = ['proved', 'refuted', 'undecided', 'empty', 'not understood'] as const;

function order(facet: Facet, { value }: FacetValue): number {
  switch (facet) {
    case 'verdict':
      return VERDICT_ORDER.findIndex((verdict) => verdict === value);
    case 'cards':
      return CARDS.findIndex(({ words }) => words === value);
    case 'minutes':
      return MINUTES.findIndex(({ words }) => words === value);
    case 'moves':
    case 'structures':
      return 0;
  }
}

function spanOf(spans: readonly Span[], count: number | null): readonly string[] {
  const span = count === null ? undefined : spans.find(({ upTo }) => count <= upTo);
  return span === undefined ? [] : [span.words];
}
