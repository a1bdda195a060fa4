import type { StageNext, TableData } from '@foregone/engine';

type Key = StageNext['ways'][number]['key'];

/** A card that was touched: its pile, and its place from the top, 1 first. */
export interface Touched {
  readonly pile: string;
  readonly place: number;
  readonly id: number;
}

/** More ways than this are not tried out one by one. */
const MOST_TRIED = 60;

/**
 * The way on that touching a card stands for: cut or count so far, take this pile, turn this card, drop from this side. Undefined where
 * it could stand for none or for several.
 *
 * @param after the table once a way is taken
 */
export function wayTouched(
  ways: StageNext['ways'],
  now: TableData,
  after: (key: Key) => TableData,
  { pile, place, id }: Touched,
): Key | undefined {
  const keys = ways.map(({ key }) => key);
  const named = [place, String(place), pile].find((key) => keys.includes(key));
  if (named !== undefined) return named;
  if (keys.length > MOST_TRIED) return undefined;
  const tried = keys.map((key) => ({ key, done: changes(now, after(key)) }));
  const turning = tried.filter(({ done }) => done.turned.has(id));
  const least = Math.min(...turning.map(({ done }) => done.turned.size));
  const turns = turning.filter(({ done }) => done.turned.size === least);
  if (turns.length > 0) return onlyOne(turns);
  return onlyOne(tried.filter(({ done }) => done.left.has(pile)));
}

function onlyOne(found: readonly { readonly key: Key }[]): Key | undefined {
  return found.length === 1 ? found[0]?.key : undefined;
}

/** Cards that are turned over between two tables, and piles that cards go from. */
function changes(before: TableData, after: TableData): { turned: Set<number>; left: Set<string> } {
  const is = new Map(
    after.piles.flatMap(({ name, cards }) => cards.map((card) => [card.id, { name, up: card.up }] as const)),
  );
  const turned = new Set<number>();
  const left = new Set<string>();
  for (const { name, cards } of before.piles)
    for (const card of cards) {
      const then = is.get(card.id);
      if (then !== undefined && then.up !== card.up) turned.add(card.id);
      if (then?.name !== name) left.add(name);
    }
  return { turned, left };
}
