import type { Layout } from '../pictures/layout.ts';
import { isHopeless, plainest, type Equation } from './equation.ts';
import { groupEquations } from './group-equations.ts';
import { grouped } from './grouped.ts';
import { alikeIn } from './likeness.ts';
import type { Naming } from './naming.ts';
import { apart, sayPairs, sayPlaces } from './places.ts';
import { sayParity } from './say-equation.ts';
import { contradict, sparser } from '../base/sparse.ts';
import type { Statement } from './statement.ts';
import { nameTrait, type Unnamed } from './traits.ts';

interface Row {
  readonly weights: readonly (readonly [number, number])[];
  /** What the weighted sum is, for each member. */
  readonly totals: readonly number[];
}

/** Rows of one problem (dense, as `Moments` gives them) at a location with this layout, in words. */
export function statementsOf(
  rows: readonly (readonly number[])[],
  layout: Layout,
  naming: Naming,
): Statement[] {
  const { problem } = naming;
  const { p, d, width, m, members } = problem;
  const counted = width - m;
  const asRow = (row: readonly number[]): Row => {
    const weights: [number, number][] = [];
    for (let i = 0; i < counted; i++) if (row[i] !== 0) weights.push([i, row[i]]);
    const totals = members.map(({ constants }, i) => {
      const sum = constants.reduce((all, constant, k) => all + constant * row[counted + k], 0);
      const turned = naming.turned[i] ? weights.length : 0;
      return (p - ((sum + turned) % p)) % p;
    });
    return { weights, totals };
  };
  const impossible = (): Statement => ({
    words: 'the impossible: however the cards lie, some choice spoils it',
    equations: rows.flatMap((row) => equationsOf(asRow(row), naming)),
  });
  const leftovers = contradict(rows, counted, p).map(asRow);
  if (leftovers.some(({ totals }) => totals.some((total) => total !== 0))) return [impossible()];
  const full = sparser(rows, counted, p)
    .map(asRow)
    .filter(({ weights }) => weights.length > 0);
  if (p !== 2 || d !== 1) {
    const equations = full.flatMap((row) => equationsOf(row, naming));
    return equations.some(isHopeless) ? [impossible()] : groupEquations(equations, layout);
  }
  const some = (n: number): Row[] => full.filter(({ weights }) => weights.length === n);
  return [
    ...fixed(some(1), layout, naming),
    ...likenesses(some(2), layout, naming),
    ...parities(
      full.filter(({ weights }) => weights.length > 2),
      layout,
      naming,
    ),
  ];
}

function equationsOf(row: Row, naming: Naming): Equation[] {
  const { p, d } = naming.problem;
  return row.totals.map((total, member) =>
    plainest(
      row.weights.map(([i, coef]) => ({
        slot: Math.floor(i / d),
        coef,
        trait: naming.traits[member][i % d],
      })),
      total,
      p,
    ),
  );
}

/** One card each: what it is by all members together. */
function fixed(rows: readonly Row[], layout: Layout, naming: Naming): Statement[] {
  return grouped(rows, ({ totals }) => totals.join()).map((group) => {
    const { totals } = group[0];
    const slots = group.map(({ weights }) => weights[0][0]);
    const together: Unnamed = {
      bits: naming.bits,
      of: (card, setting) =>
        naming.vectorOf(card, setting).every((value, i) => value === totals[i]) ? 1 : 0,
    };
    const trait = nameTrait(together, naming.cards);
    const words =
      slots.length === 1
        ? `the card at ${sayPlaces(slots, layout)} is ${trait.one}`
        : `the cards at ${sayPlaces(slots, layout)} are ${trait.are}`;
    return { words, equations: group.flatMap((row) => equationsOf(row, naming)) };
  });
}

/** Two cards each: cards that are alike in all members, or differ in some, taken together as far as they hang together. */
function likenesses(rows: readonly Row[], layout: Layout, naming: Naming): Statement[] {
  if (rows.length === 0) return [];
  const { said, opposite } = alikeIn(naming);
  const components = componentsOf(rows);
  const statements: Statement[] = [];
  const pairs = grouped(
    components.filter(({ offsets }) => offsets.size === 2),
    ({ rows: [row] }) => row.totals.join(),
  );
  for (const group of pairs) {
    const { totals } = group[0].rows[0];
    const slots = group.map(({ rows: [row] }): [number, number] => [row.weights[0][0], row.weights[1][0]]);
    slots.sort((a, b) => a[0] - b[0]);
    const how = totals.every((total) => total === 0) ? said : opposite(totals);
    statements.push({
      words: `the cards at ${sayPairs(slots, layout)} ${how}`,
      equations: group.flatMap((component) => component.rows.flatMap((row) => equationsOf(row, naming))),
    });
  }
  const larger = components
    .filter(({ offsets }) => offsets.size > 2)
    .map((component) => ({ component, sets: setsOf(component) }));
  const whole = larger.filter(({ sets }) => sets.length === 1);
  if (whole.length > 0) {
    const words = within(
      whole.map(({ sets: [{ slots }] }) => slots),
      said,
      layout,
    );
    statements.push({
      words,
      equations: whole.flatMap(({ component }) => component.rows.flatMap((row) => equationsOf(row, naming))),
    });
  }
  for (const { component, sets } of larger.filter((one) => one.sets.length > 1)) {
    const alike = sets.filter(({ slots }) => slots.length > 1);
    const parts = [
      within(
        alike.map(({ slots }) => slots),
        said,
        layout,
      ),
    ];
    const [first, ...others] = sets;
    // Vectors over the field of two elements: differing is adding up to 1.
    const between = others.map(({ offset, slots }) => {
      const totals = offset.map((value, i) => value ^ first.offset[i]);
      return `those at ${sayPairs([[first.slots[0], slots[0]]], layout)} ${opposite(totals)}`;
    });
    statements.push({
      words: [...parts, ...between].join('; '),
      equations: component.rows.flatMap((row) => equationsOf(row, naming)),
    });
  }
  return statements;
}

/** Sets of cards that are alike, each within itself. */
function within(sets: readonly (readonly number[])[], said: string, layout: Layout): string {
  const distance = apart(sets, layout);
  if (distance !== undefined) return `cards ${distance} places apart ${said}`;
  const places = sets.map((slots) => sayPlaces(slots, layout));
  if (places.length === 1) return `the cards at ${places[0]} ${said}`;
  return `the cards within each of these ${said}: ${places.join('; ')}`;
}

interface Alike {
  readonly offset: readonly number[];
  readonly slots: readonly number[];
}

/** Slots of a component with the same offset. */
function setsOf({ offsets }: Component): Alike[] {
  return grouped([...offsets], ([, offset]) => offset.join()).map((group) => ({
    offset: group[0][1],
    slots: group.map(([slot]) => slot),
  }));
}

interface Component {
  /** What must be added to a slot's vector to get that of the first slot. */
  readonly offsets: ReadonlyMap<number, readonly number[]>;
  readonly rows: readonly Row[];
}

function componentsOf(rows: readonly Row[]): Component[] {
  const at = new Map<number, { other: number; row: Row }[]>();
  for (const row of rows) {
    const [[a], [b]] = row.weights;
    for (const [from, other] of [
      [a, b],
      [b, a],
    ]) {
      const known = at.get(from);
      if (known === undefined) at.set(from, [{ other, row }]);
      else known.push({ other, row });
    }
  }
  const done = new Set<number>();
  const components: Component[] = [];
  for (const slot of [...at.keys()].sort((a, b) => a - b)) {
    if (done.has(slot)) continue;
    const offsets = new Map<number, readonly number[]>([[slot, rows[0].totals.map(() => 0)]]);
    const own = new Set<Row>();
    for (const [from, offset] of offsets)
      for (const { other, row } of at.get(from) ?? []) {
        own.add(row);
        if (!offsets.has(other))
          offsets.set(
            other,
            offset.map((value, i) => value ^ row.totals[i]),
          );
      }
    for (const [one] of offsets) done.add(one);
    components.push({ offsets: new Map([...offsets].sort(([a], [b]) => a - b)), rows: [...own] });
  }
  return components;
}

/** Three cards and more: how many of them are such, odd or even. */
function parities(rows: readonly Row[], layout: Layout, naming: Naming): Statement[] {
  return grouped(rows, ({ weights, totals }) => `${weights.length}|${totals.join()}`).map((group) => {
    const sets = group.map(({ weights }) => weights.map(([slot]) => slot)).sort((a, b) => a[0] - b[0]);
    return {
      words: sayParity(
        sets.map((slots) => sayPlaces(slots, layout)),
        sets[0].length,
        group[0].totals,
        naming,
      ),
      equations: group.flatMap((row) => equationsOf(row, naming)),
    };
  });
}
