import { CLAIMS, MOVES, wordingOf, type Claim, type Move } from '@foregone/engine';
import Table from 'cli-table3';
import { EXIT } from '../exit-codes.ts';
import { jsonText } from '../json.ts';
import { hang } from '../render/wrap.ts';
import type { Terminal } from '../terminal.ts';

interface ReferenceOptions {
  readonly json: boolean;
}

/** Every move, or one of them with its wordings and examples. */
export function moves(name: string | undefined, { json }: ReferenceOptions, terminal: Terminal): number {
  if (name === undefined) {
    if (json) terminal.out(jsonText(MOVES.map(moveJson)));
    else
      terminal.out(
        listed(
          MOVES.map((move) => [move.hands, move.title, sentenceOf(move)]),
          terminal,
        ),
      );
    return EXIT.proved;
  }
  const found = lookUp(MOVES, name);
  if (found.length === 0) return unknown('moves', name, MOVES, terminal);
  if (json) terminal.out(jsonText(found.map(moveJson)));
  else terminal.out(found.map((move) => drawMove(move, terminal)).join('\n'));
  return EXIT.proved;
}

/** Every form of ending, or one of them. */
export function endings(name: string | undefined, { json }: ReferenceOptions, terminal: Terminal): number {
  if (name === undefined) {
    if (json) terminal.out(jsonText(CLAIMS.map(claimJson)));
    else
      terminal.out(
        listed(
          CLAIMS.map((claim) => ['', claim.title, sentenceOf(claim)]),
          terminal,
        ),
      );
    return EXIT.proved;
  }
  const found = lookUp(CLAIMS, name);
  if (found.length === 0) return unknown('endings', name, CLAIMS, terminal);
  if (json) terminal.out(jsonText(found.map(claimJson)));
  else terminal.out(found.map((claim) => drawClaim(claim, terminal)).join('\n'));
  return EXIT.proved;
}

type Entry = Pick<Move, 'id' | 'title' | 'synonyms' | 'phrases' | 'help' | 'caution'> & {
  readonly examples: readonly { readonly sentence: string }[];
};

/** The one of that name; else all that have the words in their title, their other names or their sentences. */
function lookUp<T extends Entry>(all: readonly T[], name: string): readonly T[] {
  const wanted = name.toLowerCase().trim();
  const exact = all.filter(({ id, title }) => id === wanted || title.toLowerCase() === wanted);
  if (exact.length > 0) return exact;
  const words = wanted.split(/\s+/).filter((word) => word !== '');
  return all.filter((one) => {
    const text = [one.id, one.title, ...one.synonyms, ...one.examples.map(({ sentence }) => sentence)]
      .join(' ')
      .toLowerCase();
    return words.length > 0 && words.every((word) => text.includes(word));
  });
}

function unknown(command: string, name: string, all: readonly Entry[], terminal: Terminal): number {
  const [word] = name.toLowerCase().split(/\s+/);
  const near = all.filter(({ title, id }) => `${id} ${title}`.includes(word.slice(0, 3))).slice(0, 5);
  terminal.err(`There is no "${name}" among the ${command}.`);
  if (near.length > 0) terminal.err(` Perhaps: ${near.map(({ title }) => title).join(', ')}.`);
  terminal.err(` \`foregone ${command}\` lists them all.\n`);
  return EXIT.usage;
}

function sentenceOf(entry: Entry): string {
  return entry.examples[0]?.sentence ?? '';
}

function listed(rows: readonly (readonly [string, string, string])[], terminal: Terminal): string {
  const { colours, width } = terminal;
  const titles = Math.min(34, Math.max(...rows.map(([, title]) => title.length)) + 2);
  const isGrouped = rows.some(([group]) => group !== '');
  const first = isGrouped ? 11 : 0;
  const table = new Table({
    chars: {
      top: '',
      'top-mid': '',
      'top-left': '',
      'top-right': '',
      bottom: '',
      'bottom-mid': '',
      'bottom-left': '',
      'bottom-right': '',
      left: '',
      'left-mid': '',
      mid: '',
      'mid-mid': '',
      right: '',
      'right-mid': '',
      middle: ' ',
    },
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 0 },
    colWidths: [...(isGrouped ? [first] : []), titles, Math.max(20, width - titles - first - 2)],
    wordWrap: true,
  });
  for (const [group, title, sentence] of rows)
    table.push([...(isGrouped ? [group] : []), colours.bold(title), sentence]);
  const lines = table.toString().split('\n');
  return `${lines.map((line) => line.trimEnd()).join('\n')}\n`;
}

function drawMove(move: Move, terminal: Terminal): string {
  const { colours, width } = terminal;
  const parts = [colours.bold(move.title), hang('', move.help, width)];
  if (move.caution !== '') parts.push(hang('', `Mind: ${move.caution}`, width));
  parts.push('', ...wordings(move, terminal));
  for (const { before, sentence, choices, after, source } of move.examples) {
    const chosen = choices.length === 0 ? '' : `   chosen: ${choices.join(', ')}`;
    parts.push(
      '',
      hang('  ', `${sentence}${colours.dim(chosen)}`, width),
      hang('    before  ', before, width),
      hang('    after   ', after, width),
    );
    if (source !== undefined) parts.push(colours.dim(hang('    from    ', source, width)));
  }
  return `${parts.join('\n')}\n`;
}

function drawClaim(claim: Claim, terminal: Terminal): string {
  const { colours, width } = terminal;
  const parts = [colours.bold(claim.title), hang('', claim.help, width)];
  if (claim.caution !== '') parts.push(hang('', `Mind: ${claim.caution}`, width));
  parts.push('', ...wordings(claim, terminal));
  for (const { table, sentence, holds } of claim.examples)
    parts.push(
      '',
      hang('  ', sentence, width),
      hang('    of      ', table, width),
      `    it is   ${holds ? colours.green('true') : colours.red('false')}`,
    );
  return `${parts.join('\n')}\n`;
}

/** `[...]` may be left out, `(a|b)` is one of these, `...` stands for a number, a pile and the like. */
function wordings({ phrases, synonyms }: Entry, { width, colours }: Terminal): string[] {
  const lines = phrases.map((phrase) => hang('  ', wordingOf(phrase), width));
  const known =
    synonyms.length === 0 ? [] : [colours.dim(hang('  ', `also known as: ${synonyms.join(', ')}`, width))];
  return [...lines, ...known];
}

function moveJson(move: Move): Record<string, unknown> {
  const { id, title, hands, help, caution, synonyms, examples } = move;
  return { id, title, hands, wordings: move.phrases.map(wordingOf), help, caution, synonyms, examples };
}

function claimJson(claim: Claim): Record<string, unknown> {
  const { id, title, help, caution, synonyms, examples } = claim;
  return { id, title, wordings: claim.phrases.map(wordingOf), help, caution, synonyms, examples };
}
