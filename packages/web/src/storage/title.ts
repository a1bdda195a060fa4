const LONGEST = 120;
/** No head is longer; a longer one is hostile, and its title is not worth the time. */
const HEAD_LIMIT = 20_000;

export const UNTITLED = 'Untitled note';

/** What a note is called: the title in its head, else its first heading, else its first words. */
export async function titleOf(text: string): Promise<string> {
  const { head, body } = split(text);
  const named = head === undefined ? undefined : await titleInHead(head);
  const found = named ?? firstLine(body) ?? '';
  const tidy = found.replace(/\s+/gu, ' ').trim();
  return tidy === '' ? UNTITLED : [...tidy].slice(0, LONGEST).join('');
}

/** The same note under another title; the head is made if there is none, and everything else stays to the letter. */
export async function withTitle(text: string, title: string): Promise<string> {
  const { isMap, parseDocument } = await import('yaml');
  const { head, body, newline } = split(text);
  const document = parseDocument(head ?? '');
  // A head that cannot be read is the author's to mend; a second head above it would hide it.
  if (document.errors.length > 0 || (document.contents !== null && !isMap(document.contents))) return text;
  document.set('title', title);
  const written = document.toString({ lineWidth: 0 }).trimEnd().replace(/\n/g, newline);
  return `---${newline}${written}${newline}---${newline}${head === undefined ? newline : ''}${body}`;
}

interface Parts {
  readonly head: string | undefined;
  readonly body: string;
  readonly newline: string;
}

function split(text: string): Parts {
  const newline = /\r?\n/.exec(text)?.[0] ?? '\n';
  const start = /^\uFEFF?---[ \t]*\r?\n/.exec(text.slice(0, 64));
  if (start === null) return { head: undefined, body: text, newline };
  const end = /^---[ \t]*(?:\r?\n|$)/m.exec(text.slice(start[0].length, start[0].length + HEAD_LIMIT));
  if (end === null) return { head: undefined, body: text, newline };
  const from = start[0].length;
  return {
    head: text.slice(from, from + end.index),
    body: text.slice(from + end.index + end[0].length),
    newline,
  };
}

async function titleInHead(head: string): Promise<string | undefined> {
  const { parseDocument } = await import('yaml');
  const document = parseDocument(head, { logLevel: 'silent' });
  const title: unknown = document.contents === null ? undefined : document.get('title');
  if (typeof title === 'string') return title.trim() === '' ? undefined : title;
  return typeof title === 'number' ? String(title) : undefined;
}

function firstLine(body: string): string | undefined {
  for (const line of body.slice(0, HEAD_LIMIT).split('\n')) {
    const words = line.replace(/^[#>*\-\s]+/, '').trim();
    if (words !== '') return words;
  }
  return undefined;
}
