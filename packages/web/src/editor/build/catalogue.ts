import { CLAIMS, MOVES, wordingOf } from '@foregone/engine';

type Phrase = (typeof MOVES)[number]['phrases'][number];

/** One sentence that can be put in, with its wordings. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  readonly help: string;
  readonly caution: string;
  readonly phrases: readonly Phrase[];
  readonly isEnding: boolean;
  /** All that is looked through when somebody looks for it, in lower case. */
  readonly words: string;
}

export interface Group {
  readonly name: string;
  readonly entries: readonly Entry[];
}

const HANDS: readonly (readonly [string, string])[] = [
  ['cut', 'Cut'],
  ['deal', 'Deal and count'],
  ['turn', 'Turn over'],
  ['mix', 'Mix'],
  ['gather', 'Gather'],
  ['choose', 'Choose and name'],
  ['hand over', 'Hand over'],
  ['order', 'Put in order'],
];

/** Every move by what hands do, then every form of ending. */
export function catalogue(): readonly Group[] {
  const moves = HANDS.map(([hands, name]) => ({
    name,
    entries: MOVES.filter((move) => move.hands === hands).map((move) => entryOf(move, false)),
  }));
  return [...moves, { name: 'Endings', entries: CLAIMS.map((claim) => entryOf(claim, true)) }];
}

function entryOf(
  one: Pick<(typeof MOVES)[number], 'id' | 'title' | 'help' | 'caution' | 'phrases' | 'synonyms'>,
  isEnding: boolean,
): Entry {
  const { id, title, help, caution, phrases, synonyms } = one;
  const words = [title, help, ...synonyms, ...phrases.map(wordingOf)].join(' ').toLowerCase();
  return { id, title, help, caution, phrases, isEnding, words };
}

/** The groups with what has all these words. */
export function lookedFor(groups: readonly Group[], text: string): readonly Group[] {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  return groups
    .map(({ name, entries }) => ({
      name,
      entries: entries.filter((entry) => words.every((word) => entry.words.includes(word))),
    }))
    .filter(({ entries }) => entries.length > 0);
}
