import { trouble, type Trouble } from '../../src/base/diagnostic.ts';
import { bad, good, type Result } from '../../src/base/result.ts';
import type { Exit } from '../../src/claims/claim.ts';
import { holds } from '../../src/claims/formula.ts';
import { claimById } from '../../src/claims/index.ts';
import type { Sentence } from '../../src/routine/routine.ts';
import { slotsOfTable, tableOf, type Bits, type Table } from './table.ts';

/** Whether something is true of a table. */
export type Test = (table: Table) => boolean;

/** What a sentence says where a performance ends. */
export interface Said {
  readonly test: Test;
  /** It speaks of no card at all. */
  readonly vacuous: boolean;
  /** Of "if ..., then ...": the condition. */
  readonly when?: Test;
}

/** What is said at an exit; a trouble where it makes no sense. */
export type SaidAt = (exit: Exit, bits: Bits) => Result<Said, Trouble>;

/**
 * A sentence judged part by part on the table itself: each claim by its own formula, what joins them by plain logic, and "up to a
 * cut" by cutting the pile. The engine joins and simplifies formulas instead.
 */
export function sentenceAt(sentence: Sentence): SaidAt {
  return (exit, bits) => saidOf(sentence, exit, bits);
}

function saidOf(sentence: Sentence, exit: Exit, bits: Bits): Result<Said, Trouble> {
  switch (sentence.says) {
    case 'claim': {
      const meaning = claimById(sentence.claim).meaning(sentence.args, exit);
      if (!meaning.ok) return meaning;
      const { formula, vacuous } = meaning.value;
      const test: Test = (table) => holds(formula, slotsOfTable(table, exit.cards, bits));
      return good({ test, vacuous: vacuous === true });
    }
    case 'and':
      return joined(sentence.parts, exit, bits, (parts, table) => parts.every((part) => part(table)));
    case 'or':
      return joined(sentence.parts, exit, bits, (parts, table) => parts.some((part) => part(table)));
    case 'not':
      return joined([sentence.part], exit, bits, ([part], table) => !part(table));
    case 'exactly when':
      return joined([sentence.left, sentence.right], exit, bits, ([a, b], table) => a(table) === b(table));
    case 'if': {
      const when = saidOf(sentence.when, exit, bits);
      const then = saidOf(sentence.then, exit, bits);
      if (!when.ok) return when;
      if (!then.ok) return then;
      const test: Test = (table) => !when.value.test(table) || then.value.test(table);
      return good({ test, vacuous: then.value.vacuous, when: when.value.test });
    }
    case 'up to': {
      const pile = meant(sentence.pile, exit);
      if (pile === null) return bad(trouble('which-pile'));
      return joined([sentence.part], exit, bits, ([part], table) =>
        (sentence.by === 'cut' ? cuts(table, pile) : [table, turned(table, pile)]).some(part),
      );
    }
  }
}

/** A combination speaks of nothing when all its parts do. */
function joined(
  sentences: readonly Sentence[],
  exit: Exit,
  bits: Bits,
  join: (parts: readonly Test[], table: Table) => boolean,
): Result<Said, Trouble> {
  const parts: Said[] = [];
  for (const sentence of sentences) {
    const said = saidOf(sentence, exit, bits);
    if (!said.ok) return said;
    parts.push(said.value);
  }
  const tests = parts.map(({ test }) => test);
  return good({ test: (table) => join(tests, table), vacuous: parts.every(({ vacuous }) => vacuous) });
}

/** "The packet" is the only pile there is when none has that name; null when it could be one of several. */
function meant(pile: string, { layout: { names } }: Exit): string | null {
  if (pile !== 'packet' || names.includes(pile)) return pile;
  return names.length > 1 ? null : (names[0] ?? pile);
}

/** The table with a pile's cards laid otherwise. */
function changed(table: Table, pile: string, lay: (cards: readonly number[]) => readonly number[]): Table {
  return tableOf(table.names.map((name, i) => [name, name === pile ? lay(table.piles[i]) : table.piles[i]]));
}

function cuts(table: Table, pile: string): Table[] {
  const size = table.piles[table.names.indexOf(pile)]?.length ?? 0;
  const at = Array.from({ length: Math.max(1, size) }, (_, c) => c);
  return at.map((c) => changed(table, pile, (cards) => [...cards.slice(c), ...cards.slice(0, c)]));
}

/** Sideways: the other order, and every card shows its other side. */
function turned(table: Table, pile: string): Table {
  return changed(table, pile, (cards) => cards.toReversed().map((lies) => lies ^ 1));
}
