import { MOVES } from '../../src/moves/index.ts';
import { START } from '../../src/moves/move.ts';
import type { Part } from '../../src/phrases/template.ts';
import type { MoveStep, NumberTest, Step, Times } from '../../src/routine/routine.ts';
import { listFrame, settle, type Moment } from '../naive/machine.ts';
import type { Bits } from '../naive/table.ts';
import { nextOf } from '../naive/ways-on.ts';
import { makeArgs } from './blank-values.ts';
import type { Dice } from './dice.ts';
import { brought, merged, seenIn, type Scope } from './scope.ts';

/** Workings at random, kept mostly possible by doing the plain path while they are made. */

const NOWHERE = { number: '', range: { from: 0, to: 0 } };

/** Where the plain path has come to, and what may be spoken of there; `moment` is null where it got stuck. */
export interface Here {
  readonly scope: Scope;
  readonly moment: Moment | null;
}

interface Made extends Here {
  readonly steps: readonly Step[];
}

export class Maker {
  private readonly dice: Dice;
  private readonly bits: Bits;
  private hidden = 0;

  constructor(dice: Dice, bits: Bits) {
    this.dice = dice;
    this.bits = bits;
  }

  sequence(length: number, from: Here, depth: number): Made {
    let here = from;
    const steps: Step[] = [];
    for (let i = 0; i < length; i++) {
      const made = this.step(here, depth);
      steps.push(...made.steps);
      here = made;
    }
    return { ...here, steps };
  }

  private step(here: Here, depth: number): Made {
    const { dice } = this;
    const { scope, moment } = here;
    const rows = scope.there.filter((pile) => /^(pile|heap|hand) \d+$/.test(pile));
    const block = depth > 0 && moment !== null;
    const weights = [
      70,
      block ? 10 : 0,
      block ? 8 : 0,
      block && rows.length > 0 ? 10 : 0,
      block && scope.numbers.length > 0 ? 25 : 0,
    ];
    switch (dice.weighted(weights)) {
      case 1:
        return this.repetition(here, depth - 1);
      case 2: {
        const branches = Array.from({ length: 2 + dice.below(2) }, () =>
          this.sequence(dice.weighted([12, 60, 28]), here, depth - 1),
        );
        const step: Step = {
          do: 'either',
          who: 'spectator',
          branches: branches.map((b) => b.steps),
          ...NOWHERE,
        };
        return this.done(
          step,
          here,
          merged(
            scope,
            branches.map((b) => b.scope),
          ),
        );
      }
      case 3: {
        const counter = `that ${this.hidden++}`;
        const [stem, first] = dice.of(rows).split(' ');
        const inside = { ...scope, that: { stem, counter }, numbers: [...scope.numbers, counter] };
        const numbers = { ...moment!.numbers, [counter]: Number(first) };
        const body = this.sequence(1 + dice.below(2), { scope: inside, moment: { ...moment!, numbers } }, 0);
        const step: Step = { do: 'each', stem, counter, body: body.steps, ...NOWHERE };
        return this.done(step, here, { ...brought(scope, body.scope), numbers: scope.numbers });
      }
      case 4: {
        const when: NumberTest = {
          test: 'number',
          number: dice.of(scope.numbers),
          is: dice.of(['equal', 'at least', 'at most', 'even', 'odd']),
          n: 1 + dice.below(4),
        };
        const then = this.sequence(1 + dice.below(2), here, depth - 1);
        const otherwise = this.sequence(dice.below(2), here, depth - 1);
        const step: Step = { do: 'if', when, then: then.steps, otherwise: otherwise.steps, ...NOWHERE };
        return this.done(step, here, merged(scope, [then.scope, otherwise.scope]));
      }
      default:
        return this.move(here);
    }
  }

  private repetition(here: Here, depth: number): Made {
    const { dice } = this;
    const { numbers } = here.scope;
    const body = this.sequence(1 + dice.below(2), here, depth);
    const times: Times = [
      { of: 'any' } as const,
      { of: 'at least', n: 1 + dice.below(2) } as const,
      {
        of: 'exactly',
        n: numbers.length > 0 && dice.chance(60) ? { var: dice.of(numbers) } : dice.below(4),
      } as const,
    ][dice.weighted([50, 20, 30])];
    const surely =
      times.of === 'at least' || (times.of === 'exactly' && typeof times.n === 'number' && times.n > 0);
    const step: Step = { do: 'repeat', times, who: 'spectator', body: body.steps, ...NOWHERE };
    return this.done(step, here, surely ? body.scope : { ...brought(here.scope, body.scope), numbers });
  }

  private move(here: Here): Made {
    const { dice } = this;
    const { scope, moment } = here;
    const weights = weightsIn(scope);
    for (let tries = 0; tries < 4; tries++) {
      const move = MOVES[dice.weighted(weights)];
      for (let again = 0; again < 5; again++) {
        const args = makeArgs(dice.of(move.phrases), move.defaults, scope, dice);
        if ((move.check?.(args) ?? []).length > 0) continue;
        const names = move.brings?.(args)?.numbers ?? [];
        // No sentence gives a number a new value while it speaks of it.
        if (names.some((name) => JSON.stringify(args).includes(`{"var":"${name}"}`))) continue;
        const step: MoveStep = {
          do: 'move',
          move: move.id,
          args,
          who: 'spectator',
          secret: false,
          ...NOWHERE,
        };
        const made = this.done(step, here, brought(scope, move.brings?.(args) ?? {}));
        // Dead ends are wanted, but few.
        if (made.moment !== null || moment === null || dice.chance(3)) return made;
      }
    }
    return { ...here, steps: [] };
  }

  /** The plain path through one more step. */
  private done(step: Step, here: Here, scope: Scope): Made {
    let moment: Moment | null =
      here.moment === null ? null : { ...here.moment, frames: [listFrame([step])], phase: START };
    for (let i = 0; moment !== null; i++) {
      if (i > 2000) throw new Error(`the plain path of ${JSON.stringify(step)} has no end`);
      const next = nextOf(moment, scope.cards, this.bits);
      if (next.is === 'exit') {
        moment = settle(moment).moment;
        break;
      }
      moment = next.is === 'ways' ? next.ways[0].to : null;
    }
    return {
      steps: [step],
      moment,
      scope: moment === null ? scope : { ...scope, ...seenIn(moment.table) },
    };
  }
}

/** What a move speaks of, as far as it must be there for the move to be possible. */
type Needs =
  | 'layout'
  | 'clock'
  | 'marked pile'
  | 'marked name'
  | 'mark'
  | 'short name'
  | 'long packet'
  | 'six cards'
  | 'number'
  | 'row of piles'
  | 'two piles';

/** How often a move comes up where what it needs is there, and where it is not. */
const WEIGHTS: Readonly<Record<Needs, readonly [number, number]>> = {
  layout: [320, 10],
  clock: [900, 1],
  'marked pile': [2000, 1],
  'marked name': [800, 1],
  mark: [120, 1],
  'short name': [60, 1],
  'long packet': [900, 1],
  'six cards': [150, 2],
  number: [60, 1],
  'row of piles': [60, 2],
  'two piles': [35, 2],
};

const NEEDS = MOVES.map((move): { needs: Needs | undefined; plain: number } => ({
  needs: needsOf(move.phrases[0].template),
  // What names something for later comes up more often.
  plain: move.phrases.some(({ parts }) => namesSomething(parts)) ? 20 : 10,
}));

function needsOf(template: string): Needs | undefined {
  if (/layout|row|column/.test(template)) return 'layout';
  if (/ clock/.test(template)) return 'clock';
  // The words that are tried have six letters together.
  if (/:allwords\}/.test(template)) return 'six cards';
  if (/which .*:mark\}/.test(template)) return 'marked pile';
  if (/name of .*:mark\}/.test(template)) return 'marked name';
  if (/:mark\}/.test(template)) return 'mark';
  if (/name of/.test(template)) return 'short name';
  if (/:pipcard\}/.test(template)) return 'long packet';
  if (/says.*:number\}/.test(template)) return 'number';
  if (/(piles|heaps|hands)=?|pile\|heap/.test(template) && !/^.{0,8}deal/.test(template))
    return 'row of piles';
  return /:pile\}.*:pile\}/.test(template) ? 'two piles' : undefined;
}

function weightsIn({ there, sizes, marks, numbers, cards }: Scope): number[] {
  const packet = sizes['packet'] ?? 0;
  const has = (name: RegExp): boolean => there.some((pile) => name.test(pile));
  const row = has(/^(pile|heap|hand) \d/);
  const met: Readonly<Record<Needs, boolean>> = {
    layout: has(/^cell /),
    clock: packet >= 12 || has(/^hour /),
    'marked pile': row && marks.length > 0,
    'marked name': marks.length > 0 && cards.some(({ name }) => name.length <= packet),
    mark: marks.length > 0,
    'short name': cards.some(({ name }) => name.length <= packet),
    'long packet': packet >= 9,
    'six cards': packet === 6,
    number: numbers.length > 0,
    'row of piles': row,
    'two piles': there.length > 1,
  };
  return NEEDS.map(({ needs, plain }) => (needs === undefined ? plain : WEIGHTS[needs][met[needs] ? 0 : 1]));
}

function namesSomething(parts: readonly Part[]): boolean {
  return parts.some((part) => {
    if (part.part === 'blank') return part.type === 'newname';
    return (part.part === 'either' || part.part === 'optional') && part.ways.some(namesSomething);
  });
}
