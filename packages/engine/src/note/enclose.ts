import type { Range } from '../base/diagnostic.ts';
import { eachCounter } from '../phrases/blanks/pile.ts';
import type { MoveStep, Step } from '../routine/routine.ts';
import type { Head, See } from './blocks.ts';
import type { Context } from './clause.ts';
import { merged } from './names.ts';
import { nothing, settled, withTrouble, type Outcome } from './outcome.ts';

/** What the steps inside a block may refer to. */
export function innerContext(head: Head, context: Context): Context {
  if (head.is !== 'each') return context;
  const counter = eachCounter(head.stem);
  const { names } = context;
  if (names.numbers.includes(counter)) return context;
  return { names: { ...names, numbers: [...names.numbers, counter] }, it: null };
}

/** The steps of a block put into it, and what may be referred to after it. The branches of an `either` arrive in `branched`. */
export function enclosed(
  head: Exclude<Head, { is: 'either' }>,
  range: Range,
  steps: Outcome,
  before: Context,
): Outcome {
  const body = settled(steps);
  const origin = { number: '', range };
  const { names } = body.context;
  const after = merged([names, before.names]);
  const around = (step: Step, known = after): Outcome => ({
    ...body,
    steps: [step],
    context: { names: known, it: null },
    otherwise: null,
    fork: null,
  });
  switch (head.is) {
    case 'repeat': {
      const { times, who } = head;
      const sure = times.of === 'at least' || (times.of === 'exactly' && typeof times.n === 'number');
      return around({ do: 'repeat', times, who, body: body.steps, ...origin }, sure ? names : after);
    }
    case 'each': {
      const counter = eachCounter(head.stem);
      const outcome = around({ do: 'each', stem: head.stem, counter, body: body.steps, ...origin });
      const nested = before.names.numbers.includes(counter);
      return nested ? withTrouble(outcome, 'each-in-each', range, { stem: head.stem }) : outcome;
    }
    case 'if': {
      const [then, otherwise] = head.not ? [[], body.steps] : [body.steps, []];
      const outcome = around({ do: 'if', when: head.when, then, otherwise, ...origin });
      const steps = head.see === undefined ? outcome.steps : [seeing(head.see, range), ...outcome.steps];
      return { ...outcome, steps, fork: { names, before, not: head.not } };
    }
    case 'otherwise':
      return { ...body, steps: [], otherwise: { body: body.steps, range, names }, fork: null };
  }
}

/** The look at the cards before the block that rests on it. */
function seeing({ move, args, secret }: See, range: Range): MoveStep {
  return { do: 'move', move: move.id, args, who: 'spectator', secret, number: '', range };
}

/** Branches put into one step. */
export function branched(
  who: 'spectator' | 'performer',
  range: Range,
  ways: readonly Outcome[],
  before: Context,
): Outcome {
  const branches = ways.map(settled);
  const step: Step = { do: 'either', who, branches: branches.map(({ steps }) => steps), number: '', range };
  return {
    ...nothing({
      names: branches.length === 0 ? before.names : merged(branches.map((one) => one.context.names)),
      it: null,
    }),
    steps: [step],
    diagnostics: branches.flatMap((one) => one.diagnostics),
    unread: branches.flatMap((one) => one.unread),
    prints: branches.flatMap((one) => one.prints),
    readings: branches.flatMap((one) => one.readings),
  };
}
