import { BLANKS } from '../phrases/blanks.ts';
import { printPhrases } from '../phrases/phrase.ts';
import type { Args } from '../phrases/values.ts';
import type { Move } from '../moves/move.ts';
import type { Chooser, Times } from '../routine/routine.ts';
import { printHead } from './blocks.ts';
import { baseForms } from './manner.ts';

/** A move as it is said: by whom, seen or unseen, left out or not. */
export interface Said {
  readonly move: Move;
  readonly args: Args;
  readonly who: Chooser;
  readonly secret: boolean;
  readonly open?: boolean;
  readonly blind?: boolean;
  readonly may?: boolean;
}

/** The beginning of a sentence put inside one; a number's name stays a capital. */
export function lowerFirst(text: string): string {
  return /^\p{Lu}\b(?!')/u.test(text) && !text.startsWith('A ')
    ? text
    : text.slice(0, 1).toLowerCase() + text.slice(1);
}

export function upperFirst(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/**
 * The sentence of a move, without its stop. `who` chooses where nothing is said; null when no phrase of the move can say it.
 */
export function printClause(said: Said, who: Chooser = 'spectator'): string | null {
  const { move, args, may = false } = said;
  // That the performer does it behind the back changes nothing, but is not to be taken out of the note.
  if (said.blind === true && said.who === 'performer') return null;
  const plain = printPhrases(move.phrases, args, move.defaults, BLANKS);
  if (plain === null) return null;
  const manner = said.secret ? ', in secret' : said.open === true ? ', openly' : '';
  return printSubject(plain, said.who, who, may) + manner;
}

function printSubject(plain: string, chooser: Chooser, who: Chooser, may: boolean): string {
  if (chooser === who && chooser === 'spectator' && !may) return plain;
  const spoken = /^The spectator (\S+)(.*)$/su.exec(plain);
  const bare = spoken === null ? lowerFirst(plain) : (baseForms(spoken[1])[0] ?? spoken[1]) + spoken[2];
  if (chooser === 'performer') return `You ${may ? 'may ' : ''}${bare}`;
  if (may) return `The spectator may ${bare}`;
  return spoken === null ? `Have the spectator ${bare}` : plain;
}

/** `Cut the packet any number of times`. */
export function printRepeated(said: Said, times: Times, who: Chooser = 'spectator'): string | null {
  const one = printClause(said, who);
  if (one === null || (times.of === 'exactly' && times.n === 1)) return one;
  return `${one} ${lowerFirst(printHead({ is: 'repeat', times, who: 'spectator' }))}`;
}
