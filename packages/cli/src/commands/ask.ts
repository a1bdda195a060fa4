import { createInterface, type Interface } from 'node:readline';
import type { Played, Stage, StageNext } from '@foregone/engine';
import { shown } from '../render/diagnostics.ts';
import { drawStep } from '../render/performance.ts';
import { drawTable, LEGEND } from '../render/table.ts';
import { hang } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';

/** Options shown one to a line up to here; beyond, they are named by their range. */
const MOST_LISTED = 20;

/** Plays with a person who chooses; null when they broke off. */
export async function ask(stage: Stage, title: string, terminal: Terminal): Promise<Played | null> {
  const { colours, width } = terminal;
  const lines = createInterface({ input: process.stdin, output: process.stdout });
  try {
    let played = stage.begin();
    terminal.out(`${colours.bold(shown(title))}\n\n${colours.bold('Set-up')}  ${colours.dim(LEGEND)}\n`);
    terminal.out(`${drawTable(stage.table(played), colours, width, 5)}\n`);
    let told = 0;
    while (!played.ended && played.stuck === undefined) {
      const next = stage.next(played);
      const [only] = next.ways;
      if (only === undefined) break;
      let key = only.key;
      if (next.ways.length > 1) {
        const chosen = await choose(next, lines, terminal);
        if (chosen === null) return null;
        key = next.ways[chosen].key;
      }
      played = stage.take(played, key);
      // A step is told when the next one begins, so that a mix of many decisions is told once.
      const { steps } = stage.performance(played);
      const isBetween = played.ended || played.stuck !== undefined || stage.isBetweenSteps(played);
      if (isBetween) {
        for (const step of steps.slice(told)) terminal.out(`${drawStep(step, terminal)}\n`);
        told = steps.length;
      }
    }
    return played;
  } finally {
    lines.close();
  }
}

async function choose(
  { step, ways }: StageNext,
  lines: Interface,
  terminal: Terminal,
): Promise<number | null> {
  const { colours, width } = terminal;
  const who = step?.who === 'performer' ? 'You choose' : 'The spectator chooses';
  const what =
    step === null ? 'The set-up leaves this open' : `${who} at ${step.number}, ${shown(step.sentence)}`;
  terminal.out(`\n${hang('', what, width)}\n`);
  const isNumbers = ways.every(({ key }) => typeof key === 'number');
  const shownWays = ways.slice(0, MOST_LISTED);
  shownWays.forEach(({ key, words }, i) =>
    terminal.out(`${hang(`  ${String(isNumbers ? key : i + 1).padStart(3)}  `, words, width)}\n`),
  );
  if (ways.length > MOST_LISTED) {
    const last = ways.length - 1;
    terminal.out(
      `${hang('    …  ', `and so on to ${isNumbers ? ways[last].key : last + 1}: ${ways[last].words}`, width)}\n`,
    );
  }
  for (;;) {
    const answer = await question(lines, colours.bold('> '));
    if (answer === null) return null;
    const text = answer.trim();
    const byKey = ways.findIndex(({ key }) => String(key) === text);
    const byNumber = !isNumbers && /^\d+$/.test(text) ? Number(text) - 1 : -1;
    const chosen = text === '' ? 0 : byKey >= 0 ? byKey : byNumber;
    if (chosen >= 0 && chosen < ways.length) return chosen;
    terminal.out('One of the numbers above, or nothing for the first; Ctrl-C stops.\n');
  }
}

/** One line; null on Ctrl-C and at the end of the input. */
function question(lines: Interface, prompt: string): Promise<string | null> {
  return new Promise((resolve) => {
    const stop = (): void => resolve(null);
    lines.once('close', stop);
    lines.once('SIGINT', stop);
    lines.question(prompt, (answer) => {
      lines.off('close', stop);
      lines.off('SIGINT', stop);
      resolve(answer);
    });
  });
}
