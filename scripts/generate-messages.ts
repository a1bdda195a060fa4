import { compile } from '../packages/engine/src/note/compile.ts';
import { describe } from '../packages/engine/src/note/messages/describe.ts';
import { MESSAGES } from '../packages/engine/src/note/messages/index.ts';
import type { Message, Shown } from '../packages/engine/src/note/messages/message.ts';
import { read } from '../packages/engine/src/note/read.ts';
import { unmarked } from '../packages/engine/testing/notes/shown.ts';
import { block, code, page, plain } from './generate-parts.ts';

const GROUPS: readonly (readonly [by: Shown['by'], title: string, about: string])[] = [
  ['note', 'Said when a note is read', 'The sentence between `⟦` and `⟧` is the one that is underlined.'],
  [
    'performance',
    'Said when a performance is stuck',
    'These notes read well, but some performance cannot go on at the sentence between `⟦` and `⟧`. That refutes every sentence of the ending.',
  ],
  [
    'judging',
    'Said when an ending is judged',
    'These notes read well; what the sentence between `⟦` and `⟧` means depends on where the cards lie when it is judged.',
  ],
  ['program', 'Said of budgets and proofs', 'No text of a note brings these about.'],
];

// A note that is too long for a limit is too long for this page as well.
const LONGEST_LINE = 160;
const MOST_LINES = 40;

/** Every message with the note that brings it about and the whole reply. */
export function messagesPage(messages: readonly Message[] = MESSAGES): string {
  return page([
    '# Messages',
    `Everything that may be said about a note: ${messages.length} messages. Under each stands a note that brings it about, and the reply. An _error_ keeps the note from getting a verdict, a _warning_ does not, a _reading_ states how a word with two meanings was taken.`,
    ...GROUPS.flatMap(([by, title, about]) => {
      const own = messages.filter(({ shown }) => shown.by === by);
      return own.length === 0 ? [] : [`## ${title}`, about, ...[...own].sort(byCode).flatMap(entry)];
    }),
  ]);
}

function byCode(a: Message, b: Message): number {
  return a.code < b.code ? -1 : 1;
}

function entry({ code: name, severity, shown }: Message): string[] {
  const { words, remedy } = describe({ code: name, facts: shown.facts });
  const reply = [words, remedy].filter((line) => line !== '').map((line) => `> ${plain(line)}`);
  return [
    `### ${name}`,
    `_${severity}_`,
    ...(shown.by === 'program' ? [] : [block(shortened(shown.note.trim()), 'markdown')]),
    reply.join('\n>\n'),
    ...changes(name, shown),
  ];
}

/** The changes that are offered with it, when the note is read. */
function changes(name: string, shown: Shown): string[] {
  if (shown.by !== 'note') return [];
  const { text, range } = unmarked(shown.note);
  const own = compile(read(text)).diagnostics.find(
    (one) => one.code === name && one.range.from === range.from && one.range.to === range.to,
  );
  const labels = [...new Set((own?.fixes ?? []).map(({ label }) => label))];
  return labels.length === 0 ? [] : [`Offered: ${labels.map((label) => code(label)).join(', ')}.`];
}

/** The note as it stands; of a very long one the middle is left out. */
function shortened(note: string): string {
  const lines = note.split('\n').map((line) => cut(line));
  if (lines.length <= MOST_LINES) return lines.join('\n');
  const half = MOST_LINES / 2;
  const left = lines.length - MOST_LINES;
  return [...lines.slice(0, half), `(${left} more lines)`, ...lines.slice(-half)].join('\n');
}

function cut(line: string): string {
  if (line.length <= LONGEST_LINE) return line;
  const signs = [...line];
  const half = LONGEST_LINE / 2;
  return `${signs.slice(0, half).join('')} ... ${signs.slice(-half).join('')}`;
}
