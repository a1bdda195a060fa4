// `npm run notes`: from a bare clone to every note in notes/ with its verdict, and one refuted performance played out.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ensure, root } from './ensure.mjs';
import { buildCli, run } from './run.mjs';

const foregone = join(root, 'packages/cli/bin/foregone.mjs');

/** What the command line's exit codes say about a note. */
const verdicts = new Map([
  [0, 'proved'],
  [1, 'refuted'],
  [2, 'not understood'],
  [3, 'undecided'],
  [4, 'empty'],
]);

function main() {
  if (!ensure()) return 1;
  const built = run(buildCli.command, { cwd: buildCli.cwd });
  if (built.code !== 0) {
    console.error(`The command line could not be built:\n\n${built.output}`);
    return 1;
  }

  const notes = notesIn('notes');
  if (notes.length === 0) {
    console.log('There are no notes in notes/ yet.');
    return 0;
  }
  const width = Math.max(...notes.map((note) => note.length));
  console.log(`${'note'.padEnd(width)}  ${'verdict'.padEnd(14)}  seconds`);
  console.log(`${'-'.repeat(width)}  ${'-'.repeat(14)}  -------`);
  let refuted;
  const broken = [];
  for (const note of notes) {
    const { code, output, seconds } = run([foregone, 'prove', note]);
    const verdict = verdicts.get(code);
    if (verdict === undefined) broken.push({ note, code, output });
    if (verdict === 'refuted') refuted ??= note;
    console.log(
      `${note.padEnd(width)}  ${(verdict ?? `failed (${code})`).padEnd(14)}  ${seconds.toFixed(1).padStart(7)}`,
    );
  }
  for (const { note, code, output } of broken) {
    console.error(
      `\n${note}: the command line ended with ${code}, which is no verdict. It said:\n\n${output}`,
    );
  }

  const fault = refuted === undefined ? false : !playOut(refuted);
  console.log(`\nTo go on: npx foregone --help`);
  return broken.length > 0 || fault ? 1 : 0;
}

/**
 * Shows the shortest performance in which a refuted routine fails; whether that went well.
 *
 * @param {string} note
 */
function playOut(note) {
  console.log(`\nHow ${note} fails: npx foregone play ${note} --failing\n`);
  const played = run([foregone, 'play', note, '--failing'], { show: true });
  // Played to the end, a failing performance may end with the code of its verdict.
  return played.code === 0 || played.code === 1;
}

/**
 * Every Markdown file in a folder and the folders in it, in order, as paths from the root of the repository.
 *
 * @param {string} folder
 * @returns {string[]}
 */
function notesIn(folder) {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { withFileTypes: true })
    .flatMap((entry) => {
      const path = `${folder}/${entry.name}`;
      if (entry.isDirectory()) return notesIn(path);
      return entry.name.endsWith('.md') && entry.name !== 'README.md' ? [path] : [];
    })
    .sort();
}

process.exitCode = main();
