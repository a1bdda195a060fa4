import type { Budget } from '../base/budget.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Formula } from '../claims/formula.ts';
import type { Edge, Graph } from '../routine/graph.ts';
import type { TableSlots } from '../routine/starts.ts';
import type { FamilyProof, MemberProof } from '../verdicts/certificate.ts';
import { spent } from './spent.ts';
import { combine, mod, power, settingUnder, valuesOf } from './functions.ts';

type Equation = Extract<Formula, { is: 'equal' }>;

/** A table at the location where the invariant takes over. */
export interface Arrival {
  readonly location: number;
  readonly table: TableSlots;
}

/**
 * Verifies that a family of equations is an inductive invariant of the part of the graph given: it holds on arrival, every edge
 * carries it, and it is written over columns that handling really treats as the certificate says.
 */
export function checkInvariant(
  graph: Graph,
  universe: readonly Card[],
  family: FamilyProof,
  locations: readonly number[],
  arrivals: readonly Arrival[],
  budget: Budget,
): Trouble | undefined {
  const { p, d, m } = family;
  const width = graph.cards * d + m;
  const rowsAt = new Map<number, number[][]>();
  for (const id of locations) {
    const sparse = family.locations[graph.locations[id].key] ?? [];
    const rows: number[][] = [];
    for (const entry of sparse) {
      spent(budget, 1 + (width >> 3));
      const row = new Array<number>(width).fill(0);
      for (let i = 0; i + 1 < entry.length; i += 2) {
        if (!(entry[i] >= 0 && entry[i] < width))
          return trouble('certificate-shape', { what: 'index of a row' });
        row[entry[i]] = mod(entry[i + 1], p);
      }
      rows.push(row);
    }
    rowsAt.set(id, rows);
  }
  const fault = checkColumns(graph, universe, family, locations, budget);
  if (fault !== undefined) return fault;
  for (const { location, table } of arrivals)
    for (const member of family.members) {
      const x = tableVector(graph, universe, family, member, table);
      for (const row of rowsAt.get(location) ?? [])
        if (
          mod(
            row.reduce((sum, value, i) => (sum + value * x[i]) % p, 0),
            p,
          ) !== 0
        )
          return trouble('certificate-start', { location: graph.locations[location].key });
    }
  for (const id of locations) {
    if (graph.locations[id].looks) continue;
    const rows = rowsAt.get(id) ?? [];
    // Work is told in the dozens of numbers that are looked at.
    const each = 1 + ((rows.length * width) >> 5);
    spent(budget, rows.length * each);
    const span = reducedRows(rows, p);
    for (const edge of graph.waysFrom(id).edges)
      for (const row of rowsAt.get(edge.to) ?? []) {
        spent(budget, each);
        if (!inSpan(pulledBack(graph, family, row, edge), span, p))
          return trouble('certificate-edge', { location: graph.locations[id].key, choice: String(edge.key) });
      }
  }
  return undefined;
}

/** The columns are functions on the cards there are, and every operation acts on them as written. */
function checkColumns(
  graph: Graph,
  universe: readonly Card[],
  family: FamilyProof,
  locations: readonly number[],
  budget: Budget,
): Trouble | undefined {
  const ops = new Set<number>();
  for (const id of locations)
    if (!graph.locations[id].looks)
      for (const edge of graph.waysFrom(id).edges) for (const op of edge.effect.ops ?? []) ops.add(op);
  for (const member of family.members) {
    if (
      member.columns.length !== family.d ||
      member.constants.length !== family.m ||
      member.constants[0] !== 1
    )
      return trouble('certificate-shape', { what: 'columns or constants of a member' });
    const settings = 1 << member.bits.length;
    if (member.columns.some((column) => column.length !== universe.length * settings))
      return trouble('certificate-shape', { what: 'length of a column' });
    const kinds = member.bits.map((bit) => graph.bits.indexOf(bit));
    for (const op of ops) {
      const map = underOp(graph, family, op);
      if (map === undefined) {
        if (touches(op, kinds)) return trouble('certificate-shape', { what: `operation ${op}` });
        continue;
      }
      spent(budget, universe.length * settings * family.d);
      for (let i = 0; i < universe.length * settings; i++) {
        const setting = i % settings;
        const after = i - setting + settingUnder(op, setting, kinds);
        for (let k = 0; k < family.d; k++) {
          const { columns, constant } = map[k];
          const told = columns.reduce((sum, c, j) => sum + c * member.columns[j][i], constant);
          if (mod(told, family.p) !== mod(member.columns[k][after], family.p))
            return trouble('certificate-columns', { operation: op });
        }
      }
    }
  }
  return undefined;
}

function touches(op: number, kinds: readonly number[]): boolean {
  return kinds.some((kind) => ((op >>> (2 * kind)) & 3) !== 0);
}

function familyMask(graph: Graph, family: FamilyProof): number {
  let mask = 0;
  for (const member of family.members)
    for (const bit of member.bits) mask |= 3 << (2 * graph.bits.indexOf(bit));
  return mask >>> 0;
}

/** The map of an operation; undefined for one that leaves all bits of the family alone. */
function underOp(graph: Graph, family: FamilyProof, op: number): FamilyProof['under'][string] | undefined {
  const masked = (op & familyMask(graph, family)) >>> 0;
  return masked === 0 ? undefined : family.under[String(masked)];
}

function tableVector(
  graph: Graph,
  universe: readonly Card[],
  family: FamilyProof,
  member: MemberProof,
  table: TableSlots,
): number[] {
  const settings = 1 << member.bits.length;
  const x: number[] = [];
  for (let slot = 0; slot < graph.cards; slot++) {
    let setting = 0;
    member.bits.forEach((bit, i) => (setting |= ((table.bits[slot] >>> graph.bits.indexOf(bit)) & 1) << i));
    const at = universe.indexOf(table.cards[slot]) * settings + setting;
    for (let k = 0; k < family.d; k++) x.push(member.columns[k][at]);
  }
  return [...x, ...member.constants];
}

function pulledBack(graph: Graph, family: FamilyProof, row: readonly number[], edge: Edge): number[] {
  const { p, d } = family;
  const fixed = graph.cards * d;
  const before = row.map((value, i) => (i >= fixed ? value : 0));
  for (let slot = 0; slot < graph.cards; slot++)
    for (let k = 0; k < d; k++) {
      const weight = row[slot * d + k];
      if (weight === 0) continue;
      const old = edge.effect.from[slot] * d;
      const map = underOp(graph, family, edge.effect.ops === null ? 0 : edge.effect.ops[slot]);
      if (map === undefined) before[old + k] = mod(before[old + k] + weight, p);
      else {
        map[k].columns.forEach((c, j) => (before[old + j] = mod(before[old + j] + weight * c, p)));
        before[fixed] = mod(before[fixed] + weight * map[k].constant, p);
      }
    }
  return before;
}

/** Rows brought to a form in which each begins with a 1 where the others have nothing before it. */
export function reducedRows(
  rows: readonly (readonly number[])[],
  p: number,
): { pivot: number; row: number[] }[] {
  const done: { pivot: number; row: number[] }[] = [];
  for (const row of rows) {
    const rest = reduce([...row], done, p);
    const pivot = rest.findIndex((value) => value !== 0);
    if (pivot < 0) continue;
    const scale = power(rest[pivot], p - 2, p);
    done.push({ pivot, row: rest.map((value) => (value * scale) % p) });
  }
  return done;
}

function reduce(vector: number[], rows: readonly { pivot: number; row: number[] }[], p: number): number[] {
  for (const { pivot, row } of rows) {
    const times = vector[pivot];
    if (times === 0) continue;
    for (let i = 0; i < vector.length; i++) vector[i] = mod(vector[i] - times * row[i], p);
  }
  return vector;
}

export function inSpan(
  vector: readonly number[],
  rows: readonly { pivot: number; row: number[] }[],
  p: number,
): boolean {
  return reduce([...vector], rows, p).every((value) => value === 0);
}

/** Whether the rows at an exit imply the sentence's formula there. */
export function impliesAtExit(
  graph: Graph,
  universe: readonly Card[],
  families: readonly FamilyProof[],
  exit: number,
  formula: Formula,
): boolean {
  if (formula.is === 'known') return formula.holds;
  if (formula.is === 'and')
    return formula.parts.every((part) => impliesAtExit(graph, universe, families, exit, part));
  if (formula.is !== 'equal') return false;
  return families.some(
    (family) =>
      fieldIsLargeEnough(formula, universe, family.p) &&
      family.members.some((member) => follows(graph, universe, family, member, exit, formula)),
  );
}

/** A field tells what whole numbers tell when no difference of the two sides can be a multiple of p other than 0. */
function fieldIsLargeEnough(equation: Equation, universe: readonly Card[], p: number): boolean {
  if (equation.mod !== undefined) return equation.mod === p;
  let [low, high] = [-equation.total, -equation.total];
  for (const { coef, measure } of equation.terms) {
    const all = universe.flatMap((card) =>
      Array.from({ length: 1 << measure.bits.length }, (_, s) =>
        measure.of(card, (bit) => (s >> measure.bits.indexOf(bit)) & 1),
      ),
    );
    const values = all.map((value) => coef * value);
    low += Math.min(...values);
    high += Math.max(...values);
  }
  return low > -p && high < p;
}

function follows(
  graph: Graph,
  universe: readonly Card[],
  family: FamilyProof,
  member: MemberProof,
  exit: number,
  equation: Equation,
): boolean {
  const { p, d, m } = family;
  const fixed = graph.cards * d;
  const target = new Array<number>(fixed + 1).fill(0);
  target[fixed] = mod(-equation.total, p);
  const known = new Map<string, ReturnType<typeof combine>>();
  for (const { slot, coef, measure } of equation.terms) {
    if (!known.has(measure.id)) {
      const possible = measure.bits.every((bit) => member.bits.includes(bit));
      known.set(
        measure.id,
        possible ? combine(valuesOf(measure, member.bits, universe, p), member, p) : null,
      );
    }
    const made = known.get(measure.id) ?? null;
    if (made === null) return false;
    made.columns.forEach((c, k) => (target[slot * d + k] = mod(target[slot * d + k] + coef * c, p)));
    target[fixed] = mod(target[fixed] + coef * made.constant, p);
  }
  const rows = (family.locations[graph.locations[exit].key] ?? []).map((entry) => {
    const row = new Array<number>(fixed + 1).fill(0);
    for (let i = 0; i + 1 < entry.length; i += 2) {
      if (entry[i] < fixed) row[entry[i]] = mod(entry[i + 1], p);
      else if (entry[i] < fixed + m)
        row[fixed] = mod(row[fixed] + entry[i + 1] * member.constants[entry[i] - fixed], p);
    }
    return row;
  });
  return inSpan(target, reducedRows(rows, p), p);
}
