import type { Layout } from '../pictures/layout.ts';
import type { Equation } from './equation.ts';
import { grouped } from './grouped.ts';
import { sayPairs, sayPlaces, sayWhere } from './places.ts';
import { sayEquation } from './say-equation.ts';
import type { Statement } from './statement.ts';
import type { Trait } from './traits.ts';

/** Equations that say the same of different places, taken together; the others each by itself. */
export function groupEquations(equations: readonly Equation[], layout: Layout): Statement[] {
  const traits = [...new Set(equations.flatMap(({ terms }) => terms.map(({ trait }) => trait)))];
  const groups = grouped(equations, (equation) => {
    const trait = onlyTrait(equation);
    const index = trait === undefined ? -1 : traits.indexOf(trait);
    if (trait !== undefined && isAlike(equation, trait)) return `alike ${index}`;
    if (trait !== undefined && equation.terms.every(({ coef }) => coef === 1))
      return `sum ${index} ${equation.terms.length} ${equation.total} ${equation.whole}`;
    return `alone ${equations.indexOf(equation)}`;
  });
  return groups.flatMap((group): Statement[] => {
    const trait = onlyTrait(group[0]);
    if (trait !== undefined && isAlike(group[0], trait)) return alike(group, trait, layout);
    if (group.length === 1 || trait === undefined)
      return group.map((equation) => ({ words: sayEquation(equation, layout), equations: [equation] }));
    return [{ words: sayTogether(group, trait, layout), equations: group }];
  });
}

function onlyTrait({ terms }: Equation): Trait | undefined {
  const [first] = terms;
  return terms.every(({ trait }) => trait === first.trait) ? first?.trait : undefined;
}

/** As much here as there, one card each: the two are alike. */
function isAlike({ terms, total }: Equation, { isYesNo }: Trait): boolean {
  return isYesNo && total === 0 && terms.length === 2 && terms[0].coef === -terms[1].coef;
}

function alike(group: readonly Equation[], trait: Trait, layout: Layout): Statement[] {
  const sets: { slots: Set<number>; equations: Equation[] }[] = [];
  for (const equation of group) {
    const slots = equation.terms.map(({ slot }) => slot);
    const touched = sets.filter((set) => slots.some((slot) => set.slots.has(slot)));
    const joined = { slots: new Set(slots), equations: [equation] };
    for (const set of touched) {
      set.slots.forEach((slot) => joined.slots.add(slot));
      joined.equations.push(...set.equations);
      sets.splice(sets.indexOf(set), 1);
    }
    sets.push(joined);
  }
  return sets.map(({ slots, equations }) => ({
    words: `the cards at ${sayPlaces([...slots], layout)} are alike in being ${trait.one}`,
    equations,
  }));
}

/** Equations with one trait, as many places, and the same total. */
function sayTogether(group: readonly Equation[], trait: Trait, layout: Layout): string {
  const [{ total, terms, whole, p }] = group;
  const sets = group.map((equation) => equation.terms.map(({ slot }) => slot)).sort((a, b) => a[0] - b[0]);
  const modulo = whole ? '' : `, counted modulo ${p}`;
  if (terms.length === 1 && trait.isYesNo && (total === 0 || total === 1)) {
    const where = sayWhere(sets.flat(), layout);
    return total === 1 ? `the cards ${where} are ${trait.are}` : `none of the cards ${where} is ${trait.one}`;
  }
  const places =
    terms.length === 2
      ? sayPairs(
          sets.map(([a, b]) => [a, b] as const),
          layout,
        )
      : sets.map((slots) => sayPlaces(slots, layout)).join('; ');
  if (!trait.isYesNo) return `${trait.many} at each of these come to ${total}: ${places}${modulo}`;
  return `${total} ${total === 1 ? `is ${trait.one}` : `are ${trait.are}`} at each of these: ${places}${modulo}`;
}
