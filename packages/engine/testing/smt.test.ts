import { afterAll, expect, test } from 'vitest';
import { init } from 'z3-solver';
import { compile } from '../src/note/compile.ts';
import { read } from '../src/note/read.ts';
import { decide } from '../src/proving/decide.ts';
import { smtOf } from '../src/proving/smt.ts';

// z3-solver 5.2.0, a solver that knows nothing of cards: an independent word on the same question.
const z3 = await init();
afterAll(() => z3.em.PThread.terminateAllThreads());

const ANSWERS = new Map([
  [-1, 'unsat'],
  [0, 'unknown'],
  [1, 'sat'],
]);

// The text goes in by a call that waits: given to one that works in another thread, it may be gone before it is read.
async function solve(text: string): Promise<string | undefined> {
  const { Z3 } = z3;
  const config = Z3.mk_config();
  const context = Z3.mk_context(config);
  const solver = Z3.mk_solver(context);
  Z3.solver_inc_ref(context, solver);
  try {
    Z3.solver_from_string(context, solver, text);
    if (Z3.get_error_code(context) !== 0) return 'not understood';
    return ANSWERS.get(await Z3.solver_check(context, solver));
  } finally {
    Z3.solver_dec_ref(context, solver);
    Z3.del_context(context);
    Z3.del_config(config);
  }
}

const NOTES: readonly (readonly [string, string, string, string])[] = [
  [
    'turnover',
    '6 cards alternately red and black, face down',
    '1. Any number of times: cut the packet, then turn over the top 2 together.\n2. Deal the packet into a pile, turning every second card.',
    'Exactly 3 cards are face up.',
  ],
  [
    'turnover of three',
    '6 cards alternately red and black, face down',
    '1. Any number of times: cut the packet, then turn over the top 3 together.\n2. Deal the packet into a pile, turning every second card.',
    'Exactly 3 cards are face up.',
  ],
  [
    'deal and riffle',
    '8 cards alternately red and black, face down',
    '1. Deal any number of cards to the table.\n2. Riffle the packet and the table together.',
    'Every pair has one card of each colour.',
  ],
  [
    'riffle undealt',
    '8 cards alternately red and black, face down',
    '1. Push off any number of cards to the table.\n2. Riffle the packet and the table together.',
    'Every pair has one card of each colour.',
  ],
  [
    'any order',
    '2 red cards and 2 black cards, in any order',
    '1. Cut the packet.',
    'Exactly 2 cards are red.',
  ],
  [
    'top of any order',
    '2 red cards and 2 black cards, in any order',
    '1. Cut the packet.',
    'The top card is red or the bottom card is red.',
  ],
  [
    'dead end',
    '4 cards alternately red and black, face down',
    '1. Deal 1 to 5 cards to the table.\n2. Deal 2 cards to the table.',
    'Exactly 2 cards are red.',
  ],
];

test.each(NOTES)(
  '%s: the solver agrees',
  async (_name, setUp, working, ending) => {
    const { routine, diagnostics } = compile(
      read(`## Set-up\n- packet: ${setUp}\n## Working\n${working}\n## Ending\n- ${ending}\n`),
    );
    if (routine === undefined) throw new Error(JSON.stringify(diagnostics));
    const smt = smtOf(routine, routine.endings[0], { rounds: 2, work: 100_000 });
    if (!smt.ok) throw new Error(smt.error.code);
    const [sentence] = decide(routine).sentences;
    expect(await solve(smt.value)).toBe(sentence.verdict === 'proved' ? 'unsat' : 'sat');
  },
  60_000,
);

test('repetition is bounded, and the text says so', () => {
  const text = (working: string): string => {
    const { routine } = compile(
      read(
        `## Set-up\n- packet: 4 cards\n## Working\n${working}\n## Ending\n- Exactly 0 cards are face up.\n`,
      ),
    );
    if (routine === undefined) throw new Error(working);
    const smt = smtOf(routine, routine.endings[0], { rounds: 3, work: 100_000 });
    return smt.ok ? smt.value : smt.error.code;
  };
  expect(text('1. Any number of times: cut the packet.')).toContain('at most 3 rounds');
  expect(text('1. Cut the packet.')).toContain('; Complete');
});
