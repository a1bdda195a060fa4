import type { AttributeValue } from '../cards/card.ts';
import type { Kind, KindTest } from '../phrases/values.ts';
import { boundsOf } from './bounds.ts';
import type { Exit } from './claim.ts';
import { and, FALSE, not, or, TRUE, type Formula, type Measure } from './formula.ts';
import { count } from './kinds.ts';
import { bitMeasure, digits } from './measures.ts';
import { equals, plus, total } from './sums.ts';

interface Trait {
  readonly attributes: readonly string[];
  readonly bits: readonly string[];
}

/** What a relation looks at: `mates` are alike in value and colour, `halves` are of one card, `facing` and `orientation` are how a card lies. */
function traitOf(relation: string): Trait {
  switch (relation) {
    case 'facing':
      return { attributes: [], bits: ['up'] };
    case 'orientation':
      return { attributes: [], bits: ['end'] };
    case 'mates':
      return { attributes: ['value', 'colour'], bits: [] };
    case 'halves':
      return { attributes: ['rank', 'suit'], bits: [] };
    default:
      return { attributes: [relation], bits: [] };
  }
}

export function attributesIn(relation: string): readonly string[] {
  return traitOf(relation).attributes;
}

/** 0/1 measures that together tell the values apart. */
export function digitsOf(relation: string, exit: Exit): Measure[] {
  const { attributes, bits } = traitOf(relation);
  const all = [...attributes.flatMap((attribute) => digits(attribute, exit.cards)), ...bits.map(bitMeasure)];
  return all.filter((digit) => boundsOf(digit, exit.cards)[1] > 0);
}

/** One kind for each value (each combination of values) that a card may have. */
export function kindsOf(relation: string, exit: Exit): Kind[] {
  const { attributes, bits } = traitOf(relation);
  if (bits.length > 0)
    return [
      { tests: [{ test: 'bit', bit: bits[0] }] },
      { tests: [{ test: 'bit', bit: bits[0], not: true }] },
    ];
  const found = new Map<string, Kind>();
  for (const card of exit.cards) {
    // The claim has made sure that every card has these attributes.
    const values = attributes.map((attribute) => card.attributes[attribute] as AttributeValue);
    const tests = attributes.map((attribute, i): KindTest => ({
      test: 'attribute',
      attribute,
      values: [values[i]],
    }));
    found.set(JSON.stringify(values), { tests });
  }
  return [...found.values()];
}

/** All cards of the slots have the same value: one equation a digit for each two that follow one another. */
export function allAgree(relation: string, slots: readonly number[], exit: Exit): Formula {
  const measures = digitsOf(relation, exit);
  return and(
    slots.slice(1).flatMap((slot, i) => measures.map((digit) => sumOfTwo(digit, slots[i], slot, 0, exit))),
  );
}

function sumOfTwo(digit: Measure, a: number, b: number, wanted: 0 | 1, exit: Exit): Formula {
  return equals(plus(total(digit, [a], exit), total(digit, [b], exit)), wanted, 2);
}

/** Two cards have different values: one equation where only two values occur. */
export function twoDiffer(relation: string, a: number, b: number, exit: Exit): Formula {
  const measures = digitsOf(relation, exit);
  if (measures.length === 0) return FALSE;
  if (measures.length === 1) return sumOfTwo(measures[0], a, b, 1, exit);
  return not(allAgree(relation, [a, b], exit));
}

/** No two cards of the slots have the same value. */
export function allDiffer(relation: string, slots: readonly number[], exit: Exit): Formula {
  if (slots.length < 2) return TRUE;
  if (slots.length === 2) return twoDiffer(relation, slots[0], slots[1], exit);
  const values = kindsOf(relation, exit).length;
  if (slots.length > values) return FALSE;
  if (slots.length === values) return oneOfEach(relation, slots, exit);
  return and(slots.flatMap((b, i) => slots.slice(0, i).map((a) => twoDiffer(relation, a, b, exit))));
}

/**
 * Every value once. As many odd numbers as there are cards can only add up to the number of cards when each is 1, so it is
 * enough that every value occurs an odd number of times.
 */
export function oneOfEach(relation: string, slots: readonly number[], exit: Exit): Formula {
  const kinds = kindsOf(relation, exit);
  if (kinds.length !== slots.length) return FALSE;
  return and(kinds.map((kind) => equals(count(kind, slots, exit), 1, 2)));
}

/** All cards of the slots that are of a kind lie the same way; of all cards: neighbours' bits add up to an even number. */
export function sameWay(bit: 'up' | 'end', kind: Kind, slots: readonly number[], exit: Exit): Formula {
  if (kind.tests.length === 0) return allAgree(bit === 'up' ? 'facing' : 'orientation', slots, exit);
  const none = (isSet: boolean): Formula => {
    const test: KindTest = isSet ? { test: 'bit', bit } : { test: 'bit', bit, not: true };
    return and(slots.map((slot) => equals(count({ tests: [...kind.tests, test] }, [slot], exit), 0, 2)));
  };
  return or([none(true), none(false)]);
}
