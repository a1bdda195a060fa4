import type { Card } from '../cards/card.ts';
import type { Kind, KindTest } from '../phrases/values.ts';
import { allSlots, type Exit } from './claim.ts';
import { trouble, type Trouble } from '../base/diagnostic.ts';
import { denied } from '../phrases/blanks/card-words.ts';
import { and, type Formula, type Measure } from './formula.ts';
import { bitMeasure, indicator } from './measures.ts';
import { equals, total, type Sum } from './sums.ts';

/** Every card. */
export const ANY: Kind = { tests: [] };

export function both(a: Kind, b: Kind): Kind {
  return { tests: [...a.tests, ...b.tests] };
}

/** The test without its denial, and what it must read. */
function positive(test: KindTest): { measure: Measure; wanted: 0 | 1 } {
  const { not, ...plain } = test;
  const measure = plain.test === 'bit' ? bitMeasure(plain.bit) : indicator({ tests: [plain] });
  return { measure, wanted: not === true ? 0 : 1 };
}

/** How many cards of the kind lie in these slots. */
export function count(kind: Kind, slots: readonly number[], exit: Exit): Sum {
  const tests = kind.tests.filter((test) => !allPass(test, exit.cards));
  if (tests.length === 0) return { terms: [], constant: slots.length };
  if (tests.length > 1) return total(indicator({ tests }), slots, exit);
  const { measure, wanted } = positive(tests[0]);
  const sum = total(measure, slots, exit);
  if (wanted === 1) return sum;
  const negative = sum.terms.map((term) => ({ ...term, coef: -1 }));
  return { terms: negative, constant: slots.length - sum.constant };
}

/** The card in a slot is of the kind: one equation a test. */
export function isKind(kind: Kind, slot: number, exit: Exit): Formula {
  return and(kind.tests.map((test) => equals(count({ tests: [test] }, [slot], exit), 1, 2)));
}

function passes(test: KindTest, card: Card): boolean {
  return positive(test).measure.of(card, () => 0) === positive(test).wanted;
}

function allPass(test: KindTest, cards: readonly Card[]): boolean {
  return test.test !== 'bit' && cards.every((card) => passes(test, card));
}

/** True when no card could ever be of the kind, however it lies. */
export function isNobody(kind: Kind, cards: readonly Card[]): boolean {
  const fixed = kind.tests.filter((test) => test.test !== 'bit');
  return !cards.some((card) => fixed.every((test) => passes(test, card)));
}

/** Every card of the kind in these slots is also of the other: one equation a slot and test, none that needs whole numbers. */
export function allAre(kind: Kind, state: Kind, slots: readonly number[], exit: Exit): Formula {
  const tests = kind.tests.filter((test) => !allPass(test, exit.cards));
  if (tests.length === 0) return and(slots.map((slot) => isKind(state, slot, exit)));
  return and(
    slots.flatMap((slot) =>
      state.tests.map((test) => equals(count({ tests: [...tests, denied(test)] }, [slot], exit), 0, 2)),
    ),
  );
}

/** How many different cards must be of the kind and how many may be, whatever their bits. */
export function cardsOf(kind: Kind, cards: readonly Card[]): { least: number; most: number } {
  const fixed = kind.tests.filter((test) => test.test !== 'bit');
  const [some, others] = [new Set<number>(), new Set<number>()];
  for (const card of cards) (fixed.every((test) => passes(test, card)) ? some : others).add(card.id);
  const surely = fixed.length < kind.tests.length ? [] : [...some].filter((id) => !others.has(id));
  return { least: surely.length, most: some.size };
}

/** `The chosen card`, `the 10C` must be able to be one card. */
export function notOneCard(kind: Kind, cards: readonly Card[]): Trouble[] {
  const { least, most } = cardsOf(kind, cards);
  return least > 1 || most < 1 ? [trouble('not-one-card', { cards: most })] : [];
}

/** There is one card of the kind on the table. */
export function isOneCard(kind: Kind, exit: Exit): Formula {
  return equals(count(kind, allSlots(exit), exit), 1);
}

/** Attributes that some kinds speak of. */
export function attributesOf(...kinds: readonly (Kind | undefined)[]): string[] {
  return kinds.flatMap((kind) =>
    (kind?.tests ?? []).flatMap((t) => (t.test === 'attribute' ? [t.attribute] : [])),
  );
}
