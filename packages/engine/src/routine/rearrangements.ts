import type { Trouble } from '../base/diagnostic.ts';
import { isStuck, type Key, type Phase, type View } from '../moves/move.ts';
import { BitKinds, effectOf, type Effect } from '../pictures/effect.ts';
import { layoutKey, type Layout } from '../pictures/layout.ts';
import type { Instruction } from './program.ts';
import type { Numbers } from './silent.ts';

type MoveInstruction = Extract<Instruction, { do: 'move' }>;

interface CompiledOption {
  readonly key: Key;
  readonly effect: Effect;
  readonly next: Phase | null;
  readonly off: 0 | 1;
  readonly set: Numbers | undefined;
  readonly weight: number;
}

export type Compiled = { readonly options: readonly CompiledOption[] } | { readonly stuck: Trouble };

/**
 * What options of moves do to the slots, worked out once: the same sentence on the same sizes makes the same rearrangements wherever it
 * stands. Graphs of the same kinds of bits may share it.
 */
export class Rearrangements {
  readonly bits = new BitKinds();
  private readonly known = new Map<string, Compiled>();
  private readonly identities = new Map<string, Effect>();
  private readonly sentences = new WeakMap<MoveInstruction, string>();

  compiled(instruction: MoveInstruction, view: View): Compiled {
    const { layout, phase, numbers, seen } = view;
    let key = `${this.sentenceOf(instruction)}/${String(phase)}/${layoutKey(layout)}${seen === undefined ? '' : `/${typeof seen}${seen}`}`;
    for (const name of Object.keys(numbers).sort()) key += `;${name}=${numbers[name]}`;
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const made = this.compile(instruction, view);
    this.known.set(key, made);
    return made;
  }

  /** Nothing moves and nothing turns. */
  identity(layout: Layout): Effect {
    const key = layoutKey(layout);
    let effect = this.identities.get(key);
    if (effect === undefined) this.identities.set(key, (effect = effectOf(layout, [], this.bits)));
    return effect;
  }

  private sentenceOf(instruction: MoveInstruction): string {
    let key = this.sentences.get(instruction);
    if (key === undefined)
      this.sentences.set(instruction, (key = `${instruction.move.id}${JSON.stringify(instruction.args)}`));
    return key;
  }

  private compile({ move, args }: MoveInstruction, view: View): Compiled {
    const found = move.options(args, view);
    if (isStuck(found)) return { stuck: found.stuck };
    return {
      options: found.map(({ key, actions, next, off, set, weight }) => ({
        key,
        effect: actions.length === 0 ? this.identity(view.layout) : effectOf(view.layout, actions, this.bits),
        next,
        off,
        set,
        weight: weight ?? 1,
      })),
    };
  }
}
