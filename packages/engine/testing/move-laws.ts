import fc from 'fast-check';
import type { Move } from '../src/moves/move.ts';
import { SAMPLE_NAMES } from '../src/phrases/blank.ts';
import { BLANKS } from '../src/phrases/blanks.ts';
import { printPhrases, same, type Phrase } from '../src/phrases/phrase.ts';
import type { Part } from '../src/phrases/template.ts';
import { tokenize } from '../src/phrases/tokens.ts';
import type { Args, ArgValue } from '../src/phrases/values.ts';
import type { Action } from '../src/pictures/actions.ts';
import { BitKinds, effectOf } from '../src/pictures/effect.ts';
import {
  act,
  applyEffect,
  layoutOfTable,
  namesFor,
  parseTable,
  perform,
  printTable,
  readAs,
  runMove,
  type LaidCard,
  type Run,
  type Table,
} from './packets.ts';

/** The laws every move passes; each throws with the move, the sentence and the table that break it. */

function demand(holds: boolean, otherwise: string): void {
  if (!holds) throw new Error(otherwise);
}

function agree(found: unknown, wanted: unknown, where: string): void {
  demand(stable(found) === stable(wanted), `${where}\n  found  ${stable(found)}\n  wanted ${stable(wanted)}`);
}

/** Tries a property; what breaks it is told together with the smallest input that does. */
function always<T>(property: fc.IProperty<T>, numRuns: number): void {
  const run = fc.check(property, { numRuns });
  if (!run.failed) return;
  const cause = run.errorInstance instanceof Error ? run.errorInstance.message : String(run.errorInstance);
  throw new Error(`${cause}\n${fc.defaultReportMessage(run)}`);
}

/** As text, whatever the order of the keys. */
function stable(value: unknown): string {
  return (
    JSON.stringify(value, (_key, part: unknown) =>
      part !== null && typeof part === 'object' && !Array.isArray(part)
        ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
        : part,
    ) ?? 'undefined'
  );
}

/** A sentence and what it says. */
interface Wording {
  readonly text: string;
  readonly args: Record<string, ArgValue>;
}

/** Every wording one phrase allows: blanks filled with samples, optional parts said or not, any of the synonyms. */
function wordingsOf(phrase: Phrase): fc.Arbitrary<Wording> {
  return sequence(phrase.parts).filter((said): said is Wording => said !== null);
}

/** Null when one blank, in two places of the phrase, was filled with two values. */
function sequence(parts: readonly Part[]): fc.Arbitrary<Wording | null> {
  return fc.tuple(...parts.map(onePart)).map((all) => {
    const args: Record<string, ArgValue> = {};
    const words: string[] = [];
    for (const said of all) {
      if (said === null) return null;
      for (const [name, value] of Object.entries(said.args)) {
        if (name in args && !same(args[name], value)) return null;
        args[name] = value;
      }
      words.push(said.text);
    }
    return { text: words.filter((text) => text !== '').join(' '), args };
  });
}

function onePart(part: Part): fc.Arbitrary<Wording | null> {
  switch (part.part) {
    case 'words':
      return fc.constant({ text: part.printed, args: {} });
    case 'blank': {
      const blank = BLANKS[part.type];
      if (blank === undefined) throw new Error(`unknown blank type ${part.type}`);
      return fc
        .constantFrom(...blank.samples)
        .map((value) => ({ text: blank.print(value), args: { [part.name]: value } }));
    }
    case 'choice':
      return fc
        .constantFrom(...part.values.flatMap(({ value, forms }) => forms.map((form) => ({ value, form }))))
        .map(({ value, form }) => ({ text: form.join(' '), args: { [part.name]: value } }));
    case 'either':
      return fc.oneof(...part.ways.map(sequence));
    case 'optional':
      return fc.oneof(fc.constant({ text: '', args: {} }), ...part.ways.map(sequence));
  }
}

function complete(move: Move, phrase: Phrase, said: Args): Args {
  return { ...move.defaults, ...said, ...phrase.fixed };
}

export function argsOf(move: Move): fc.Arbitrary<Args> {
  return fc.oneof(
    ...move.phrases.map((phrase) => wordingsOf(phrase).map(({ args }) => complete(move, phrase, args))),
  );
}

const WORDS = /^(?!.*\b(undefined|NaN|null)\b)[^~[\]{}]*$/;

/** Every part is there and reads like a sentence. */
export function isComplete(move: Move): void {
  demand(/^[a-z0-9]+(-[a-z0-9]+)*$/.test(move.id), `id ${move.id}`);
  demand(/^\S.*\S$/.test(move.title), `title ${move.title}`);
  demand(
    move.procedures.every((p) => /^[PST]\d+[a-z]?$/.test(p)),
    `procedures ${move.procedures.join(' ')}`,
  );
  demand(/^[A-Z].*\.$/.test(move.help), `help ${move.help}`);
  demand(/^[A-Z].*\.$/.test(move.caution), `caution ${move.caution}`);
  demand(move.phrases.length > 0 && move.examples.length > 0, 'phrases and examples');
}

/** The examples are true, and `format` leaves their meaning alone. */
export function examplesAreTrue(move: Move): void {
  for (const { before, sentence, choices, after } of move.examples) {
    const where = `${before} | ${sentence} ${choices.join(' ')}`;
    const run = perform(move, sentence, before, choices);
    agree(run.end, 'done', where);
    const wanted = parseTable(after);
    const numbers = Object.keys(wanted.numbers).length > 0 ? run.table.numbers : {};
    agree(printTable({ ...run.table, numbers }), printTable(wanted), where);
    const names = namesFor(run.table);
    const [args] = readAs(move, sentence, namesFor(parseTable(before)));
    const printed = printPhrases(move.phrases, args, move.defaults, BLANKS);
    agree(printed === null ? null : defined(readAs(move, printed, names)[0]), defined(args), `${printed}`);
  }
}

/** Every wording is read as what it says, can be printed, and printing is settled after once. */
export function phrasesReadBack(move: Move, numRuns = 50): void {
  for (const phrase of move.phrases)
    always(
      fc.property(wordingsOf(phrase), (said) => {
        const args = complete(move, phrase, said.args);
        agreeOn(move, said.text, args);
        const printed = printPhrases(move.phrases, args, move.defaults, BLANKS);
        if (printed === null) throw new Error(`${move.id} cannot say ${stable(args)}`);
        agreeOn(move, printed, args);
        const again = printPhrases(move.phrases, readAs(move, printed)[0], move.defaults, BLANKS);
        agree(again, printed, 'printed twice');
      }),
      numRuns,
    );
}

function agreeOn(move: Move, sentence: string, args: Args): void {
  const readings = readAs(move, sentence);
  demand(readings.length > 0, `${move.id} cannot read its own "${sentence}"`);
  for (const reading of readings) agree(defined(reading), defined(args), `"${sentence}"`);
}

function defined(args: Args | undefined): Args {
  return Object.fromEntries(Object.entries(args ?? {}).filter(([, value]) => value !== undefined));
}

/** Wordings of a move, the same each time: for the law that no sentence is two moves, and for others' tests. */
export function sampleSentences(move: Move, each = 40): string[] {
  const texts = move.phrases.flatMap((phrase) => fc.sample(wordingsOf(phrase), { numRuns: each, seed: 1 }));
  return [...new Set([...move.examples.map(({ sentence }) => sentence), ...texts.map(({ text }) => text)])];
}

/** Sentences of one move that another reads too; there should be none. */
export function clashes(moves: readonly Move[]): string[] {
  const found: string[] = [];
  for (const move of moves)
    for (const sentence of sampleSentences(move)) {
      const tokens = tokenize(sentence);
      for (const other of moves)
        if (other !== move && readAs(other, tokens).length > 0)
          found.push(`"${sentence}" of ${move.id} is read by ${other.id}`);
    }
  return found;
}

/** Piles that some moves look for by themselves. */
const OTHER_PILES = ['cell 1 1', 'cell 1 2', 'cell 2 1', 'cell 2 2', 'heap 1', 'heap 2', 'hand 1', 'hand 2'];

/** Tables with some of the sample piles, any facing, and values for the sample numbers. */
export const smallTables: fc.Arbitrary<Table> = fc
  .record({
    packet: fc.integer({ min: 0, max: 8 }),
    others: fc.dictionary(
      fc.constantFrom(...SAMPLE_NAMES.piles.filter((name) => name !== 'packet'), ...OTHER_PILES),
      fc.integer({ min: 0, max: 4 }),
    ),
    bits: fc.integer({ min: 0, max: 2 ** 30 - 1 }),
    numbers: fc.record(
      Object.fromEntries(SAMPLE_NAMES.numbers.map((name) => [name, fc.integer({ min: 0, max: 5 })])),
    ),
  })
  .map(({ packet, others, bits, numbers }) => {
    let id = 0;
    const lay = (size: number): LaidCard[] =>
      Array.from({ length: size }, () => {
        const n = id++;
        const set = ['up', 'end', 'chosen'].filter((_, k) => ((bits >> ((2 * n + k) % 30)) & 1) === 1);
        const value = (n % 13) + 1;
        const attributes = {
          value,
          colour: n % 2 === 0 ? 'red' : 'black',
          suit: ['hearts', 'spades', 'diamonds', 'clubs'][n % 4],
          parity: value % 2 === 0 ? 'even' : 'odd',
          warm: n % 3 === 0 ? 'yes' : 'no',
        };
        return {
          card: { id: n, name: n === 0 ? '10C' : n === 1 ? 'lamp' : String(n + 1), attributes },
          bits: new Set(set),
        };
      });
    const sizes = [['packet', packet] as const, ...Object.entries(others)];
    return { piles: new Map(sizes.map(([name, size]) => [name, lay(size)] as const)), numbers };
  });

/** On small tables: options are well formed, actions and effect agree, runs end, and what was chosen can be said. */
export function runsAreSound(move: Move, numRuns = 100): void {
  const dice = fc.infiniteStream(fc.nat({ max: 1 << 20 }));
  always(
    fc.property(argsOf(move), smallTables, dice, (args, table, rolls) => {
      if ((move.check?.(args) ?? []).length > 0) return;
      const run = runMove(move, args, table, (options, moment) => {
        if (moment === 0) {
          demand(
            options.slice(1).every(({ off }) => off === 1),
            'only the first option of the beginning is plain',
          );
        }
        return options.length === 0 ? 0 : (rolls.next().value as number) % options.length;
      });
      for (const moment of run.moments) momentIsSound(move, args, moment);
      if (run.moments.length > 0 && move.count !== undefined)
        agree(move.count(args, run.moments[0].view), run.moments[0].options.length, 'counted and listed');
      demand(run.end !== 'endless', 'a run ends');
      if (typeof run.end !== 'string') demand(/^[a-z]+(-[a-z]+)*$/.test(run.end.stuck.code), 'code of stuck');
      if (run.end === 'done') runIsSound(move, args, run);
    }),
    numRuns,
  );
}

function momentIsSound(move: Move, args: Args, { table, view, options }: Run['moments'][number]): void {
  demand(options.length > 0, 'no option at all must be said as stuck');
  agree(new Set(options.map(({ key }) => key)).size, options.length, 'keys are distinct');
  agree(options[0].off, 0, 'the first option is the plain one');
  agree(move.options(args, view), options, 'the same view gives the same options');
  const layout = layoutOfTable(table);
  for (const { actions } of options) {
    const kinds = new BitKinds();
    const effect = effectOf(layout, actions, kinds);
    agree(
      [...effect.from].sort((a, b) => a - b),
      [...effect.from.keys()],
      'no card is lost or doubled',
    );
    const played = actions.reduce(act, table);
    agree(printTable(applyEffect(table, effect, kinds)), printTable(played), 'actions and effect agree');
  }
}

function runIsSound(move: Move, args: Args, run: Run): void {
  const kept = [...run.table.piles].filter(([, cards]) => cards.length > 0).map(([name]) => name);
  agree(
    kept.filter((name) => name.startsWith('~')),
    [],
    'no pile of the move itself is left',
  );
  const brought = move.brings?.(args);
  const numbers = run.moments.flatMap(({ taken }) => Object.keys(taken.set ?? {}));
  agree(
    numbers.filter((name) => brought?.numbers?.includes(name) !== true),
    [],
    'numbers are announced',
  );
  const said = move.say(args, run.keys, run.moments[0].view);
  demand(WORDS.test(said) && !said.endsWith('.'), `said "${said}"`);
  demand(said !== '' || run.moments.every(({ options }) => options.length === 1), 'a choice has words');
  const known = new Set([...SAMPLE_NAMES.piles, ...OTHER_PILES, ...(brought?.piles ?? [])]);
  const used = run.moments.flatMap(({ options }) => options.flatMap(({ actions }) => actions.map(pileOf)));
  agree(
    used.filter((name) => !known.has(name) && !name.startsWith('~')),
    [],
    'piles are named or announced',
  );
}

function pileOf(action: Action): string {
  return action.do === 'carry' ? action.to : action.pile;
}

/** Demands that sentences are read alike; for tests of one move. */
export function areReadAlike(move: Move, ...sentences: readonly string[]): void {
  const [first] = readAs(move, sentences[0]);
  for (const sentence of sentences) {
    const [args] = readAs(move, sentence);
    if (args === undefined) throw new Error(`${move.id} does not read "${sentence}"`);
    agree(defined(args), defined(first), `"${sentence}" and "${sentences[0]}"`);
  }
}
