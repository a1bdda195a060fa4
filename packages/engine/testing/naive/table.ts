import type { Card } from '../../src/cards/card.ts';
import type { SlotView } from '../../src/claims/formula.ts';
import type { TableView } from '../../src/moves/move.ts';
import type { Action, Carry, Mark } from '../../src/pictures/actions.ts';
import type { Layout } from '../../src/pictures/layout.ts';

/**
 * A table with real cards on it: every card told apart, its bits beside it. Nothing here knows of slots that are carried
 * along, of permutations or of equations: cards are lifted out of one list and put into another.
 */
export interface Table {
  /** Names of the piles that have cards, sorted. */
  readonly names: readonly string[];
  /** For each of them its cards, top first: the card's id above its bits. */
  readonly piles: readonly (readonly number[])[];
}

// The low sixteen bits of a lying card are its bits, and what is above them is the card.
const BITS = 16;

/** Which bit of a lying card stands for which word; grows as words are met. */
export class Bits {
  private readonly names = ['up', 'end'];

  mask(bit: string): number {
    let at = this.names.indexOf(bit);
    if (at < 0) at = this.names.push(bit) - 1;
    if (at >= BITS) throw new Error(`too many kinds of marks: ${this.names.join(' ')}`);
    return 1 << at;
  }
}

export function lying(card: number, up: number, end: number): number {
  return (card << BITS) | up | (end << 1);
}

export function cardOf(lies: number): number {
  return lies >> BITS;
}

export function bitsOf(lies: number): number {
  return lies & 0xffff;
}

export function tableOf(piles: Iterable<readonly [string, readonly number[]]>): Table {
  const kept = [...piles].filter(([, cards]) => cards.length > 0);
  kept.sort(([a], [b]) => (a < b ? -1 : 1));
  return { names: kept.map(([name]) => name), piles: kept.map(([, cards]) => cards) };
}

/** The table after the actions, done one after the other. Throws when an action speaks of cards that are not there. */
export function act(table: Table, actions: readonly Action[], bits: Bits): Table {
  if (actions.length === 0) return table;
  const names = [...table.names];
  const piles = table.piles.map((cards) => [...cards]);
  const pile = (name: string): number[] => {
    let at = names.indexOf(name);
    if (at < 0) {
      at = names.push(name) - 1;
      piles.push([]);
    }
    return piles[at];
  };
  for (const action of actions) {
    if (action.count === 0) continue;
    const source = pile(action.do === 'carry' ? action.from : action.pile);
    if (action.count < 0 || action.at < 0 || action.at + action.count > source.length)
      throw new Error(`${JSON.stringify(action)} with ${source.length} cards there`);
    if (action.do === 'carry') carryOver(action, source, pile(action.to));
    else putMarks(action, source, bits.mask(action.bit));
  }
  return tableOf(names.map((name, i) => [name, piles[i]]));
}

function carryOver(action: Carry, source: number[], target: number[]): void {
  const lifted = source.splice(action.at, action.count);
  // Turning over upsets the order and the sides; so does reversing the order alone, but for the sides.
  if (action.reversed === true) lifted.reverse();
  if (action.turned !== undefined) lifted.reverse();
  for (let i = 0; i < lifted.length; i++) {
    if (action.turned !== undefined) lifted[i] ^= 1;
    if (action.turned === 'end') lifted[i] ^= 2;
    if (action.spun === true) lifted[i] ^= 2;
  }
  if (action.into < 0 || action.into > target.length)
    throw new Error(`${JSON.stringify(action)} with ${target.length} cards there`);
  target.splice(action.into, 0, ...lifted);
}

function putMarks(action: Mark, cards: number[], mask: number): void {
  for (let i = action.at; i < action.at + action.count; i++) {
    if (action.op === 'toggle') cards[i] ^= mask;
    else if (action.op === 'set') cards[i] |= mask;
    else cards[i] &= ~mask;
  }
}

export function layoutOfTable(table: Table): Layout {
  return { names: table.names, sizes: table.piles.map((cards) => cards.length) };
}

/** Two tables have the same key exactly when every card lies in the same place in the same way. */
export function tableKey(table: Table): string {
  let key = '';
  for (let i = 0; i < table.names.length; i++) {
    key += `${table.names[i]}:`;
    for (const lies of table.piles[i]) key += String.fromCharCode(32 + cardOf(lies), 32 + bitsOf(lies));
    key += '\n';
  }
  return key;
}

/** The table as a claim's formula reads it: slots count through the piles in order of their names. */
export function slotsOfTable(table: Table, cards: readonly Card[], bits: Bits): SlotView {
  const all = table.piles.flat();
  return {
    card: (slot) => cards[cardOf(all[slot])],
    bit: (slot, bit) => ((bitsOf(all[slot]) & bits.mask(bit)) === 0 ? 0 : 1),
  };
}

/** The table as a move that looks at cards sees it. */
export function seenTable(table: Table, cards: readonly Card[], bits: Bits): TableView {
  const at = (pile: string, place: number): number => {
    const lies = table.piles[table.names.indexOf(pile)]?.[place];
    if (lies === undefined) throw new Error(`a look at place ${place} of ${pile}, where no card lies`);
    return lies;
  };
  return {
    layout: layoutOfTable(table),
    cardAt: (pile, place) => cards[cardOf(at(pile, place))],
    bitAt: (pile, place, bit) => ((bitsOf(at(pile, place)) & bits.mask(bit)) === 0 ? 0 : 1),
  };
}

/** For messages: card names from the top, `^` face up, `'` ends exchanged. */
export function printTable(table: Table, cards: readonly Card[]): string {
  return table.names
    .map((name, i) => {
      const list = table.piles[i].map((lies) => {
        const of = bitsOf(lies);
        return `${cards[cardOf(lies)].name}${of & 1 ? '^' : ''}${of & 2 ? "'" : ''}${of > 3 ? `+${of >> 2}` : ''}`;
      });
      return `${name}: ${list.join(' ')}`;
    })
    .join(' | ');
}
