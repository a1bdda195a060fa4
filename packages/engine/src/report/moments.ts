import type { Range } from '../base/diagnostic.ts';
import { START } from '../moves/move.ts';
import type { Layout } from '../pictures/layout.ts';
import type { Decision } from '../proving/decision.ts';
import { momentsOf } from '../proving/moments.ts';
import type { Limits } from '../proving/question.ts';
import type { Graph, Location } from '../routine/graph.ts';
import { sentenceOf } from './choices.ts';
import type { Equation } from './equation.ts';
import { statementsOf } from './equations.ts';
import { namingOf } from './naming.ts';
import { placesIn } from './places.ts';
import type { Statement } from './statement.ts';

/** One term of an equation as plain data: `coef` times what the card at that place is (0 or 1, or a number). */
export interface TermData {
  readonly pile: string;
  readonly place: number;
  readonly coef: number;
  readonly trait: string;
}

export interface EquationData {
  /** The field; equations that hold in whole numbers say so. */
  readonly p: number;
  readonly whole: boolean;
  readonly terms: readonly TermData[];
  readonly total: number;
}

export interface StatementData {
  readonly words: string;
  readonly equations: readonly EquationData[];
}

/** One moment that a performance may be at: piles, numbers named, and what is certain and needed there. */
export interface MomentData {
  readonly sizes: Readonly<Record<string, number>>;
  readonly numbers: Readonly<Record<string, number>>;
  readonly have: readonly StatementData[];
  readonly need: readonly StatementData[];
  /** Independent equations on either side. */
  readonly certain: number;
  readonly needed: number;
}

/** The moments just before one step is begun, or at the end. */
export interface StepMoments {
  readonly number: string;
  readonly range: Range | null;
  readonly sentence: string;
  readonly moments: readonly MomentData[];
}

export interface SentenceMoments {
  readonly text: string;
  /** Null when have and need are not equations: the sentence is no conjunction of equations, or a move looks at cards. */
  readonly steps: readonly StepMoments[] | null;
}

/** Have and need of every sentence at the beginning of every step and at the end. Throws BudgetEnded when `limits` are spent. */
export function momentsReport(decision: Decision, text: string, limits: Limits): SentenceMoments[] {
  return decision.sentences.map((sentence) => {
    const families = momentsOf(decision, sentence, limits);
    if (families === null) return { text: sentence.ending.text, steps: null };
    const { graph } = decision;
    const named = families.map((family) => ({
      family,
      naming: namingOf(family.problem, decision.starts.universe, graph),
    }));
    const at = (location: Location): MomentData => {
      const say = (of: 'certainAt' | 'neededAt'): Statement[] =>
        named.flatMap(({ family, naming }) => statementsOf(family[of](location.id), location.layout, naming));
      const count = (of: 'certainAt' | 'neededAt'): number =>
        named.reduce((sum, { family }) => sum + family[of](location.id).length, 0);
      const data = (statement: Statement): StatementData => ({
        words: statement.words,
        equations: statement.equations.map((equation) => equationData(equation, location.layout)),
      });
      return {
        sizes: Object.fromEntries(location.layout.names.map((name, i) => [name, location.layout.sizes[i]])),
        numbers: location.numbers,
        have: say('certainAt').map(data),
        need: say('neededAt').map(data),
        certain: count('certainAt'),
        needed: count('neededAt'),
      };
    };
    return { text: sentence.ending.text, steps: momentsByStep(graph, decision, text, at) };
  });
}

/** Locations at which a step begins, in the order of the note, then the ends. */
function momentsByStep(
  graph: Graph,
  decision: Decision,
  text: string,
  at: (location: Location) => MomentData,
): StepMoments[] {
  const groups = new Map<string, { step: Omit<StepMoments, 'moments'>; locations: Location[] }>();
  for (const id of decision.region?.order ?? []) {
    const location = graph.locations[id];
    if (location.phase !== START) continue;
    const { origin } = location;
    const key =
      location.at < 0 ? 'set-up' : location.exit ? 'end' : `${origin?.range.from} ${origin?.number}`;
    let group = groups.get(key);
    if (group === undefined) {
      const step =
        origin === undefined
          ? { number: '', range: null, sentence: key === 'end' ? 'At the end' : 'Set-up' }
          : { number: origin.number, range: origin.range, sentence: sentenceOf(origin, text) };
      groups.set(key, (group = { step, locations: [] }));
    }
    group.locations.push(location);
  }
  const order = ({
    step,
    locations: [first],
  }: {
    step: Omit<StepMoments, 'moments'>;
    locations: Location[];
  }): number => step.range?.from ?? (first.exit ? Infinity : -1);
  return [...groups.values()]
    .sort((a, b) => order(a) - order(b))
    .map(({ step, locations }) => ({ ...step, moments: locations.map(at) }));
}

function equationData(equation: Equation, layout: Layout): EquationData {
  const places = placesIn(layout);
  return {
    p: equation.p,
    whole: equation.whole,
    terms: equation.terms.map(({ slot, coef, trait }) => ({ ...places[slot], coef, trait: trait.many })),
    total: equation.total,
  };
}
