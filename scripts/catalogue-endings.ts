import type { Heading } from './catalogue.ts';

/** A kind of prediction, carried by these forms of ending in a note that has a prediction. */
export interface Prediction extends Heading {
  readonly endings: readonly string[];
}

export const ENDINGS: readonly Heading[] = [
  { key: 'C1', title: 'your card is the top, the last, the one left' },
  { key: 'C2', title: 'it is the only card the other way' },
  { key: 'C3', title: 'all face one way, or all but some' },
  { key: 'C4', title: 'exactly so many' },
  { key: 'C5', title: 'as many here as there' },
  { key: 'C6', title: 'so many more' },
  { key: 'C7', title: 'the two match' },
  { key: 'C8', title: 'one of each in every pair, four, hand' },
  { key: 'C9', title: 'the colours have separated' },
  { key: 'C10', title: 'each pile topped by one' },
  { key: 'C11', title: 'in order, alternating, or as at the start' },
  { key: 'C12', title: 'they add up' },
  { key: 'C13', title: 'the value tells the place or the number' },
  { key: 'C14', title: 'the card that was named is here' },
  { key: 'C15', title: 'one of these is it' },
  { key: 'C16', title: 'the last ones left match' },
  { key: 'C17', title: 'the better hand' },
  { key: 'C18', title: 'next to, between, so many from the key' },
  { key: 'C19', title: 'no two neighbours alike' },
  { key: 'C20', title: 'this heap is even, that odd' },
];

export const PREDICTIONS: readonly Prediction[] = [
  { key: 'exact card', title: 'the very card', endings: ['place-is', 'card-is', 'only-card'] },
  { key: 'value', title: 'its value only', endings: ['place-is', 'places-are', 'value-at'] },
  { key: 'colour', title: 'its colour only', endings: ['place-is', 'all-are', 'all-but-are'] },
  { key: 'set', title: 'which cards', endings: ['exactly-those', 'all-in', 'two-ways', 'all-except'] },
  { key: 'count', title: 'how many', endings: ['count'] },
  { key: 'position', title: 'at which place', endings: ['card-is', 'place-is', 'value-place'] },
  { key: 'relation', title: 'what agrees', endings: ['agree', 'differ', 'faces-tell', 'one-of-each'] },
  { key: 'between', title: 'between two cards', endings: ['between', 'next-to', 'distance'] },
  { key: 'as many as', title: 'as many as', endings: ['as-many', 'same-number', 'difference'] },
  {
    key: 'only one',
    title: 'the only one which',
    endings: ['only-other-way', 'only-card', 'all-but', 'all-but-are'],
  },
  { key: 'sum', title: 'what they add up to', endings: ['total-is', 'group-total', 'same-total'] },
  { key: 'order', title: 'a whole order', endings: ['reads', 'starting-order', 'runs', 'sorted', 'steps'] },
];
