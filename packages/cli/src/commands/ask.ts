import { createInterface, type Interface } from 'node:readline';
import { seeded, type Played, type Stage, type StageNext } from '@foregone/engine';
import { shown } from '../render/diagnostics.ts';
import { drawStep } from '../render/performance.ts';
import { drawTable, LEGEND } from '../render/table.ts';
import { hang } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';

/** Options shown one to a line up to here; beyond, they are named by their range. */
const MOST_LISTED = 20;

/** Instead of the number of a way on. */
const AT_RANDOM = -1;

/** Plays with a person who chooses; null when they broke off. */
export async function ask(stage: Stage, title: string, terminal: Terminal): Promise<Played | null> {
  const { colours, width } = terminal;
  const lines = createInterface({ input: process.stdin, output: process.stdout });
  try {
    const random = seeded(Date.now());
    let played = stage.filled();
    if (stage.isOpen) {
      terminal.out('The set-up leaves some of it open.\n    1  as the note writes it\n    2  at random\n');
      const chosen = await answer(lines, terminal, (text) =>
        text === '' || text === '1' ? 1 : text === '2' ? 2 : undefined,
      );
      if (chosen === null) return null;
      if (chosen === 2) played = stage.filled(random);
      terminal.out('\n');
    }
    terminal.out(`${colours.bold(shown(title))}\n\n${colours.bold('Set-up')}  ${colours.dim(LEGEND)}\n`);
    terminal.out(`${drawTable(stage.table(played), colours, width, 5)}\n`);
    let told = 0;
    while (!played.ended && played.stuck === undefined) {
      const next = stage.next(played);
      const [only] = next.ways;
      if (only === undefined) break;
      const chosen = next.ways.length > 1 ? await choose(next, lines, terminal) : 0;
      if (chosen === null) return null;
      played =
        chosen === AT_RANDOM ? stage.goOn(played, random, 'step') : stage.take(played, next.ways[chosen].key);
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
  terminal.out(colours.dim('       r at random, to the end of this step\n'));
  return answer(lines, terminal, (text) => {
    if (text === 'r') return AT_RANDOM;
    const byKey = ways.findIndex(({ key }) => String(key) === text);
    const byNumber = !isNumbers && /^\d+$/.test(text) ? Number(text) - 1 : -1;
    const chosen = text === '' ? 0 : byKey >= 0 ? byKey : byNumber;
    return chosen >= 0 && chosen < ways.length ? chosen : undefined;
  });
}

/** Asks until the answer means something; null when there is no more to read. */
async function answer(
  lines: Interface,
  { colours, out }: Terminal,
  meaning: (text: string) => number | undefined,
): Promise<number | null> {
  for (;;) {
    const line = await question(lines, colours.bold('> '));
    if (line === null) return null;
    const meant = meaning(line.trim());
    if (meant !== undefined) return meant;
    out('One of those above, or nothing for the first; Ctrl-C stops.\n');
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
