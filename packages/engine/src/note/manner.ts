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
  readonly may: boolean;
}

export interface Peeled {
  readonly tokens: readonly Token[];
  readonly manner: Manner;
}

const PLAIN: Manner = { who: null, secret: false, open: false, may: false };

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
const SECRET = sequences(`
  in secret | secretly | out of your sight | out of sight | without you looking | without your looking | unseen |
  unseen by you | while you look away | while you are turned away | while your back is turned | with your back turned |
  behind their back | behind back | under table
`);

const OPEN = sequences('openly | in full view | for all to see | in sight of all | aloud | out loud');

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
  const found: Peeled[] = [
    { tokens: sentence, manner: { ...PLAIN, who: saysAt(sentence, 0, ['you']) ? 'performer' : null } },
  ];
  const start = startLength(sentence, 0, ADVERBS);
  const bare = start > 0 && start < sentence.length ? sentence.slice(start) : sentence;
  const said = startLength(bare, 0, SECRET);
  const shown = startLength(bare, 0, OPEN);
  const early = said + shown < bare.length ? said + shown : 0;
  const body = bare.slice(early);
  for (const tail of tails(body)) {
    const secret = (early > 0 && said > 0) || tail.secret;
    const open = (early > 0 && shown > 0) || tail.open;
    found.push({
      tokens: tail.tokens,
      manner: { ...PLAIN, secret, open, who: saysAt(body, 0, ['you']) ? 'performer' : null },
    });
    for (const { tokens, manner } of subjects(tail.tokens))
      found.push({
        tokens,
        manner: { ...manner, secret: secret || manner.secret, open: open || manner.open },
      });
  }
  return found;
}

function tails(tokens: readonly Token[]): { tokens: readonly Token[]; secret: boolean; open: boolean }[] {
  const found = [{ tokens, secret: false, open: false }];
  let rest = tokens;
  let secret = false;
  let open = false;
  for (;;) {
    const hidden = endLength(rest, SECRET);
    const shown = hidden > 0 ? 0 : endLength(rest, OPEN);
    const again = hidden + shown > 0 ? 0 : endLength(rest, AFTER);
    if (hidden + shown + again === 0) return found;
    secret ||= hidden > 0;
    open ||= shown > 0;
    rest = rest.slice(0, rest.length - hidden - shown - again);
    found.push({ tokens: rest, secret, open });
  }
}

function subjects(tokens: readonly Token[]): Peeled[] {
  const spectator = startLength(tokens, 0, SPECTATOR);
  const performer = startLength(tokens, 0, PERFORMER);
  const secretly = saysAt(tokens, 0, ['secretly']) || saysAt(tokens, 0, ['openly']) ? 1 : 0;
  if (spectator + performer + secretly === 0) return [];
  const who: Chooser | null = performer > 0 ? 'performer' : spectator > 0 ? 'spectator' : null;
  let at = spectator + performer;
  let secret = false;
  let open = false;
  let may = false;
  const found: Peeled[] = [];
  const add = (): void => {
    if (at < tokens.length) found.push({ tokens: tokens.slice(at), manner: { who, secret, open, may } });
  };
  for (;;) {
    const whether = startLength(tokens, at, MAY);
    const modal = whether > 0 ? 0 : startLength(tokens, at, MODALS);
    const hidden = saysAt(tokens, at, ['secretly']) ? 1 : 0;
    const shown = saysAt(tokens, at, ['openly']) ? 1 : 0;
    if (whether + modal + hidden + shown === 0) break;
    may ||= whether > 0;
    secret ||= hidden > 0;
    open ||= shown > 0;
    at += whether + modal + hidden + shown;
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
 * The sentence with its verbs as commands: the first word, and words after `and` or `then`, where `verbs` knows the form.
 * Null when nothing changes.
 */
export function asCommand(tokens: readonly Token[], verbs: ReadonlySet<string>): readonly Token[] | null {
  let changed = false;
  const plain = tokens.map((token, i) => {
    const leads = i === 0 || tokens[i - 1].text === 'and' || tokens[i - 1].text === 'then';
    if (!leads || token.quoted || verbs.has(token.text)) return token;
    const base = baseForms(token.text).find((form) => verbs.has(form));
    if (base === undefined) return token;
    changed = true;
    return { ...token, text: base };
  });
  return changed ? plain : null;
}
