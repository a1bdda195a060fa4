import type { Trouble } from '../../src/base/diagnostic.ts';
import { good, type Result } from '../../src/base/result.ts';
import type { Exit } from '../../src/claims/claim.ts';
import { holds } from '../../src/claims/formula.ts';
import { claimById } from '../../src/claims/index.ts';
import { meaningOf } from '../../src/claims/sentence.ts';
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

/** What is said at an exit, where these are the cards. */
export type SaidAt = (exit: Exit, bits: Bits) => Result<Said, Trouble>;

/**
 * A sentence judged part by part on the table itself: each claim by its own formula, what joins them by plain logic, and "up to a
 * cut" by cutting the pile. The engine joins and simplifies formulas instead, and asks whether the sentence makes sense.
 */
export function sentenceAt(sentence: Sentence): SaidAt {
  return (exit, bits) => {
    const meaning = meaningOf(sentence, exit);
    if (!meaning.ok) return meaning;
    const said = { test: testOf(sentence, exit, bits), vacuous: meaning.value.vacuous === true };
    return good(sentence.says === 'if' ? { ...said, when: testOf(sentence.when, exit, bits) } : said);
  };
}

function testOf(sentence: Sentence, exit: Exit, bits: Bits): Test {
  const of = (part: Sentence): Test => testOf(part, exit, bits);
  switch (sentence.says) {
    case 'claim': {
      const meaning = claimById(sentence.claim).meaning(sentence.args, exit);
      // meaningOf has been asked already and would have passed this on.
      if (!meaning.ok) throw new Error(`a senseless claim: ${meaning.error.code}`);
      const { formula } = meaning.value;
      return (table) => holds(formula, slotsOfTable(table, exit.cards, bits));
    }
    case 'and': {
      const parts = sentence.parts.map(of);
      return (table) => parts.every((part) => part(table));
    }
    case 'or': {
      const parts = sentence.parts.map(of);
      return (table) => parts.some((part) => part(table));
    }
    case 'not': {
      const part = of(sentence.part);
      return (table) => !part(table);
    }
    case 'if': {
      const [when, then] = [of(sentence.when), of(sentence.then)];
      return (table) => !when(table) || then(table);
    }
    case 'exactly when': {
      const [left, right] = [of(sentence.left), of(sentence.right)];
      return (table) => left(table) === right(table);
    }
    case 'up to': {
      const part = of(sentence.part);
      const { by, pile } = sentence;
      return (table) => (by === 'cut' ? cuts(table, pile) : [table, turned(table, pile)]).some(part);
    }
  }
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
