import type { Trouble } from '../base/diagnostic.ts';
import { good, type Result } from '../base/result.ts';
import { compareSteps } from '../insight/likeness/same.ts';
import type { Limits } from '../proving/question.ts';
import type { MoveStep, Routine } from '../routine/routine.ts';
import { answered, type Asked, type Understood } from './asked.ts';
import { list } from './places.ts';
import { structuresReport, type StructureData } from './structures.ts';
import { counted, grouped } from './words.ts';

/** A structure that an ending needs at some step, whatever the piles are called. */
export interface NameData {
  readonly trade: string;
  readonly name: string;
  readonly relation: string;
  readonly words: string;
}

/** What is needed before one step. */
export interface ChainLink {
  readonly number: string;
  readonly sentence: string;
  readonly names: readonly NameData[];
}

export type SameVerdict =
  | 'the same'
  | 'the same in another relation'
  | 'one in the other'
  | 'some shared'
  | 'none shared'
  | 'not told';

export interface SameReport {
  readonly verdict: SameVerdict;
  readonly shared: readonly NameData[];
  /** What only the first needs, and only the second. */
  readonly only: readonly [readonly NameData[], readonly NameData[]];
  /** What each needs from step to step, as far as it changes. */
  readonly chains: readonly [readonly ChainLink[], readonly ChainLink[]];
  /** Whether their workings can bring about the same; empty where that was not compared. */
  readonly handling: string;
  readonly words: string;
}

/** Whether two routines rest on the same structures: those that their endings need on the way, by form and by relation. */
export function sameReport(one: Asked, other: Asked, limits: Limits): Result<SameReport, Trouble> {
  return answered(one, limits, (first) =>
    answered(other, limits, (second) => {
      const chains = [chainOf(first, limits), chainOf(second, limits)] as const;
      const found = chains.map((chain) => allIn(chain));
      const [a, b] = found;
      const verdict = verdictOf(a, b);
      const shared = [...a].filter(([key]) => b.has(key)).map(([, at]) => at[0]);
      const only = [
        [...a].filter(([key]) => !b.has(key)).map(([, at]) => at[0]),
        [...b].filter(([key]) => !a.has(key)).map(([, at]) => at[0]),
      ] as const;
      return good({
        verdict,
        shared: shared.map(nameData),
        only: [only[0].map(nameData), only[1].map(nameData)],
        chains: [linksOf(chains[0]), linksOf(chains[1])],
        handling: sayHandling(first.routine, second.routine),
        words: sayVerdict(verdict, a, b),
      });
    }),
  );
}

interface Link {
  readonly number: string;
  readonly sentence: string;
  readonly needed: readonly StructureData[];
}

/** What is needed at every step; steps that need the same as the one before are left out. */
function chainOf({ decision, text }: Understood, limits: Limits): Link[] {
  const links = structuresReport(decision, text, limits).map(({ number, sentence, moments }) => ({
    number,
    sentence,
    needed: [
      ...new Map(
        moments.flatMap(({ needed }) =>
          needed.flatMap((one) => (one?.structures ?? []).map((data) => [keyOf(data), data] as const)),
        ),
      ).values(),
    ],
  }));
  const key = ({ needed }: Link): string => needed.map(keyOf).sort().join(' ');
  return links.filter((link, i) => link.needed.length > 0 && (i === 0 || key(link) !== key(links[i - 1])));
}

function keyOf({ kind, relation }: StructureData): string {
  return `${kind} in ${relation}`;
}

/** Structures by form, each with the relations in which they are needed. */
function allIn(chain: readonly Link[]): Map<string, readonly StructureData[]> {
  const found = new Map<string, StructureData[]>();
  for (const { needed } of chain)
    for (const data of needed) {
      const known = found.get(data.kind);
      if (known === undefined) found.set(data.kind, [data]);
      else if (known.every(({ relation }) => relation !== data.relation)) known.push(data);
    }
  return found;
}

type Forms = ReadonlyMap<string, readonly StructureData[]>;

function verdictOf(a: Forms, b: Forms): SameVerdict {
  if (a.size === 0 || b.size === 0) return 'not told';
  const shared = [...a.keys()].filter((key) => b.has(key)).length;
  if (shared === 0) return 'none shared';
  if (shared < a.size && shared < b.size) return 'some shared';
  if (shared < a.size || shared < b.size) return 'one in the other';
  const relations = (forms: Forms, key: string): string =>
    (forms.get(key) ?? [])
      .map(({ relation }) => relation)
      .sort()
      .join();
  return [...a.keys()].every((key) => relations(a, key) === relations(b, key))
    ? 'the same'
    : 'the same in another relation';
}

function nameData({ trade, name, relation, words }: StructureData): NameData {
  return { trade, name, relation, words };
}

function linksOf(chain: readonly Link[]): ChainLink[] {
  return chain.map(({ number, sentence, needed }) => ({ number, sentence, names: needed.map(nameData) }));
}

function sayVerdict(verdict: SameVerdict, a: Forms, b: Forms): string {
  const names = (forms: Forms): string =>
    list([
      ...new Set([...forms.values()].map(([{ trade, name }]) => [trade, name].filter(Boolean).join(' '))),
    ]);
  const relations = (forms: Forms): string =>
    list([...new Set([...forms.values()].flatMap((all) => all.map(({ relation }) => relation)))]);
  switch (verdict) {
    case 'the same':
      return `Both rest on the same: ${names(a)}, in ${relations(a)}.`;
    case 'the same in another relation':
      return `Both rest on the same: ${names(a)}; the first in ${relations(a)}, the second in ${relations(b)}.`;
    case 'one in the other':
      return a.size < b.size
        ? `All that the first rests on, the second rests on too: ${names(a)}.`
        : `All that the second rests on, the first rests on too: ${names(b)}.`;
    case 'some shared':
      return `They share ${names(new Map([...a].filter(([key]) => b.has(key))))}, and each rests on more.`;
    case 'none shared':
      return `They share nothing: the first rests on ${names(a)}, the second on ${names(b)}.`;
    case 'not told':
      return 'It cannot be told: what one of them needs on the way has no name among the structures, or is no equation.';
  }
}

/** Whether the two workings can do the same to a packet, where they are moves only on packets of one size. */
function sayHandling(one: Routine, other: Routine): string {
  const [first, second] = [movesOf(one), movesOf(other)];
  const [{ piles: a }, { piles: b }] = [one.setUp, other.setUp];
  if (first === null || second === null || a.length !== 1 || b.length !== 1) return '';
  if (a[0].name !== 'packet' || b[0].name !== 'packet' || a[0].cards.length !== b[0].cards.length) return '';
  const same = compareSteps(first, second, a[0].cards.length);
  switch (same.is) {
    case 'the same':
      return `Their workings can bring about just the same, ${counted(same.outcomes, 'way', 'ways')} for the cards to lie.`;
    case 'more': {
      const which = same.which === 1 ? 'first' : 'second';
      return `The ${which} can bring about all that the other can and more: ${same.outcomes.map((n) => grouped(n)).join(' and ')} ways for the cards to lie.`;
    }
    case 'different':
      return `Their workings do different things: ${grouped(same.shared)} of ${same.outcomes.map((n) => grouped(n)).join(' and ')} ways for the cards to lie are shared.`;
    case 'not told':
      return '';
  }
}

function movesOf({ steps }: Routine): MoveStep[] | null {
  const moves = steps.filter((step) => step.do === 'move');
  return moves.length === steps.length ? moves : null;
}
