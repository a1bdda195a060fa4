import type { Card } from '../../src/cards/card.ts';
import type { Table } from '../naive/table.ts';
import type { Names } from '../../src/phrases/values.ts';

/** What a generated sentence may speak of. */
export interface Scope {
  /** Piles that have cards on the plain path by now, with how many. */
  readonly there: readonly string[];
  readonly sizes: Readonly<Record<string, number>>;
  /** Piles that may have some. */
  readonly piles: readonly string[];
  /** Numbers that have a value whatever was chosen. */
  readonly numbers: readonly string[];
  readonly marks: readonly string[];
  /** Inside "for each pile": how the pile whose turn it is is called. */
  readonly that: { readonly stem: string; readonly counter: string } | null;
  readonly cards: readonly Card[];
}

/** The piles of a table on the plain path. */
export function seenIn(table: Table): Pick<Scope, 'there' | 'sizes'> {
  const sizes = Object.fromEntries(table.names.map((name, i) => [name, table.piles[i].length]));
  return { there: table.names, sizes };
}

export function brought(scope: Scope, more: Partial<Pick<Names, 'piles' | 'numbers' | 'marks'>>): Scope {
  const join = (old: readonly string[], add: readonly string[] = []): string[] => [
    ...new Set([...old, ...add]),
  ];
  return {
    ...scope,
    // Some moves may bring a hundred piles; with few cards only the first come to be.
    piles: join(
      scope.piles,
      more.piles?.filter((pile) => !/ ([89]|\d{2,})$/.test(pile)),
    ),
    numbers: join(scope.numbers, more.numbers),
    marks: join(scope.marks, more.marks),
  };
}

/** After one of several ways was gone: numbers only if each way named them. */
export function merged(before: Scope, ways: readonly Scope[]): Scope {
  const [first, ...others] = ways;
  if (first === undefined) return before;
  return {
    ...brought(brought(before, { piles: ways.flatMap((w) => w.piles) }), {
      marks: ways.flatMap((w) => w.marks),
    }),
    numbers: first.numbers.filter((n) => others.every((way) => way.numbers.includes(n))),
  };
}
