import type { Range, Trouble } from '../base/diagnostic.ts';
import { good, type Result } from '../base/result.ts';
import { START } from '../moves/move.ts';
import { sizeOf, type Layout } from '../pictures/layout.ts';
import type { Decision } from '../proving/decision.ts';
import { momentsOf, type Moments } from '../proving/moments.ts';
import type { Problem } from '../proving/problem.ts';
import type { Limits } from '../proving/question.ts';
import type { Graph, Location } from '../routine/graph.ts';
import { Followed } from '../structures/followed.ts';
import { neededStructures } from '../structures/needed.ts';
import { pictureOf, svgOf, type Picture } from '../structures/picture.ts';
import type { Found } from '../structures/found.ts';
import { holdsOn } from '../structures/holding.ts';
import { answered, type Asked } from './asked.ts';
import { sentenceOf } from './choices.ts';
import { statementsOf } from './equations.ts';
import { namingOf, type Naming } from './naming.ts';

/** A structure of a pile by its name in the trade, in words and as a drawing. */
export interface StructureData {
  /** `S1`, `S6`: the heading of the trade's list. */
  readonly trade: string;
  readonly name: string;
  readonly words: string;
  /** In what: `colour`, `facing with colour`. */
  readonly relation: string;
  /** The same for structures that are the same but for the relation and the size of the piles. */
  readonly kind: string;
  readonly piles: readonly string[];
  readonly picture: Picture;
  readonly svg: string;
}

/** What one sentence of the ending needs at a moment. */
export interface NeededData {
  readonly structures: readonly StructureData[];
  /** What is needed besides, in words. */
  readonly rest: readonly string[];
  /** Independent equations that are needed. */
  readonly equations: number;
}

export interface MomentStructures {
  readonly sizes: Readonly<Record<string, number>>;
  readonly numbers: Readonly<Record<string, number>>;
  readonly certain: readonly StructureData[];
  /** What is certain besides, of what the sentences speak of, in short equations. */
  readonly rest: readonly string[];
  /** One for each sentence; null where need is not equations. */
  readonly needed: readonly (NeededData | null)[];
  /** What is certain here and no more once the step is done. */
  readonly lost: readonly StructureData[];
  /** What is certain once the step is done and was not before. */
  readonly gained: readonly StructureData[];
}

export interface StepStructures {
  readonly number: string;
  readonly range: Range | null;
  readonly sentence: string;
  readonly moments: readonly MomentStructures[];
}

interface Sentence {
  readonly families: readonly { readonly moments: Moments; readonly naming: Naming }[] | null;
}

/** Certain and needed structures at the beginning of every step and at the end. Throws BudgetEnded when `limits` are spent. */
export function structuresReport(decision: Decision, text: string, limits: Limits): StepStructures[] {
  const { graph, region, starts } = decision;
  if (region === undefined) return [];
  const followed = new Followed({ graph, region, starts }, limits);
  const sentences = decision.sentences.map((sentence): Sentence => {
    const families = momentsOf(decision, sentence, limits);
    return {
      families:
        families?.map((moments) => ({
          moments,
          naming: namingOf(moments.problem, starts.universe, graph),
        })) ?? null,
    };
  });
  const groups = new Map<
    string,
    { step: Omit<StepStructures, 'moments'>; locations: Location[]; at: number }
  >();
  for (const id of region.order) {
    const location = graph.locations[id];
    if (location.phase !== START || location.at < 0) continue;
    const { origin } = location;
    const key = origin === undefined ? 'end' : `${origin.range.from} ${origin.number}`;
    let group = groups.get(key);
    if (group === undefined) {
      const step =
        origin === undefined
          ? { number: '', range: null, sentence: 'At the end' }
          : { number: origin.number, range: origin.range, sentence: sentenceOf(origin, text) };
      groups.set(key, (group = { step, locations: [], at: origin?.range.from ?? Infinity }));
    }
    group.locations.push(location);
  }
  const subjects = { graph, cards: starts.universe, subjects: followed.subjects };
  return [...groups.values()]
    .sort((a, b) => a.at - b.at)
    .map(({ step, locations }) => ({
      ...step,
      moments: locations.map((location) => {
        const { layout } = location;
        const certain = followed.certainAt(location.id);
        const { lost, gained } = changesAt(graph, followed, location, certain);
        return {
          sizes: Object.fromEntries(layout.names.map((name, i) => [name, layout.sizes[i]])),
          numbers: location.numbers,
          certain: certain.map((found) => structureData(found, layout)),
          rest: restAt(sentences, location, subjects),
          needed: sentences.map(({ families }) =>
            families === null
              ? null
              : neededData(
                  families.map(({ moments, naming }) => ({
                    problem: moments.problem,
                    naming,
                    rows: moments.neededAt(location.id),
                  })),
                  layout,
                  subjects,
                ),
          ),
          lost: lost.map((found) => structureData(found, layout)),
          gained: gained.map(({ found, after }) => structureData(found, after)),
        };
      }),
    }));
}

/** Needed equations of one family at a moment, and how its columns are called. */
export interface NeededPart {
  readonly problem: Problem;
  readonly naming: Naming;
  /** Dense rows of `problem.width`. */
  readonly rows: readonly (readonly number[])[];
}

/** What is needed of some families, by the trade's names as far as these go. */
export function neededData(
  parts: readonly NeededPart[],
  layout: Layout,
  subjects: Parameters<typeof neededStructures>[3],
): NeededData {
  const said = parts.map(({ problem, rows, naming }) => ({
    naming,
    rows,
    needed: neededStructures(problem, rows, layout, subjects),
  }));
  return {
    structures: said.flatMap(({ needed }) => needed.found.map((found) => structureData(found, layout))),
    rest: said.flatMap(({ needed, naming }) =>
      needed.rest.length === 0 ? [] : statementsOf(needed.rest, layout, naming).map(({ words }) => words),
    ),
    equations: said.reduce((sum, { rows }) => sum + rows.length, 0),
  };
}

/** Certain relations of what the sentences speak of that no structure says. */
function restAt(
  sentences: readonly Sentence[],
  { id, layout }: Location,
  subjects: Parameters<typeof neededStructures>[3],
): string[] {
  const parts = sentences.flatMap(({ families }) =>
    (families ?? []).map(({ moments, naming }) => ({
      problem: moments.problem,
      naming,
      rows: moments.certainAt(id),
    })),
  );
  return [...new Set(neededData(parts, layout, subjects).rest)];
}

/** Structures at every step of a note that is understood. */
export function structuresOf(asked: Asked, limits: Limits): Result<StepStructures[], Trouble> {
  return answered(asked, limits, ({ decision, text }) => good(structuresReport(decision, text, limits)));
}

/** What doing the step at a location takes away and what it brings, whatever is chosen in it. */
function changesAt(
  graph: Graph,
  followed: Followed,
  location: Location,
  certain: readonly Found[],
): { lost: readonly Found[]; gained: readonly { found: Found; after: Layout }[] } {
  const after = locationsAfter(graph, location);
  if (after.length === 0) return { lost: [], gained: [] };
  const holdsAt = (found: Found, from: Layout, at: Location): boolean => {
    if (found.piles.some((pile) => sizeOf(from, pile) !== sizeOf(at.layout, pile))) return false;
    if (from.names.join() !== at.layout.names.join()) return false;
    const subject = followed.subjects.find(({ id }) => id === found.subject);
    const vectors = subject === undefined ? null : followed.vectorsAt(at.id, subject);
    return vectors !== null && holdsOn(found.rows, vectors);
  };
  const lost = certain.filter((found) => !after.every((at) => holdsAt(found, location.layout, at)));
  const [first, ...others] = after;
  const gained = followed
    .certainAt(first.id)
    .filter(
      (found) =>
        !holdsAt(found, first.layout, location) &&
        others.every((other) => holdsAt(found, first.layout, other)),
    );
  return { lost, gained: gained.map((found) => ({ found, after: first.layout })) };
}

/** Where a move that begins at a location may end. */
function locationsAfter(graph: Graph, location: Location): Location[] {
  const instruction = graph.instructionOf(location);
  if (instruction?.do !== 'move' || location.looks) return [];
  const seen = new Set([location.id]);
  const ends = new Set<number>();
  for (const id of seen)
    for (const { to } of graph.waysFrom(id).edges) {
      const next = graph.locations[to];
      if (next.at === location.at && next.phase !== START) seen.add(to);
      else ends.add(to);
    }
  return [...ends].map((id) => graph.locations[id]);
}

/** A structure as plain data, with its drawing. */
export function structureData(found: Found, layout: Layout): StructureData {
  const { trade, name, words, relation, piles, pattern, ring } = found;
  const picture = pictureOf(
    pattern,
    piles.map((pile) => ({ name: pile, cards: sizeOf(layout, pile) })),
    ring,
  );
  const several = layout.names.length > 1 && piles.length === 1;
  return {
    trade,
    name,
    words: several ? `in ${piles[0]}, ${words}` : words,
    relation,
    kind: kindOf(found),
    piles,
    picture,
    svg: svgOf(picture),
  };
}

/** Which form it is, whatever it is about: a mirror going round is one wherever its axis lies. */
function kindOf({ form, variant, trade, subject, pattern }: Found): string {
  const which = form === 'cyclic-mirror' || form === 'residue' ? variant.replace(/^\d+ ?/, '') : variant;
  const is = pattern.of === 'count' ? subject.replace(/ .*/, '') : '';
  return [form, trade, which.trim(), is].join('|');
}
