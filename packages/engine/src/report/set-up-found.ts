import { trouble, type Trouble } from '../base/diagnostic.ts';
import { bad, good, type Result } from '../base/result.ts';
import type { Card } from '../cards/card.ts';
import { looksOf, type PacketLooks } from '../insight/start/packet-looks.ts';
import { setUpsFrom, type FoundSetUp, type SoughtFor } from '../insight/start/set-up-search.ts';
import { compileInside } from '../note/compile.ts';
import { read as readNote } from '../note/read.ts';
import { printSetUp, readSetUp, type SetUpReading } from '../note/setup.ts';
import type { Limits } from '../proving/question.ts';
import { answered, type Asked } from './asked.ts';
import { noteWith, setUpLine } from './set-up-line.ts';
import { fromNewPack, fromShuffled, type StackingSteps } from './set-up-steps.ts';
import { tableData, type TableData } from './table-data.ts';
import { counted } from './words.ts';

/** One set-up that was found and proved. */
export interface FoundSetUpData {
  readonly for: SoughtFor;
  /** `the most innocent to look at`. */
  readonly label: string;
  /** What stands behind the first pile's name in a set-up; null where these cards have no words there. */
  readonly line: string | null;
  readonly table: TableData;
  /** The whole note with this set-up; empty where its lines cannot be replaced. */
  readonly note: string;
  readonly looks: PacketLooks & { readonly words: string };
  readonly fromNewPack: StackingSteps | null;
  readonly fromShuffled: StackingSteps;
}

export interface SetUpsFound {
  /** The most innocent one first. */
  readonly found: readonly FoundSetUpData[];
  readonly words: string;
}

const LABELS: Readonly<Record<SoughtFor, string>> = {
  looks: 'the most innocent to look at',
  'new pack': 'quick to make from new-pack order',
  shuffled: 'quick to make from a shuffled packet',
};

/**
 * Set-ups for the working among the cards at hand, in the words of a set-up: `full pack`, `A-8 of hearts, A-8 of spades`. Each was proved
 * as a routine of its own. None: why.
 */
export function setUpFound(asked: Asked, hand: string, limits: Limits): Result<SetUpsFound, Trouble> {
  return answered(asked, limits, ({ text, routine }) => {
    const read = readCards(hand, text);
    if (!read.ok) return read;
    const found = setUpsFrom(routine, read.value.cards, limits);
    if (!found.ok) return found;
    const data = found.value.map((one) => foundData(one, text));
    return good({
      found: data,
      words: `${counted(data.length, 'set-up')} found among ${counted(read.value.cards.length, 'card')} and proved, every sentence of the ending for every choice.`,
    });
  });
}

/**
 * Cards in the words of a set-up, or what is wrong with them. Their order need not be said. Attributes of the note's own are theirs too,
 * as far as its set-up says so of them.
 */
export function readCards(written: string, note: string): Result<SetUpReading, Trouble> {
  const own = ownLines(note);
  const read = (text: string, lines: readonly string[]): SetUpReading =>
    readSetUp([`packet: ${text}`, ...lines].map((line) => ({ text: line, from: 0 })));
  const faultOf = ({ diagnostics }: SetUpReading) => diagnostics.find(({ severity }) => severity === 'error');
  const ways = [
    [written, own],
    [`${written}, in any order`, own],
    // The note may speak of cards that are not at hand.
    [written, []],
    [`${written}, in any order`, []],
  ] as const;
  const readings = ways.map(([text, lines]) => read(text, lines));
  const reading = readings.find((one) => faultOf(one) === undefined);
  if (reading === undefined) {
    const fault = faultOf(readings[2]);
    return bad(trouble(fault?.code ?? 'set-up-hand-empty', fault?.facts));
  }
  return reading.cards.length === 0 ? bad(trouble('set-up-hand-empty')) : good(reading);
}

/** The lines of a note's set-up that give attributes of its own. */
function ownLines(note: string): string[] {
  const { setUp } = compileInside(readNote(note), false);
  return printSetUp({ lines: (setUp?.lines ?? []).filter(({ is }) => is === 'attribute') });
}

function foundData(found: FoundSetUp, text: string): FoundSetUpData {
  const { routine, decision, cards } = found;
  const { graph, starts } = decision;
  return {
    for: found.for,
    label: LABELS[found.for],
    line: setUpLine(routine, routine.setUp.piles[0].name),
    table: tableData(starts.base, graph.locations[graph.start].layout, graph),
    note: noteWith(text, routine),
    looks: { ...looksOf(cards), words: sayLooks(cards) },
    fromNewPack: fromNewPack(found),
    fromShuffled: fromShuffled(found),
  };
}

function sayLooks(cards: readonly Card[]): string {
  const { changes, neighbours, colourRun, suitRun, twins, steps } = looksOf(cards);
  const parts = [
    `the colour changes at ${changes} of ${neighbours} places`,
    `the longest run of a colour is ${colourRun}, of a suit ${suitRun}`,
    `${twins} ${twins === 1 ? 'pair' : 'pairs'} of neighbours of one value`,
    `${steps} in sequence`,
  ];
  return colourRun === 0 ? 'nothing is known of the faces' : parts.join('; ');
}
