import { moveById } from '../../moves/index.ts';
import { BLANKS } from '../../phrases/blanks.ts';
import { printPhrases } from '../../phrases/phrase.ts';
import type { Amount, ArgValue } from '../../phrases/values.ts';
import type { MoveStep } from '../../routine/routine.ts';
import { Mix } from './mix.ts';

/** Steps as the note would write them. */
export interface Sentences {
  readonly text: string;
  readonly steps: readonly MoveStep[];
}

/** The steps as sentences of a note, on one line; null when a blank cannot be said. */
export function saySteps(steps: readonly MoveStep[]): string | null {
  const texts = steps.map(({ move, args }) => {
    const { phrases, defaults } = moveById(move);
    return printPhrases(phrases, args, defaults, BLANKS);
  });
  const said = texts.flatMap((text, i) => (text === null ? [] : [i === 0 ? text : inside(text)]));
  return said.length < texts.length ? null : `${said.join('; ')}.`;
}

/** A sentence as it stands within another; a person's name keeps its capital. */
function inside(text: string): string {
  return /^(Monge|Gilbreath)/.test(text) ? text : text[0].toLowerCase() + text.slice(1);
}

export function leavesNumberOpen(steps: readonly MoveStep[]): boolean {
  return steps.some(({ args }) => Object.values(args).some(isOpen));
}

function isOpen(value: ArgValue): boolean {
  if (typeof value !== 'object' || Array.isArray(value)) return false;
  if ('of' in value && value.of === 'any') return true;
  return 'cards' in value && value.cards.of === 'any';
}

/** A blank that leaves any number open, with an amount in its place. */
function openedTo(value: ArgValue, amount: Amount): ArgValue | null {
  if (!isOpen(value) || typeof value !== 'object') return null;
  return 'cards' in value ? { ...value, cards: amount } : amount;
}

/** The steps of a mix with the number they leave open narrowed, if that leaves exactly these numbers wherever it is done. */
export function narrowedTo(
  mixes: readonly Mix[],
  amount: Amount,
  numbers: readonly number[],
): Sentences | null {
  const { steps } = mixes[0];
  for (const [i, step] of steps.entries())
    for (const [name, value] of Object.entries(step.args)) {
      const open = openedTo(value, amount);
      if (open === null) continue;
      const narrow = { ...step, args: { ...step.args, [name]: open } };
      if ((moveById(step.move).check?.(narrow.args) ?? []).length > 0) continue;
      const made = steps.map((one, k) => (k === i ? narrow : one));
      const text = saySteps(made);
      if (text === null) continue;
      const isExact = mixes.every(({ layout }) => {
        const ways = new Mix(made, layout).ways();
        if (ways === null || ways.length !== numbers.length) return false;
        const keys = new Set(ways.flatMap((way) => way.keys));
        return numbers.length === 1 ? keys.size === 0 : numbers.every((n) => keys.has(n));
      });
      if (isExact) return { text, steps: made };
    }
  return null;
}
