import type { Card } from '../cards/card.ts';
import { showCard } from '../cards/show.ts';
import { claimById } from '../claims/index.ts';
import type { Exit } from '../claims/claim.ts';
import { meaningOf } from '../claims/sentence.ts';
import type { Sentence } from '../routine/routine.ts';
import { holds, type Formula, type Measure, type SlotView, type Term } from '../claims/formula.ts';
import { printPile } from '../phrases/blanks/pile.ts';
import type { Layout } from '../pictures/layout.ts';
import { list, placesIn, sayPlaces, sayWhere } from './places.ts';
import { nameTrait, type Trait } from './traits.ts';

/** What an explanation speaks about. */
export interface Scene {
  readonly table: SlotView;
  readonly layout: Layout;
  readonly cards: readonly Card[];
}

// More cards than that are counted, not named.
const MOST_NAMED = 6;

/**
 * How a table falls short of a sentence that is false on it, without a full stop. A claim is explained by its own counts, before they
 * are put together into the shortest equation.
 */
export function explainSentence(sentence: Sentence, exit: Exit, scene: Scene): string {
  const fails = (part: Sentence): boolean => {
    const meaning = meaningOf(part, exit);
    return meaning.ok && !holds(meaning.value.formula, scene.table);
  };
  switch (sentence.says) {
    case 'claim': {
      const meaning = claimById(sentence.claim).meaning(sentence.args, exit);
      return meaning.ok ? explain(meaning.value.formula, scene) : '';
    }
    case 'and': {
      const [first, ...others] = sentence.parts.filter(fails);
      const more = others.length === 0 ? '' : `; ${others.length} more of its parts fail`;
      return first === undefined ? '' : explainSentence(first, exit, scene) + more;
    }
    case 'if':
      return `the condition is met, yet ${explainSentence(sentence.then, exit, scene)}`;
    case 'or':
    case 'not':
    case 'exactly when':
    case 'up to': {
      const meaning = meaningOf(sentence, exit);
      return meaning.ok ? explain(meaning.value.formula, scene) : '';
    }
  }
}

/** The first part of parts that is false: how many more are is said once, of the outermost. */
function firstBroken(formula: Formula, scene: Scene): Formula {
  const broken = formula.is === 'and' ? formula.parts.find((part) => !holds(part, scene.table)) : undefined;
  return broken === undefined ? formula : firstBroken(broken, scene);
}

/** How a table falls short of a formula that is false on it. */
function explain(formula: Formula, scene: Scene): string {
  switch (formula.is) {
    case 'known':
      return 'it speaks of something that is not there';
    case 'and': {
      const broken = formula.parts.filter((part) => !holds(part, scene.table));
      const more = broken.length - 1;
      const rest =
        more <= 0 ? '' : `; it fails ${more === 1 ? 'at one more place' : `at ${more} more places`}`;
      return explain(firstBroken(broken[0], scene), scene) + rest;
    }
    case 'or':
      return `none of its ${formula.parts.length} ways is true: ${sayCards(slotsIn(formula), scene)}`;
    case 'not':
      return `what it denies is true: ${sayCards(slotsIn(formula.part), scene)}`;
    case 'if':
      return `the condition is met, yet ${explain(formula.then, scene)}`;
    case 'exactly when': {
      const [yes, no] = holds(formula.left, scene.table) ? ['first', 'second'] : ['second', 'first'];
      return `the ${yes} half is true and the ${no} is not: ${sayCards(slotsIn(formula), scene)}`;
    }
    case 'judged':
      return sayCards(slotsIn(formula), scene);
    case 'equal':
      return explainSum(formula.terms, scene, sayTotal(formula.total, formula.mod), formula.mod);
    case 'order': {
      const { least, most } = formula;
      const asked =
        least === undefined
          ? `at most ${most}`
          : most === undefined
            ? `at least ${least}`
            : `${least} to ${most}`;
      return explainSum(formula.terms, scene, asked, undefined);
    }
  }
}

function sayTotal(total: number, mod: number | undefined): string {
  if (mod === undefined) return String(total);
  return mod === 2 ? (total % 2 === 0 ? 'an even number' : 'an odd number') : `${total} modulo ${mod}`;
}

function explainSum(terms: readonly Term[], scene: Scene, asked: string, mod: number | undefined): string {
  const slots = [...new Set(terms.map(({ slot }) => slot))];
  const isParity = mod === 2;
  if (slots.length <= (isParity ? MOST_NAMED : 2)) return sayCards(slots, scene);
  const value = terms.reduce((sum, { slot, coef, measure }) => sum + coef * valueOf(measure, slot, scene), 0);
  const measures = [...new Map(terms.map(({ measure }) => [measure.id, measure])).values()];
  const [only] = measures;
  if (measures.length === 1 && terms.every(({ coef }) => coef === 1)) {
    const trait = traitOf(only, scene.cards);
    return `${sayNumber(value, trait)} ${sayWhere(slots, scene.layout)}, not ${asked}`;
  }
  const parts = measures.flatMap((measure) =>
    ([1, -1] as const).flatMap((sign) => {
      const own = terms.filter((term) => term.measure.id === measure.id && Math.sign(term.coef) === sign);
      if (own.length === 0) return [];
      const sum = own.reduce(
        (all, { slot, coef }) => all + Math.abs(coef) * valueOf(measure, slot, scene),
        0,
      );
      const where = sayWhere([...new Set(own.map(({ slot }) => slot))], scene.layout);
      return [`${sayNumber(sum, traitOf(measure, scene.cards))} ${where}`];
    }),
  );
  return list(parts);
}

// `face-up cards`, `hearts`, `sixes`: what has no more words than that also has a singular.
const PLAIN_KIND = /^([\w-]+ )?[\w-]+s$/;

function sayNumber(n: number, { many }: Trait): string {
  return `${n} ${n === 1 && PLAIN_KIND.test(many) ? many.replace(/(?:(?<=x)e)?s$/, '') : many}`;
}

function valueOf(measure: Measure, slot: number, { table }: Scene): number {
  return measure.of(table.card(slot), (bit) => table.bit(slot, bit));
}

function traitOf(measure: Measure, cards: readonly Card[]): Trait {
  return nameTrait(
    {
      bits: measure.bits,
      of: (card, setting) => measure.of(card, (bit) => (setting >> measure.bits.indexOf(bit)) & 1),
    },
    cards,
  );
}

function slotsIn(formula: Formula): number[] {
  switch (formula.is) {
    case 'known':
      return [];
    case 'equal':
    case 'order':
    case 'judged':
      return [...new Set(formula.terms.map(({ slot }) => slot))];
    case 'and':
    case 'or':
      return [...new Set(formula.parts.flatMap(slotsIn))];
    case 'not':
      return slotsIn(formula.part);
    case 'if':
      return [...new Set([...slotsIn(formula.when), ...slotsIn(formula.then)])];
    case 'exactly when':
      return [...new Set([...slotsIn(formula.left), ...slotsIn(formula.right)])];
  }
}

/** The cards in some slots as they lie: `place 3 has 9H, place 4 has 4C^`. */
function sayCards(slots: readonly number[], { table, layout }: Scene): string {
  const sorted = [...slots].sort((a, b) => a - b);
  const places = placesIn(layout);
  const say = (slot: number): string =>
    showCard({
      card: table.card(slot),
      up: table.bit(slot, 'up') as 0 | 1,
      end: table.bit(slot, 'end') as 0 | 1,
    });
  if (sorted.length > MOST_NAMED) {
    const piles = [...new Set(sorted.map((slot) => places[slot].pile))];
    return piles
      .map((pile) => {
        const own = sorted.filter((slot) => places[slot].pile === pile);
        return `${printPile(pile)} has ${own.map(say).join(' ')}`;
      })
      .join(', ');
  }
  return list(sorted.map((slot) => `${sayPlaces([slot], layout)} has ${say(slot)}`));
}
