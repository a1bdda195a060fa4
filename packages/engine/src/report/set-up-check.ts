import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import { printPile } from '../phrases/blanks/pile.ts';
import { faultsOf, mendingExchange, type SetUpFault } from '../insight/start/faults.ts';
import { withCards } from '../insight/start/set-up-search.ts';
import { constantOf, shareOf, startNeed, type StartNeed } from '../insight/start/start-need.ts';
import { decide } from '../proving/decide.ts';
import type { Limits } from '../proving/question.ts';
import type { Routine } from '../routine/routine.ts';
import { answered, type Asked } from './asked.ts';
import { statementsOf } from './equations.ts';
import { namingOf } from './naming.ts';
import { list, placesIn, sayPairs } from './places.ts';
import { readCards } from './set-up-found.ts';
import { tableData } from './table-data.ts';

/** A card of the packet at its place, 1 on top. */
export interface CardAt {
  readonly pile: string;
  readonly place: number;
  readonly text: string;
}

export interface SetUpFaultData {
  /** The sentence of the ending that is not certain. */
  readonly sentence: string;
  /** What should be so: `the cards at places 1 and 16 differ in colour`. */
  readonly words: string;
  readonly cards: readonly CardAt[];
}

export interface SetUpFaults {
  readonly holds: boolean;
  /** The first that somebody going through the packet from the top can see. */
  readonly first: SetUpFaultData | null;
  /** Equations that are broken. */
  readonly faults: number;
  /** Two cards that would have to change places, where that mends all. */
  readonly mend: string | null;
  readonly words: string;
}

/**
 * Whether cards, named from the top in the words of a set-up, do for the working as they lie. Which way up they lie is as the note's
 * set-up says unless these words say it.
 */
export function setUpFaults(asked: Asked, written: string, limits: Limits): Result<SetUpFaults, Trouble> {
  return answered(asked, limits, ({ text, routine }) => {
    const read = readCards(written, text);
    if (!read.ok) return read;
    const { cards, setUp } = read.value;
    const places = routine.setUp.piles.reduce((sum, pile) => sum + pile.cards.length, 0);
    if (cards.length !== places) return bad(trouble('set-up-other-number', { places, cards: cards.length }));
    const lying = setUp.piles.flatMap((pile) => pile.cards);
    const isSaid = /face|\^|'/.test(written);
    const laid = withCards(routine, cards, isSaid ? lying : undefined);
    const need = startNeed(laid, limits);
    if (need === null || need.leftOut.length > 0) return good(byDeciding(laid, need, limits));
    return good(byEquations(need));
  });
}

function byEquations(need: StartNeed): SetUpFaults {
  const faults = faultsOf(need);
  const [fault] = faults;
  if (fault === undefined)
    return {
      holds: true,
      first: null,
      faults: 0,
      mend: null,
      words: 'The packet is right: as it lies, every sentence of the ending is certain.',
    };
  const first = faultData(fault, need);
  const isAlone = need.layout.names.length === 1;
  const say = (cards: readonly CardAt[]): string => list(cards.map((card) => sayCardAt(card, isAlone)));
  const exchange = mendingExchange(need);
  const mend = exchange === null ? null : `Exchange ${say(cardsAt(exchange, need))}, and all is right.`;
  const here =
    first.cards.length === 0
      ? ''
      : ` There ${first.cards.length === 1 ? 'lies' : 'lie'} ${say(first.cards)}.`;
  return {
    holds: false,
    first,
    faults: faults.length,
    mend,
    words: `First fault: for "${first.sentence}", ${first.words}, which is not so.${here}${mend === null ? '' : ` ${mend}`}`,
  };
}

function faultData(fault: SetUpFault, need: StartNeed): SetUpFaultData {
  const { ending, problem, row, slots } = fault;
  const naming = namingOf(problem, need.starts.universe, need.graph);
  const said =
    asTheyLie(fault, need) ??
    statementsOf([row], need.layout, naming)
      .map(({ words }) => words)
      .join('; ');
  return { sentence: ending.text, words: said, cards: cardsAt(slots, need) };
}

/**
 * What two cards should have in common or not, lying as they do: where both lie face down, "face the same way exactly where they are
 * alike in colour" is "are alike in colour". Null where it is no such thing.
 */
function asTheyLie({ problem, row, slots }: SetUpFault, need: StartNeed): string | null {
  const [line] = need.lines.filter((one) => one.row === row);
  if (slots.length !== 2 || problem.members.length !== 1 || problem.p !== 2) return null;
  const cards = need.starts.universe;
  const reads = slots.map((slot) => cards.map((card) => shareOf(line, slot, card, need.bits[slot])));
  const off = reads[0][0] ^ reads[1][0];
  if (reads[0].some((value, i) => (value ^ reads[1][i]) !== off)) return null;
  const attribute = [...new Set(cards.flatMap((card) => Object.keys(card.attributes)))].find((name) => {
    const pairs = new Set(cards.map((card, i) => `${card.attributes[name]} ${reads[0][i]}`));
    const values = new Set(cards.map((card) => card.attributes[name]));
    return values.size === 2 && pairs.size === 2;
  });
  if (attribute === undefined) return null;
  const how = (constantOf(line) ^ off) === 0 ? 'be alike' : 'differ';
  return `the cards at ${sayPairs([[slots[0], slots[1]]], need.layout)} must ${how} in ${attribute} as they lie`;
}

function cardsAt(slots: readonly number[], { layout, starts, graph }: StartNeed): CardAt[] {
  const places = placesIn(layout);
  const texts = tableData(starts.base, layout, graph).piles.flatMap(({ cards }) =>
    cards.map(({ text }) => text),
  );
  return [...slots].sort((a, b) => a - b).map((slot) => ({ ...places[slot], text: texts[slot] }));
}

function sayCardAt({ pile, place, text }: CardAt, isAlone: boolean): string {
  return isAlone ? `${text} at place ${place}` : `${text} at place ${place} of ${printPile(pile)}`;
}

/** Where equations do not tell everything, the whole routine is decided with these cards. */
function byDeciding(routine: Routine, need: StartNeed | null, limits: Limits): SetUpFaults {
  if (need !== null) {
    const told = byEquations(need);
    if (!told.holds) return told;
  }
  const { verdict, sentences } = decide(routine, limits);
  const fails = sentences.find((one) => one.verdict === verdict);
  if (verdict === 'proved')
    return {
      holds: true,
      first: null,
      faults: 0,
      mend: null,
      words: 'The packet is right: with it every sentence of the ending was proved.',
    };
  const sentence = fails?.ending.text ?? '';
  return {
    holds: false,
    first: { sentence, words: '', cards: [] },
    faults: 1,
    mend: null,
    words: `With this packet "${sentence}" is ${verdict}; which card is wrong cannot be told, since it is no equation or the working looks at cards.`,
  };
}
