import { Budget } from '../base/budget.ts';
import { diagnostic, type Diagnostic, type Severity } from '../base/diagnostic.ts';
import type { Card } from '../cards/card.ts';
import type { Names } from '../phrases/values.ts';
import type { Ending, Routine, SetUp } from '../routine/routine.ts';
import { secretUses } from '../routine/secrets.ts';
import { ClauseReader } from './clause.ts';
import { readEndings } from './endings.ts';
import { withoutEchoes } from './echoes.ts';
import { explain, unexplained } from './explain.ts';
import { withFixes } from './fixes.ts';
import { MOST_SUGGESTED, MOST_TOLD, MOST_WORK } from './limits.ts';
import type { Note } from './note.ts';
import { isConfirmed, orderTaken, readingOf } from './readings.ts';
import { NO_NAMES } from './names.ts';
import type { Print, TakenReading } from './outcome.ts';
import type { OutlineItem } from './outline.ts';
import { patterTroubles } from './patter.ts';
import { readSetUp, type SetUpReading } from './setup.ts';
import { setUpLines } from './set-up-lines.ts';
import { readWorking } from './working.ts';

/** A word with two meanings, how it was taken, and whether the note says that this is meant. */
export interface CompiledReading extends TakenReading {
  readonly confirmed: boolean;
}

/** A note understood as far as it can be. */
export interface Compiled {
  /** Absent where an error stands in the way. */
  readonly routine?: Routine;
  /** In the order of the text. */
  readonly diagnostics: readonly Diagnostic[];
  readonly readings: readonly CompiledReading[];
  readonly outline: readonly OutlineItem[];
}

/** What `format` needs besides. */
export interface CompiledInside {
  readonly compiled: Compiled;
  readonly steps: Routine['steps'];
  readonly endings: readonly Ending[];
  /** The first paragraphs that were read, one for each line of the set-up. */
  readonly lines: readonly { readonly from: number; readonly to: number }[];
  readonly prints: readonly Print[];
  readonly setUp: SetUpReading | null;
}

export function compile(note: Note): Compiled {
  return compileInside(note).compiled;
}

/** `near` is whether sentences near to those not understood are searched for, which takes most of the time. */
export function compileInside(note: Note, near = true): CompiledInside {
  const work = new Budget(MOST_WORK);
  const diagnostics: Diagnostic[] = [...note.diagnostics];
  const add = (more: readonly Diagnostic[]): void => more.forEach((one) => diagnostics.push(one));
  const start = { from: 0, to: 0 };
  const refused = note.diagnostics.some(({ code }) => code.startsWith('note-too-'));

  const lines = note.setUp === null ? null : setUpLines(note.setUp);
  if (lines === null && !refused) add([diagnostic('no-set-up', note.working?.heading.range ?? start)]);
  if (lines !== null) add(lines.diagnostics);
  const setUp = lines === null || lines.pieces.length === 0 ? null : readSetUp(lines.pieces);
  const orders = (setUp?.diagnostics ?? []).flatMap((one) => orderTaken(one) ?? []);
  if (setUp !== null) add(setUp.diagnostics.filter((one) => orderTaken(one) === null));

  let names = namesOf(setUp);
  let steps: Routine['steps'] = [];
  let outline: readonly OutlineItem[] = [];
  let taken: readonly TakenReading[] = [];
  const prints: Print[] = [];
  if (note.working === null) {
    if (!refused) add([diagnostic('no-working', note.setUp?.heading.range ?? start)]);
  } else {
    const read = readWorking(note.working, { names, it: null }, new ClauseReader(work));
    const { outcome } = read;
    ({ steps, readings: taken } = outcome);
    ({ outline } = read);
    names = outcome.context.names;
    add(outcome.diagnostics);
    add(patterTroubles(outline));
    const later = namedLater(note.text, note.working.range);
    outcome.unread.forEach((one, i) =>
      diagnostics.push(i < MOST_TOLD ? explain(one, near && i < MOST_SUGGESTED, later) : unexplained(one)),
    );
    outcome.prints.forEach((print) => prints.push(print));
    add(
      secretUses(steps).map(({ name, settled, used }) =>
        diagnostic('uses-secret', used.range, { name, step: settled.number }),
      ),
    );
  }

  let endings: readonly Ending[] = [];
  if (note.ending !== null) {
    const read = readEndings(note.ending, names, setUp?.cards ?? [], work, near);
    ({ endings } = read);
    add(read.diagnostics);
    read.prints.forEach((print) => prints.push(print));
  }
  if (work.stopped && !diagnostics.some(({ code }) => code === 'reading-stopped'))
    add([diagnostic('reading-stopped', (note.ending ?? note.working)?.heading.range ?? start)]);

  const confirm = (one: TakenReading): CompiledReading => ({
    ...one,
    confirmed: isConfirmed(one.reading, note.head.readings),
  });
  const readings = [...orders, ...taken].map(confirm);
  const open = readings.filter(({ confirmed }) => !confirmed);
  add(open.map((one) => readingOf(one, note.head.place)));
  const told = withoutEchoes(inOrder(diagnostics), note.text).map((one) =>
    withFixes(one, note.text, names.cards),
  );
  const wrong = told.some(({ severity }) => severity === 'error');
  const compiled: Compiled =
    wrong || setUp === null
      ? { diagnostics: told, readings, outline }
      : {
          routine: routineOf(note, setUp.cards, setUp.setUp, steps, endings),
          diagnostics: told,
          readings,
          outline,
        };
  return { compiled, steps, endings, lines: lines?.pieces ?? [], prints, setUp };
}

function routineOf(
  note: Note,
  cards: readonly Card[],
  setUp: SetUp,
  steps: Routine['steps'],
  endings: readonly Ending[],
): Routine {
  return { title: note.title, cards, setUp, steps, endings };
}

function namesOf(setUp: SetUpReading | null): Names {
  // Without a set-up the sentences are still read, as if there were the usual packet.
  if (setUp === null || setUp.piles.length === 0) return { ...NO_NAMES, piles: ['packet'] };
  const { piles, attributes, cards } = setUp;
  return { ...NO_NAMES, piles, attributes, cards: [...new Set(cards.map(({ name }) => name))] };
}

/** Words that some sentence gives as a name: `call it chosen`. */
function namedLater(text: string, range: { from: number; to: number }): ReadonlySet<string> {
  const names = text
    .slice(range.from, range.to)
    .matchAll(/\bcall(?:ed)?\s+(?:it|that|the\s+\p{L}+)?\s*(\p{L}+)/giu);
  return new Set([...names].map((match) => match[1].toLowerCase()));
}

const SEVERITIES: readonly Severity[] = ['error', 'warning', 'reading'];

// Said even where there is too much to say.
const ALWAYS: ReadonlySet<string> = new Set(['reading-stopped', 'too-many-steps']);

/** In the order of the text, at most so many of each severity; what is left out is counted. */
function inOrder(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const sorted = [...diagnostics].sort((a, b) => a.range.from - b.range.from || a.range.to - b.range.to);
  const kept: Diagnostic[] = [];
  for (const severity of SEVERITIES) {
    const those = sorted.filter((one) => one.severity === severity);
    const all = those.filter(({ code }) => !ALWAYS.has(code));
    for (const one of [...all.slice(0, MOST_TOLD), ...those.filter(({ code }) => ALWAYS.has(code))])
      kept.push(one);
    if (all.length <= MOST_TOLD) continue;
    const { range } = all[MOST_TOLD];
    kept.push(diagnostic('and-more', range, { more: all.length - MOST_TOLD, what: severity }, { severity }));
  }
  return kept.sort((a, b) => a.range.from - b.range.from || a.range.to - b.range.to);
}
