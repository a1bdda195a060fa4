import { Budget } from '../base/budget.ts';
import type { Vector } from '../base/echelon.ts';
import type { Card } from '../cards/card.ts';
import { haveOf, type Have } from '../proving/have.ts';
import { kernelFor, type Kernel } from '../proving/kernel.ts';
import { problemsOf, type Problem } from '../proving/problem.ts';
import type { Limits } from '../proving/question.ts';
import type { Region } from '../proving/region.ts';
import type { Graph } from '../routine/graph.ts';
import type { Starts } from '../routine/starts.ts';
import type { Found, SlotRow } from './found.ts';
import { recognise } from './recognise.ts';
import { fromTables } from './slot-vectors.ts';
import type { Subject } from './subject.ts';
import { subjectsFor, type Handled } from './subjects.ts';

interface Track {
  readonly problem: Problem;
  readonly kernel: Kernel;
  readonly have: Have;
}

/** What handling can change in a routine, so far as its graph was made. */
export function handledIn(graph: Graph, region: Region, starts: Starts): Handled {
  const changed = region.ops.reduce((all, op) => all | op, 0) >>> 0;
  const laid = Array.from(starts.base.bits).reduce((all, bits) => all | bits, 0);
  const differs = (kind: number): boolean => {
    const first = (starts.base.bits[0] >>> kind) & 1;
    return Array.from(starts.base.bits).some((bits) => ((bits >>> kind) & 1) !== first);
  };
  const isHandled = (kind: number): boolean =>
    ((changed >>> (2 * kind)) & 3) !== 0 || (laid !== 0 && differs(kind));
  return {
    up: isHandled(0),
    end: isHandled(1),
    parts: region.order.some(
      (id) => graph.locations[id].layout.names.filter((name) => !name.startsWith('~')).length > 1,
    ),
    marks: graph.bits.names.filter((_, kind) => kind > 1 && isHandled(kind)),
    named: namesIn([graph.routine.endings, graph.routine.steps]),
    oddEnd: oddOne(starts),
  };
}

/** Cards that the sentences of the note call by name. */
function namesIn(value: unknown): string[] {
  if (Array.isArray(value)) return [...new Set(value.flatMap(namesIn))];
  if (typeof value !== 'object' || value === null) return [];
  if ('test' in value && value.test === 'card' && 'name' in value) return [String(value.name)];
  return [...new Set(Object.values(value).flatMap(namesIn))];
}

/** The card that alone points its own way at the start, if there is one and which it is does not depend on what is left open. */
function oddOne({ base }: Starts): Card | null {
  const ends = Array.from(base.bits, (word) => (word >>> 1) & 1);
  const turned = ends.filter((end) => end === 1).length;
  if (turned !== 1 && turned !== ends.length - 1) return null;
  return base.cards[ends.indexOf(turned === 1 ? 1 : 0)] ?? null;
}

/** Follows everything that structures are made of through a routine and says which structures are certain where. */
export class Followed {
  readonly subjects: readonly Subject[];
  private readonly graph: Graph;
  private readonly region: Region;
  private readonly starts: Starts;
  private readonly limits: Limits;
  private readonly tracks = new Map<string, readonly Track[]>();

  constructor(
    { graph, region, starts }: { readonly graph: Graph; readonly region: Region; readonly starts: Starts },
    limits: Limits,
  ) {
    this.graph = graph;
    this.region = region;
    this.starts = starts;
    this.limits = limits;
    this.subjects = subjectsFor(starts.universe, handledIn(graph, region, starts));
  }

  /**
   * Structures that every performance has at a location, subject by subject, without those that say less than others: what is alike in
   * value is so in parity, and where all cards face one way nobody counts those face up. Throws BudgetEnded.
   */
  certainAt(location: number): Found[] {
    const { layout } = this.graph.locations[location];
    const all = this.subjects.flatMap((subject) => {
      const vectors = this.vectorsAt(location, subject);
      if (vectors === null) return [];
      return recognise(vectors, layout, subject, (row) => isOfAll(row, subject, this.graph.cards));
    });
    const oneWay = all.some(({ form, subject }) => form === 'all-alike' && subject === 'facing');
    const finer = new Map(this.subjects.map((subject) => [subject.id, subject]));
    return all.filter((found) => {
      const subject = finer.get(found.subject);
      if (subject === undefined) return false;
      // Opposites card by card say that there are as many here as others there.
      if (
        found.form === 'balance' &&
        all.some((other) => other.form === 'across' && isSameOfTwo(other, found))
      )
        return false;
      if (found.form === 'residue' && all.some((other) => tellsMore(other, found))) return false;
      if (found.form === 'key-distance' && bothPlacesAreKnown(subject, all)) return false;
      if (oneWay && ['count', 'total'].includes(subject.is) && subject.measures[0].bits.includes('up'))
        return false;
      return !all.some((other) =>
        saysMore(other, finer.get(other.subject), found, subject, this.starts.universe),
      );
    });
  }

  /** Numbers of a subject on the tables that span what is reached; null where the subject could not be followed. */
  vectorsAt(location: number, subject: Subject): ReturnType<typeof fromTables> | null {
    const all = this.tracksOf(subject).map(({ problem, kernel, have }) => {
      const tables = (have.at[location] ?? []).map((i): Vector => have.tables.vector(i));
      const readings =
        subject.is === 'two cards' ? problem.space.measures : problem.space.measures.slice(0, 1);
      return fromTables(problem, kernel, tables, readings);
    });
    const [first] = all;
    return first === undefined ? null : { ...first, list: all.flatMap(({ list }) => list) };
  }

  private tracksOf(subject: Subject): readonly Track[] {
    let tracks = this.tracks.get(subject.id);
    if (tracks === undefined) this.tracks.set(subject.id, (tracks = this.follow(subject)));
    return tracks;
  }

  private follow(subject: Subject): Track[] {
    const { graph, region, starts } = this;
    // A question for linear algebra has equations; only its columns matter here.
    const terms = subject.measures.map((measure, slot) => ({ slot, coef: 1, measure }));
    const { p } = subject;
    const equations =
      subject.is === 'two cards'
        ? [{ terms, total: 0, p }]
        : terms.map((term) => ({ terms: [{ ...term, slot: 0 }], total: 0, p }));
    const budget = new Budget(this.limits.work, this.limits.goOn);
    return problemsOf(graph, starts.universe, region.ops, [{ exit: graph.start, equations }]).map(
      (problem) => {
        const kernel = kernelFor(problem, graph.cards);
        const entries = starts.spanning.flatMap((table) =>
          problem.members.map((member) => ({
            location: graph.start,
            vector: kernel.ofTable(member, table),
            cost: 0,
          })),
        );
        return { problem, kernel, have: haveOf(problem, kernel, graph, entries, budget) };
      },
    );
  }
}

/** Whether an equation only counts all cards of a class that handling does not change: true of every arrangement. */
function isOfAll({ weights }: SlotRow, { measures }: Subject, slots: number): boolean {
  return (
    measures.every(({ bits }) => bits.length === 0) &&
    weights.length === slots &&
    weights.every(([, coef]) => coef === weights[0][1])
  );
}

/** Whether a place known in part follows from what else is known of it: where it is, or where among more. */
function tellsMore(other: Found, found: Found): boolean {
  if (other === found || other.form !== 'residue' || other.subject !== found.subject) return false;
  if (other.piles.join() !== found.piles.join()) return false;
  const [more, less] = [other, found].map(({ variant }) => Number(variant.split(' ')[0]));
  return isOnePlace(other) || (more > less && more % less === 0);
}

function isOnePlace({ form, pattern }: Found): boolean {
  return form === 'residue' && pattern.of === 'count' && pattern.plus.length === 1;
}

/** Whether two cards' distance is plain from their places. */
function bothPlacesAreKnown({ words }: Subject, all: readonly Found[]): boolean {
  return [words.alike, words.opposite].every((card) =>
    all.some((one) => isOnePlace(one) && `the ${one.relation}` === card),
  );
}

/** The same relation of the same cards in a class that sorts them more finely. */
function saysMore(
  other: Found,
  finer: Subject | undefined,
  found: Found,
  subject: Subject,
  cards: readonly Card[],
): boolean {
  if (finer === undefined || finer.id === subject.id || other.form !== found.form) return false;
  if (other.variant !== found.variant || other.piles.join() !== found.piles.join()) return false;
  if (found.pattern.of !== 'pairs' || found.pattern.relation !== 'alike') return false;
  const isOfCards = [finer, subject].every(
    ({ is, measures }) => is === 'class' && measures.every(({ bits }) => bits.length === 0),
  );
  if (!isOfCards) return false;
  const classOf = ({ measures }: Subject, card: Card): string =>
    measures.map((one) => one.of(card, () => 0)).join();
  const coarse = new Map<string, string>();
  return cards.every((card) => {
    const fine = classOf(finer, card);
    const known = coarse.get(fine);
    coarse.set(fine, classOf(subject, card));
    return known === undefined || known === classOf(subject, card);
  });
}

function isSameOfTwo(across: Found, balance: Found): boolean {
  return (
    across.pattern.of === 'pairs' &&
    across.pattern.relation === 'opposite' &&
    across.piles.join() === balance.piles.join() &&
    balance.subject === `class ${across.subject}`
  );
}
