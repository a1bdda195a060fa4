import { moveById } from '../moves/index.ts';
import type { Move } from '../moves/move.ts';
import type { Args, NumberRef } from '../phrases/values.ts';
import { restricted } from './only.ts';
import type {
  EachStep,
  EitherStep,
  MoveStep,
  NumberTest,
  RepeatStep,
  Routine,
  Sentence,
  Step,
} from './routine.ts';

/**
 * The routine's steps laid out one after another, each naming what comes next: the skeleton on which the routine graph is
 * built. `live` are the numbers that this or a later instruction still uses; all others are forgotten there.
 */
export type Instruction = {
  readonly live: ReadonlySet<string>;
  /** True when this or a later instruction looks at cards. */
  readonly looksAhead: boolean;
} & (
  | {
      readonly do: 'move';
      readonly step: MoveStep;
      readonly move: Move;
      readonly args: Args;
      readonly next: number;
    }
  | {
      readonly do: 'repeat';
      readonly step: RepeatStep;
      readonly counter: string;
      readonly body: number;
      readonly next: number;
    }
  | { readonly do: 'either'; readonly step: EitherStep; readonly branches: readonly number[] }
  | {
      readonly do: 'each';
      readonly step: EachStep;
      readonly last: string;
      readonly body: number;
      readonly next: number;
    }
  | { readonly do: 'test'; readonly when: NumberTest; readonly then: number; readonly otherwise: number }
  | { readonly do: 'set'; readonly number: string; readonly to: NumberRef; readonly next: number }
  | { readonly do: 'exit' }
);

export interface Program {
  readonly instructions: readonly Instruction[];
  readonly start: number;
}

type Draft = { -readonly [K in keyof Instruction]: Instruction[K] } & Record<string, unknown>;

export function flatten(routine: Routine): Program {
  const drafts: Draft[] = [];
  const uses: Set<string>[] = [];
  const defines: Set<string>[] = [];
  let hidden = 0;

  function add(
    draft: Record<string, unknown>,
    used: Iterable<string> = [],
    defined: Iterable<string> = [],
  ): number {
    drafts.push(draft as Draft);
    uses.push(new Set(used));
    defines.push(new Set(defined));
    return drafts.length - 1;
  }
  // Steps are laid out from the last to the first, so that what follows is known.
  function sequence(steps: readonly Step[], next: number): number {
    return steps.reduceRight((after, step) => lay(step, after), next);
  }
  function lay(step: Step, next: number): number {
    switch (step.do) {
      case 'move': {
        const named = step.instead ?? moveById(step.move);
        const move = step.only === undefined ? named : restricted(named, step.only);
        return add(
          { do: 'move', step, move, args: step.args, next },
          numbersIn(step.args),
          move.brings?.(step.args).numbers,
        );
      }
      case 'repeat': {
        const counter = `~${hidden++}`;
        const { times } = step;
        const head = add({ do: 'repeat', step, counter, next }, times.of === 'any' ? [] : [counter]);
        drafts[head].body = sequence(step.body, head);
        if (times.of === 'any') return head;
        // Fixed when the repetition begins: naming the number anew inside changes nothing. Counts down, `at least` counts up.
        const to = times.of === 'exactly' ? times.n : 0;
        return add({ do: 'set', number: counter, to, next: head }, numbersIn(to), [counter]);
      }
      case 'either':
        return add({ do: 'either', step, branches: step.branches.map((branch) => sequence(branch, next)) });
      case 'each': {
        const last = `~${hidden++}`;
        const head = add({ do: 'each', step, last, next }, [step.counter, last]);
        drafts[head].body = sequence(step.body, head);
        const zero = add({ do: 'set', number: step.counter, to: 0, next: head }, [], [step.counter]);
        return add({ do: 'set', number: last, to: -1, next: zero }, [], [last]);
      }
      case 'if':
        return add(
          {
            do: 'test',
            when: step.when,
            then: sequence(step.then, next),
            otherwise: sequence(step.otherwise, next),
          },
          [step.when.number],
        );
    }
  }
  const exit = add(
    { do: 'exit' },
    routine.endings.flatMap((ending) => numbersInSentence(ending.sentence)),
  );
  const start = sequence(routine.steps, exit);
  const successors = drafts.map((draft) => followers(draft as Instruction));
  const live = backwards(
    uses,
    successors,
    (out, i) => new Set([...out].filter((name) => !defines[i].has(name))),
  );
  const looks = backwards(
    drafts.map(
      (draft) => new Set((draft as Instruction).do === 'move' && (draft.move as Move).looks ? ['looks'] : []),
    ),
    successors,
    (out) => out,
  );
  const instructions = drafts.map((draft, i) => ({
    ...draft,
    live: live[i],
    looksAhead: looks[i].has('looks'),
  }));
  return { instructions: instructions as unknown as Instruction[], start };
}

export function followers(instruction: Instruction): number[] {
  switch (instruction.do) {
    case 'move':
    case 'set':
      return [instruction.next];
    case 'repeat':
    case 'each':
      return [instruction.body, instruction.next];
    case 'either':
      return [...instruction.branches];
    case 'test':
      return [instruction.then, instruction.otherwise];
    case 'exit':
      return [];
  }
}

/** Least sets with `at[i]` = own[i] and what passes back through i from its followers. */
function backwards(
  own: readonly ReadonlySet<string>[],
  successors: readonly (readonly number[])[],
  pass: (out: Set<string>, i: number) => Set<string>,
): Set<string>[] {
  const at = own.map((set) => new Set(set));
  for (let changed = true; changed;) {
    changed = false;
    // Followers were laid out first, so one pass settles all but loops.
    for (let i = 0; i < at.length; i++) {
      const out = new Set<string>();
      for (const j of successors[i]) for (const name of at[j]) out.add(name);
      const size = at[i].size;
      for (const name of pass(out, i)) at[i].add(name);
      if (at[i].size > size) changed = true;
    }
  }
  return at;
}

/** Names of the numbers that blanks refer to. */
export function numbersIn(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(numbersIn);
  if (typeof value !== 'object' || value === null) return [];
  if ('var' in value && typeof (value as { var: unknown }).var === 'string')
    return [(value as { var: string }).var];
  return Object.values(value).flatMap(numbersIn);
}

function numbersInSentence(sentence: Sentence): string[] {
  switch (sentence.says) {
    case 'claim':
      return numbersIn(sentence.args);
    case 'and':
    case 'or':
      return sentence.parts.flatMap(numbersInSentence);
    case 'not':
    case 'up to':
      return numbersInSentence(sentence.part);
    case 'if':
      return [...numbersInSentence(sentence.when), ...numbersInSentence(sentence.then)];
    case 'exactly when':
      return [...numbersInSentence(sentence.left), ...numbersInSentence(sentence.right)];
  }
}

export function testNumber(test: NumberTest, value: number): boolean {
  switch (test.is) {
    case 'equal':
      return value === test.n;
    case 'at least':
      return value >= test.n;
    case 'at most':
      return value <= test.n;
    case 'even':
      return value % 2 === 0;
    case 'odd':
      return value % 2 !== 0;
  }
}

export function valueOf(ref: NumberRef, numbers: Readonly<Record<string, number>>): number {
  return typeof ref === 'number' ? ref : numbers[ref.var];
}
