import type { Trouble } from '../base/diagnostic.ts';
import { good, type Result } from '../base/result.ts';
import { countPackets } from '../insight/start/set-up-search.ts';
import { startNeed, type StartNeed } from '../insight/start/start-need.ts';
import type { Decision } from '../proving/decision.ts';
import type { Limits } from '../proving/question.ts';
import type { Ending, Routine } from '../routine/routine.ts';
import { handledIn } from '../structures/followed.ts';
import { recognise } from '../structures/recognise.ts';
import { fromNeed } from '../structures/slot-vectors.ts';
import type { Subject } from '../structures/subject.ts';
import { subjectsFor } from '../structures/subjects.ts';
import { answered, type Asked } from './asked.ts';
import { namingOf } from './naming.ts';
import { neededData, structureData, type NeededData, type StructureData } from './structures.ts';
import { counted, grouped } from './words.ts';

/** What one sentence of the ending asks of the packet when the working begins. */
export interface SentenceNeed {
  readonly text: string;
  /** Null where it cannot be told. */
  readonly needs: NeededData | null;
  /** The same for the cards alone, lying as the set-up has them; empty where it says nothing else. */
  readonly asLaid: readonly StructureData[];
  /** Why it cannot be told, or that nothing is asked; empty where `needs` says it all. */
  readonly why: string;
}

export interface SetUpCount {
  /** Orders of the note's cards that make every sentence certain: a string of digits. */
  readonly orders: string;
  /** All orders of them. */
  readonly all: string;
  /** Ways to lay them out when cards that are alike for the endings are not told apart. */
  readonly patterns: string;
  readonly words: string;
}

/** What the start must satisfy, sentence by sentence, and how many packets do. */
export interface SetUpReport {
  readonly places: number;
  readonly sentences: readonly SentenceNeed[];
  /** Null where a sentence is no equation, where the set-up leaves open what cards there are, or where counting takes too much. */
  readonly count: SetUpCount | null;
  readonly words: string;
}

const LOOKS =
  'The working looks at cards or can get stuck, so what the start must be like cannot be worked back from the ending.';
const NO_EQUATION = 'This sentence is no equation: what it needs at the start cannot be worked back.';
const ANY = 'Any order of these cards will do: the note was proved for all of them.';
const OF_ORDER =
  'It compares with the order in which the cards begin: it holds for every order of them or for none.';

/** What the start must satisfy for every sentence of the ending to be certain, whatever cards the note's own set-up lays. */
export function setUpReport(asked: Asked, limits: Limits): Result<SetUpReport, Trouble> {
  return answered(asked, limits, ({ routine, decision }) => {
    const need = startNeed(routine, limits);
    const places = routine.setUp.piles.reduce((sum, { cards }) => sum + cards.length, 0);
    if (need === null) {
      const sentences = routine.endings.map(({ text }) => ({ text, needs: null, asLaid: [], why: LOOKS }));
      return good({ places, sentences, count: null, words: isProvedForAny(routine, decision) ? ANY : LOOKS });
    }
    const sentences = routine.endings.map((ending) => sentenceNeed(ending, need));
    const isOpen = routine.setUp.freedoms.some(({ free }) => free === 'attribute');
    const count = need.leftOut.length > 0 || isOpen ? null : countOf(need, limits);
    const words =
      sentences.every(({ needs }) => needs === null) && isProvedForAny(routine, decision)
        ? ANY
        : sayAll(sentences, count, places);
    return good({ places, sentences, count, words });
  });
}

/** Whether the set-up leaves the order of every pile open and the note is proved all the same. */
function isProvedForAny({ setUp }: Routine, { verdict }: Decision): boolean {
  const isOpen = ({ name, cards }: Routine['setUp']['piles'][number]): boolean =>
    setUp.freedoms.some((one) => one.free === 'order' && one.pile === name && one.count === cards.length);
  return verdict === 'proved' && setUp.piles.every(isOpen);
}

function sentenceNeed(ending: Ending, need: StartNeed): SentenceNeed {
  const { text } = ending;
  if (need.leftOut.includes(ending)) return { text, needs: null, asLaid: [], why: NO_EQUATION };
  const { graph, region, starts, layout } = need;
  const subjects = subjectsFor(starts.universe, handledIn(graph, region, starts));
  const context = { graph, cards: starts.universe, subjects };
  const families = need.families.filter((family) => family.ending === ending);
  const needs = neededData(
    families.map(({ problem, rows }) => ({
      problem,
      rows,
      naming: namingOf(problem, starts.universe, graph),
    })),
    layout,
    context,
  );
  const asLaid = families.flatMap((family) => laidStructures(family, need, subjects));
  if (need.ofOrder.includes(ending)) return { text, needs, asLaid, why: OF_ORDER };
  return { text, needs, asLaid, why: needs.equations === 0 ? 'Any order of these cards will do.' : '' };
}

/**
 * Structures of the cards alone that the equations come to, the faces being what they are: where all lie face down, the turnover order
 * is an alternation. None where faces do not matter, or where cards are not of two classes.
 */
function laidStructures(
  { problem, rows }: StartNeed['families'][number],
  { bits, starts, layout }: StartNeed,
  subjects: readonly Subject[],
): StructureData[] {
  const { p, d, m, width, members, space } = problem;
  if (p !== 2 || d !== 1 || m !== 1 || members.length > 1 || !space.bits.includes('up')) return [];
  const read = (slot: number): number[] => starts.universe.map((card) => space.valuesOf(card, bits[slot])[0]);
  const first = read(0);
  // How a card lies must change what is read on all cards alike.
  const turned = bits.map((_, slot) => read(slot)[0] ^ first[0]);
  if (bits.some((_, slot) => read(slot).some((value, i) => (value ^ first[i]) !== turned[slot]))) return [];
  const subject = subjects.find(({ is, measures, joinsFacing }) => {
    if (is !== 'class' || measures.length !== 1 || measures[0].bits.length > 0 || joinsFacing) return false;
    const values = starts.universe.map((card) => measures[0].of(card, () => 0));
    return new Set(values.map((value, i) => value ^ first[i])).size === 1;
  });
  if (subject === undefined) return [];
  const fixed = width - m;
  const moved = rows.map((row) => {
    const off = turned.reduce((sum, shift, slot) => sum ^ (row[slot] & shift), 0);
    return row.map((value, i) => (i === fixed ? value ^ off : value));
  });
  const reading = { columns: [1], constant: 0 };
  return recognise(fromNeed(problem, moved, [reading]), layout, subject).map((found) =>
    structureData(found, layout),
  );
}

function countOf(need: StartNeed, limits: Limits): SetUpCount | null {
  const found = countPackets(need, limits);
  if (found === null) return null;
  const n = need.bits.length;
  let all = 1n;
  for (let i = 2; i <= n; i++) all *= BigInt(i);
  const { orders, patterns } = found;
  return {
    orders: String(orders),
    all: String(all),
    patterns: String(patterns),
    words: sayCount(orders, all, n),
  };
}

function sayCount(orders: bigint, all: bigint, n: number): string {
  const cards = counted(n, 'card');
  if (orders === 0n) return `None of the ${grouped(all)} orders of these ${cards} will do.`;
  if (orders === all) return `All ${grouped(all)} orders of these ${cards} will do.`;
  const share = all / orders;
  const one = share > 1n ? `, one in ${grouped(share)}` : '';
  return `${grouped(orders)} of the ${grouped(all)} orders of these ${cards} will do${one}.`;
}

function sayAll(sentences: readonly SentenceNeed[], count: SetUpCount | null, places: number): string {
  const asks = sentences.filter(({ needs }) => needs !== null && needs.equations > 0);
  const untold = sentences.filter(({ needs }) => needs === null).length;
  const open =
    untold === 0 ? '' : ` Of ${counted(untold, 'sentence')} nothing can be said here, for it is no equation.`;
  if (asks.length === 0)
    return untold === sentences.length
      ? 'What the start must be like cannot be worked back from the ending: no sentence is an equation.'
      : `Nothing is asked of the order of the ${counted(places, 'card')}.${open}`;
  const many = count?.words ?? (untold > 0 ? '' : 'How many packets will do could not be counted.');
  return `${counted(asks.length, 'sentence')} of the ending ${asks.length === 1 ? 'asks' : 'ask'} something of the start. ${many}${open}`.trim();
}
