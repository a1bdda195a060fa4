import { Command, CommanderError, InvalidArgumentError } from 'commander';
import { DEFAULT_LIMITS, DEFAULT_ROUNDS, MOST_SMT_WORK, RECHECK_WORK } from '@foregone/engine';
import { after } from './commands/after.ts';
import { certify } from './commands/certify.ts';
import { exportFor } from './commands/export.ts';
import { format } from './commands/format.ts';
import { freedom } from './commands/freedom.ts';
import { mixing } from './commands/mixing.ts';
import { moments } from './commands/moments.ts';
import { play } from './commands/play.ts';
import { prove } from './commands/prove.ts';
import { readings } from './commands/readings.ts';
import { recheck } from './commands/recheck.ts';
import { endings, moves } from './commands/reference.ts';
import { slips } from './commands/slips.ts';
import { same } from './commands/same.ts';
import { setUp } from './commands/setup.ts';
import { sizes } from './commands/sizes.ts';
import { EXIT } from './exit-codes.ts';
import type { JobLimits } from './job-limits.ts';
import type { Terminal } from './terminal.ts';

interface LimitOptions {
  readonly work?: number;
  readonly tables?: number;
}

const CODES = `Exit codes: 0 proved, 1 refuted, 2 not understood, 3 undecided, 4 empty; 64 wrong usage, 70 a fault of
Foregone, 130 stopped by you. Of several notes the worst counts: refuted, not understood, undecided, empty,
proved. A file called - is what comes in on standard input.`;

/** Reads the arguments, does what they ask for, and gives the exit code. */
export async function program(parameters: readonly string[], terminal: Terminal): Promise<number> {
  let code: number = EXIT.usage;
  const root = new Command('foregone')
    .description('Check, prove and play out self-working card effects written as lecture notes.')
    .addHelpText('after', `\n${CODES}`)
    .exitOverride()
    .configureOutput({ writeOut: terminal.out, writeErr: terminal.err })
    .showHelpAfterError('(foregone --help lists the commands)');
  const add = (name: string, about: string): Command => {
    const command = root.command(name).description(about);
    return command.exitOverride().configureOutput({ writeOut: terminal.out, writeErr: terminal.err });
  };
  const limited = (command: Command): Command =>
    command
      .option('--work <n>', 'steps of work that may be spent', atLeast(1))
      .option('--tables <n>', 'tables that a complete search may keep', atLeast(1));

  limited(add('prove', 'the verdict on every sentence of the ending, with the shortest failure'))
    .argument('<file...>', 'notes')
    .option('--json', 'one JSON object')
    .option('--certificate <out>', 'write the proof to this file')
    .action(async (files: string[], options: LimitOptions & { json?: boolean; certificate?: string }) => {
      const { json = false, certificate } = options;
      code = await prove(files, { json, certificate, limits: limitsOf(options) }, terminal);
    });
  limited(add('play', 'a performance, step by step; asks for every choice where it can'))
    .argument('<file>', 'a note')
    .option(
      '--choices <keys>',
      'choices in order, separated by commas; what is not said goes the plainest way',
    )
    .option('--random <seed>', 'choices at random; the same number gives the same performance', atLeast(0))
    .option('--failing', 'the shortest performance that fails')
    .option('--json', 'one JSON object')
    .action(
      async (
        file: string,
        options: LimitOptions & { json?: boolean; choices?: string; random?: number; failing?: boolean },
      ) => {
        const { json = false, failing = false, choices, random } = options;
        if ([failing, choices !== undefined, random !== undefined].filter(Boolean).length > 1) {
          terminal.err('Only one of --choices, --random and --failing.\n');
          return;
        }
        code = await play(file, { json, failing, choices, random, limits: limitsOf(options) }, terminal);
      },
    );
  limited(add('moments', 'what is certain (have) and what must be true (need) at every step'))
    .argument('<file>', 'a note')
    .option('--all', 'every moment of every step')
    .option('--json', 'one JSON object')
    .action(async (file: string, options: LimitOptions & { json?: boolean; all?: boolean }) => {
      const { json = false, all = false } = options;
      code = await moments(file, { json, all, limits: limitsOf(options) }, terminal);
    });
  limited(add('freedom', 'what else could be done at every step with the ending still certain'))
    .argument('<file>', 'a note')
    .option('--at <step>', 'only before this step: 3, 2.1; or end, "end of 2"')
    .option('--all', 'what would not be safe, too')
    .option('--failing <sentence>', 'the shortest performance that fails with this put in there')
    .option(
      '--moves <n>',
      'also two or three moves one after the other that are safe only together',
      atLeast(1),
    )
    .option('--json', 'one JSON object')
    .action(
      async (
        file: string,
        options: LimitOptions & {
          json?: boolean;
          all?: boolean;
          at?: string;
          failing?: string;
          moves?: number;
        },
      ) => {
        const { json = false, all = false, at, failing, moves = 1 } = options;
        const limits = limitsOf(options);
        code = await freedom(file, { json, all, at, failing, moves, limits }, terminal);
      },
    );
  limited(
    add('slips', 'the usual slips in every step: harmless or fatal, whether they show, what remains certain'),
  )
    .argument('<file>', 'a note')
    .option('--at <step>', 'one step in full: the number of the step')
    .option('--json', 'one JSON object')
    .action(async (file: string, options: LimitOptions & { json?: boolean; at?: string }) => {
      const { json = false, at } = options;
      code = await slips(file, { json, at, limits: limitsOf(options) }, terminal);
    });
  limited(add('after', 'what is still certain after a mishap'))
    .argument('<file>', 'a note')
    .requiredOption('--at <step>', 'the step before which it happens, or end')
    .requiredOption('--slip <sentences>', 'what happens, in sentences of a working')
    .option('--json', 'one JSON object')
    .action(async (file: string, options: LimitOptions & { json?: boolean; at: string; slip: string }) => {
      const { json = false, at, slip } = options;
      code = await after(file, { json, at, slip, limits: limitsOf(options) }, terminal);
    });
  limited(
    add('setup', 'what the start must satisfy; a set-up among the cards at hand; the fault of a packet'),
  )
    .argument('<file>', 'a note')
    .option('--from <cards>', "cards at hand: 'full pack', 'A-8 of hearts, A-8 of spades'")
    .option('--check <cards>', "cards as they lie, from the top: 'QH 6C 3D 8S'")
    .option('--json', 'one JSON object')
    .action(
      async (file: string, options: LimitOptions & { json?: boolean; from?: string; check?: string }) => {
        const { json = false, from, check } = options;
        code = await setUp(file, { json, from, check, limits: limitsOf(options) }, terminal);
      },
    );
  limited(add('sizes', 'the same routine at every number of cards that its set-up can be written for'))
    .argument('<file>', 'a note')
    .option('--least <n>', 'from this number of cards on', atLeast(1))
    .option('--most <n>', 'up to this number of cards', atLeast(1))
    .option('--keep-numbers', 'numbers of the ending stay as they are written')
    .option('--json', 'one JSON object')
    .action(
      async (
        file: string,
        options: LimitOptions & { json?: boolean; least?: number; most?: number; keepNumbers?: boolean },
      ) => {
        const { json = false, keepNumbers = false, least, most } = options;
        code = await sizes(file, { json, keepNumbers, least, most, limits: limitsOf(options) }, terminal);
      },
    );
  limited(add('mixing', 'how mixed the cards are at the end, and how mixed they look'))
    .argument('<file>', 'a note')
    .option('--runs <n>', 'random performances', atLeast(1))
    .option('--seed <n>', 'another number gives other performances', atLeast(0))
    .option('--json', 'one JSON object')
    .action(
      async (file: string, options: LimitOptions & { json?: boolean; runs?: number; seed?: number }) => {
        const { json = false, runs, seed, tables } = options;
        code = await mixing(file, { json, runs, seed, states: tables, limits: limitsOf(options) }, terminal);
      },
    );
  limited(
    add('same', 'whether two routines rest on the same; or one of them in other relations of the cards'),
  )
    .argument('<file>', 'a note')
    .argument('[other]', 'another note; without it the relations that the cards at hand offer are tried')
    .option(
      '--from <cards>',
      "cards at hand for other relations (a full pack): 'A-8 of hearts, A-8 of spades'",
    )
    .option('--json', 'one JSON object')
    .action(
      async (
        file: string,
        other: string | undefined,
        options: LimitOptions & { json?: boolean; from?: string },
      ) => {
        const { json = false, from } = options;
        if (other !== undefined && from !== undefined) {
          terminal.err('--from is for one note in other relations, not for two notes.\n');
          return;
        }
        code = await same(file, other, { json, from, limits: limitsOf(options) }, terminal);
      },
    );
  limited(add('certify', 'prove a note and write its certificate'))
    .argument('<file>', 'a note')
    .option('-o, --output <file>', 'where to write it', '-')
    .action(async (file: string, options: LimitOptions & { output: string }) => {
      code = await certify(file, { output: options.output, limits: limitsOf(options) }, terminal);
    });
  add('recheck', 'check a certificate with the separate checker')
    .argument('<certificate>', 'a file that certify wrote')
    .option('--work <n>', 'steps of work that may be spent', atLeast(1))
    .option('--json', 'one JSON object')
    .action(async (file: string, options: { json?: boolean; work?: number }) => {
      const { json = false, work = RECHECK_WORK } = options;
      code = await recheck(file, { json, work }, terminal);
    });
  add('export', 'a sentence of the ending as a question for a solver that you trust')
    .argument('<file>', 'a note')
    .requiredOption('--smt', 'as SMT-LIB 2: satisfiable exactly when some performance makes it false')
    .option('--sentence <k>', 'which sentence of the ending, 1 for the first', atLeast(1))
    .option(
      '--rounds <n>',
      `how often repetitions may come round in one performance (${DEFAULT_ROUNDS})`,
      atLeast(0),
    )
    .option('--work <n>', 'steps of work that may be spent', atLeast(1))
    .option('-o, --output <file>', 'where to write it', '-')
    .action(
      async (
        file: string,
        options: { sentence?: number; rounds?: number; work?: number; output: string },
      ) => {
        const { sentence = null, rounds = DEFAULT_ROUNDS, work = MOST_SMT_WORK, output } = options;
        code = await exportFor(file, { sentence, rounds, work, output }, terminal);
      },
    );
  add('format', 'the note with its sentences as Foregone prints them')
    .argument('<file>', 'a note')
    .option('--check', 'only say whether it would differ (exit code 1)')
    .option('--write', 'write it back into the file')
    .action(async (file: string, { check = false, write = false }: { check?: boolean; write?: boolean }) => {
      code = await format(file, { check, write }, terminal);
    });
  add('readings', 'how words with two meanings were taken')
    .argument('<file>', 'a note')
    .option('--json', 'one JSON object')
    .action(async (file: string, { json = false }: { json?: boolean }) => {
      code = await readings(file, { json }, terminal);
    });
  add('moves', 'the sentences of a working')
    .argument('[name...]', 'one move: its title, or words of its sentence')
    .option('--json', 'one JSON list')
    .action((name: string[], { json = false }: { json?: boolean }) => {
      code = moves(name.length === 0 ? undefined : name.join(' '), { json }, terminal);
    });
  add('endings', 'the sentences of an ending')
    .argument('[name...]', 'one form of ending: its title, or words of its sentence')
    .option('--json', 'one JSON list')
    .action((name: string[], { json = false }: { json?: boolean }) => {
      code = endings(name.length === 0 ? undefined : name.join(' '), { json }, terminal);
    });

  try {
    await root.parseAsync(parameters, { from: 'user' });
    return code;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? 0 : EXIT.usage;
  }
}

function atLeast(least: number): (text: string) => number {
  return (text) => {
    const n = Number(text);
    if (!Number.isSafeInteger(n) || n < least)
      throw new InvalidArgumentError(`It must be a whole number from ${least} on.`);
    return n;
  };
}

function limitsOf({ work, tables }: LimitOptions): JobLimits {
  const { trials, seed } = DEFAULT_LIMITS;
  return { work: work ?? DEFAULT_LIMITS.work, states: tables ?? DEFAULT_LIMITS.states, trials, seed };
}
