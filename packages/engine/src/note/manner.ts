import type { Chooser } from '../routine/routine.ts';
import type { Token } from '../phrases/tokens.ts';
import { saysAt } from './line.ts';

/**
 * How a sentence says its move: by whom, seen or unseen, whether it may be left out. What is not said is null or false.
 */
export interface Manner {
  readonly who: Chooser | null;
  readonly secret: boolean;
  /** Said to be done openly, so that everybody knows what was chosen. */
  readonly open: boolean;
  /** Behind the back or under the table: whoever does it sees nothing either. */
  readonly blind: boolean;
  readonly may: boolean;
}

export interface Peeled {
  readonly tokens: readonly Token[];
  readonly manner: Manner;
}

const PLAIN: Manner = { who: null, secret: false, open: false, blind: false, may: false };

function sequences(text: string): readonly (readonly string[])[] {
  // Longest first, so that `in secret by them` is not taken for `in secret`.
  return text
    .trim()
    .split(/\s*\|\s*/)
    .map((words) => words.trim().split(/\s+/))
    .sort((a, b) => b.length - a.length);
}

const ADVERBS = sequences('now | next | then | and then | and | finally | at last | again | first | lastly');
const AFTER = sequences('again | now | once more');
const SPECTATOR = sequences(`
  spectator | spectators | they | he | she | someone | somebody | anyone | helper | volunteer | another spectator |
  first spectator | second spectator | third spectator | other spectator | let spectator | let spectators | let them |
  let someone | let another spectator | have spectator | have them | have someone | have another spectator |
  ask spectator to | ask them to | ask someone to | ask another spectator to | invite spectator to | invite them to
`);
const PERFORMER = sequences('you | performer');
const MODALS = sequences('will | must | should | shall | is to | is asked to | freely');
const MAY = sequences(
  'may | can | might | may now | chooses whether to | choose whether to | decides whether to | decide whether to',
);
const CHOOSES = sequences(`
  choose to | chooses to | choose where to | chooses where to | choose how to | chooses how to | choose how many to |
  decide where to | decides where to | choose | chooses
`);
/** Ways of doing a thing seen or unseen, and how each is said. */
const SIGHTS: readonly {
  readonly how: 'secret' | 'open' | 'blind';
  readonly all: readonly (readonly string[])[];
}[] = [
  {
    how: 'secret',
    all: sequences(`
      in secret | secretly | out of your sight | out of sight | without you looking | without your looking | unseen |
      unseen by you | while you look away | while you are turned away | while your back is turned | with your back turned
    `),
  },
  {
    how: 'open',
    all: sequences('openly | in full view | for all to see | in sight of all | aloud | out loud'),
  },
  {
    how: 'blind',
    all: sequences(
      'behind their back | behind back | behind your back | behind his back | behind her back | under table',
    ),
  },
];

type Sight = { readonly length: number; readonly how: Partial<Pick<Manner, 'secret' | 'open' | 'blind'>> };

/** A manner that a sentence begins or ends with, leaving at least one word; length 0 where there is none. */
export function sightAt(tokens: readonly Token[], end: 'start' | 'end'): Sight {
  for (const { how, all } of SIGHTS) {
    const length = end === 'start' ? startLength(tokens, 0, all) : endLength(tokens, all);
    if (length > 0 && length < tokens.length) return { length, how: { [how]: true } };
  }
  return { length: 0, how: {} };
}

/** How many words at `at` belong to one of these wordings. */
function startLength(tokens: readonly Token[], at: number, all: readonly (readonly string[])[]): number {
  for (const words of all) if (saysAt(tokens, at, words)) return words.length;
  return 0;
}

function endLength(tokens: readonly Token[], all: readonly (readonly string[])[]): number {
  for (const words of all)
    if (words.length < tokens.length && saysAt(tokens, tokens.length - words.length, words))
      return words.length;
  return 0;
}

/**
 * The ways of taking a sentence apart into a manner and a move, the least taken apart first. The first way is the sentence
 * as it stands: a phrase of a move may speak of the spectator or of secrecy itself.
 */
export function peelings(sentence: readonly Token[]): Peeled[] {
  const found = peeled(sentence);
  // `..., in secret, call it N`: how it is done may stand before the name that is given.
  const call = sentence.findIndex(({ text, quoted }) => text === 'call' && !quoted);
  const before = sentence.slice(0, Math.max(0, call));
  const { length, how } = sightAt(before, 'end');
  if (length === 0) return found;
  const rest = [...before.slice(0, before.length - length), ...sentence.slice(call)];
  for (const { tokens, manner } of peeled(rest)) found.push({ tokens, manner: { ...manner, ...how } });
  return found;
}

function peeled(sentence: readonly Token[]): Peeled[] {
  const found: Peeled[] = [
    { tokens: sentence, manner: { ...PLAIN, who: saysAt(sentence, 0, ['you']) ? 'performer' : null } },
  ];
  const start = startLength(sentence, 0, ADVERBS);
  const bare = start > 0 && start < sentence.length ? sentence.slice(start) : sentence;
  const early = sightAt(bare, 'start');
  const body = bare.slice(early.length);
  for (const tail of tails(body)) {
    const how = { ...early.how, ...tail.how };
    found.push({
      tokens: tail.tokens,
      manner: { ...PLAIN, ...how, who: saysAt(body, 0, ['you']) ? 'performer' : null },
    });
    for (const { tokens, manner } of subjects(tail.tokens))
      found.push({ tokens, manner: { ...manner, ...how } });
  }
  return found;
}

function tails(tokens: readonly Token[]): { tokens: readonly Token[]; how: Sight['how'] }[] {
  const found: { tokens: readonly Token[]; how: Sight['how'] }[] = [{ tokens, how: {} }];
  for (let { tokens: rest, how } = found[0]; ;) {
    const sight = sightAt(rest, 'end');
    const length = sight.length > 0 ? sight.length : endLength(rest, AFTER);
    if (length === 0) return found;
    rest = rest.slice(0, rest.length - length);
    how = { ...how, ...sight.how };
    found.push({ tokens: rest, how });
  }
}

function subjects(tokens: readonly Token[]): Peeled[] {
  const spectator = startLength(tokens, 0, SPECTATOR);
  const performer = startLength(tokens, 0, PERFORMER);
  const adverb = saysAt(tokens, 0, ['secretly']) || saysAt(tokens, 0, ['openly']);
  if (spectator + performer === 0 && !adverb) return [];
  const who: Chooser | null = performer > 0 ? 'performer' : spectator > 0 ? 'spectator' : null;
  let at = spectator + performer;
  let manner: Manner = { ...PLAIN, who };
  const found: Peeled[] = [];
  const add = (): void => {
    if (at < tokens.length) found.push({ tokens: tokens.slice(at), manner });
  };
  for (;;) {
    const whether = startLength(tokens, at, MAY);
    const modal = whether > 0 ? 0 : startLength(tokens, at, MODALS);
    const secret = saysAt(tokens, at, ['secretly']);
    const open = saysAt(tokens, at, ['openly']);
    if (whether + modal === 0 && !secret && !open) break;
    manner = {
      ...manner,
      may: manner.may || whether > 0,
      secret: manner.secret || secret,
      open: manner.open || open,
    };
    at += whether + modal + (secret || open ? 1 : 0);
  }
  add();
  // `choose a pile` is a move of its own, `choose where to cut` only says who cuts.
  const chooses = startLength(tokens, at, CHOOSES);
  if (chooses > 0) {
    at += chooses;
    add();
  }
  return found;
}

/** Forms a verb in the third person may come from: `cuts`, `pushes`, `carries`. */
export function baseForms(word: string): string[] {
  if (!word.endsWith('s') || word.length < 3) return [];
  const forms = [word.slice(0, -1)];
  if (word.endsWith('ies')) forms.push(`${word.slice(0, -3)}y`);
  if (word.endsWith('es')) forms.push(word.slice(0, -2));
  return forms;
}

/**
 * The sentence with its verbs as commands: the first word, and words after `and` or `then`, where `verbs` knows the form; `takes`
 * becomes `take` even where some sentence has `takes`. Null when nothing changes.
 */
export function asCommand(tokens: readonly Token[], verbs: ReadonlySet<string>): readonly Token[] | null {
  let changed = false;
  const plain = tokens.map((token, i) => {
    // `They riffle shuffle`, `the spectator riffle shuffles`.
    const leads =
      i === 0 || tokens[i - 1].text === 'and' || tokens[i - 1].text === 'then' || token.text === 'shuffles';
    if (!leads || token.quoted) return token;
    const base = baseForms(token.text).find((form) => verbs.has(form));
    if (base === undefined) return token;
    changed = true;
    return { ...token, text: base };
  });
  return changed ? plain : null;
}
