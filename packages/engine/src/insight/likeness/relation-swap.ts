import type { AttributeValue, Card } from '../../cards/card.ts';
import type { Routine } from '../../routine/routine.ts';

/** What two attributes have to do with each other: the values of one stand for those of the other, in this order. */
export interface Swap {
  readonly from: string;
  readonly to: string;
  readonly values: ReadonlyMap<AttributeValue, AttributeValue>;
}

// Blanks that say in what cards are alike. Numbers to be added up are no relation.
const RELATION: ReadonlySet<string> = new Set(['relation', 'relations']);

function isAttributeTest(value: object): value is { attribute: string; values: readonly AttributeValue[] } {
  return 'test' in value && value.test === 'attribute';
}

/** Attributes that the sentences of the ending speak of, in the order in which they do. */
export function attributesSpokenOf({ endings }: Pick<Routine, 'endings'>): string[] {
  const found = new Set<string>();
  walk(
    endings.map(({ sentence }) => sentence),
    (attribute) => void found.add(attribute),
  );
  return [...found];
}

function walk(value: unknown, tell: (attribute: string) => void): void {
  if (Array.isArray(value)) value.forEach((one) => walk(one, tell));
  else if (typeof value === 'object' && value !== null) {
    if (isAttributeTest(value)) tell(value.attribute);
    for (const [key, one] of Object.entries(value))
      if (typeof one === 'string' && RELATION.has(key)) tell(one);
      else walk(one, tell);
  }
}

/** Every attribute of the cards at hand that could stand in for another: with as many values, on every card, sorting them otherwise. */
export function swapsAmong(spoken: readonly string[], hand: readonly Card[], own: readonly Card[]): Swap[] {
  const names = [...new Set(hand.flatMap((card) => Object.keys(card.attributes)))];
  return spoken.flatMap((from) => {
    const before = valuesIn(from, own);
    if (before === null) return [];
    return names.flatMap((to): Swap[] => {
      const after = valuesIn(to, hand);
      if (to === from || after === null || after.length !== before.length) return [];
      if (isSameSorting(from, to, hand)) return [];
      return [{ from, to, values: new Map(before.map((value, i) => [value, after[i]])) }];
    });
  });
}

/** The values of an attribute in order of appearance; null where a card lacks it or all are alike. */
function valuesIn(attribute: string, cards: readonly Card[]): AttributeValue[] | null {
  const values = cards.map((card) => card.attributes[attribute]);
  const distinct = [...new Set(values)].filter((value) => value !== undefined);
  return distinct.length < 2 || values.some((value) => value === undefined) ? null : distinct;
}

/** Whether two attributes sort the cards alike, as value and rank do. */
function isSameSorting(from: string, to: string, cards: readonly Card[]): boolean {
  const pairs = new Set(cards.map(({ attributes }) => `${attributes[from]} ${attributes[to]}`));
  const values = new Set(cards.map(({ attributes }) => attributes[to]));
  return cards.every(({ attributes }) => attributes[from] !== undefined) && pairs.size === values.size;
}

/** The same working and ending with another attribute in place of one; the cards are still the old ones. */
export function swapped(routine: Routine, swap: Swap): Routine {
  return {
    ...routine,
    steps: mapped(routine.steps, swap),
    endings: routine.endings.map((ending) => ({ ...ending, sentence: mapped(ending.sentence, swap) })),
  };
}

/** A plain value with every mention of the attribute replaced. What is mapped keeps its shape, so it keeps its type. */
function mapped<T>(value: T, swap: Swap): T {
  return replaced(value, swap) as T;
}

function replaced(value: unknown, swap: Swap): unknown {
  if (Array.isArray(value)) return value.map((one) => replaced(one, swap));
  if (typeof value !== 'object' || value === null) return value;
  const { from, to, values } = swap;
  if (isAttributeTest(value) && value.attribute === from)
    return { ...value, attribute: to, values: value.values.map((each) => values.get(each) ?? each) };
  return Object.fromEntries(
    Object.entries(value).map(([key, one]): [string, unknown] =>
      one === from && RELATION.has(key) ? [key, to] : [key, replaced(one, swap)],
    ),
  );
}
