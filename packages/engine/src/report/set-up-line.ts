import type { Card } from '../cards/card.ts';
import { isAnonymous, shortName } from '../cards/show.ts';
import { compileInside } from '../note/compile.ts';
import { read } from '../note/read.ts';
import type { Routine } from '../routine/routine.ts';

/** What a set-up writes behind the name of a pile, for cards as a routine lays them; null where words for them are lacking. */
export function setUpLine(routine: Routine, pile: string): string | null {
  const found = routine.setUp.piles.find(({ name }) => name === pile);
  if (found === undefined) return null;
  const lying = found.cards.map((one) => ({ ...one, card: routine.cards[one.card] }));
  const [first] = lying;
  const open = routine.setUp.freedoms.filter((freedom) => freedom.free === 'faces' && freedom.pile === pile);
  const isOpen = open.some((freedom) => 'count' in freedom && freedom.count === lying.length);
  // Faces open in part have no words behind a list.
  if (open.length > 0 && !isOpen) return null;
  const isOneWay = lying.every(({ up }) => up === first.up);
  const ends = lying.some(({ end }) => end === 1);
  const isNamed = lying.every(({ card }) => !isAnonymous(card));
  // Cards without a name cannot carry signs.
  if (!isNamed && (!isOneWay || ends)) return null;
  const words = isNamed
    ? lying.map(
        ({ card, up, end }) => shortName(card) + (!isOneWay && up === 1 ? '^' : '') + (end === 1 ? "'" : ''),
      )
    : lying.map(({ card }) => kindWord(card));
  if (words.some((word) => word === null)) return null;
  const faces = isOpen
    ? ', face up or down as they like'
    : !isOneWay
      ? ''
      : first.up === 1
        ? ', face up'
        : ', face down';
  return words.join(' ') + faces;
}

/** `red` for a red card, `heart` for a heart. */
function kindWord(card: Card): string | null {
  if (!isAnonymous(card)) return null;
  const word = card.name.replace(/^an? /, '').replace(/ card$/, '');
  return word === 'card' ? null : word;
}

/** The whole note with the routine's cards in its set-up; empty where its lines cannot be replaced. */
export function noteWith(text: string, routine: Routine): string {
  const { lines, setUp } = compileInside(read(text), false);
  if (setUp === null || setUp.lines.length !== lines.length) return '';
  let result = '';
  let at = 0;
  for (const [i, line] of setUp.lines.entries()) {
    if (line.is !== 'pile') continue;
    const written = line.runs.length === 0 ? 'empty' : setUpLine(routine, line.pile);
    if (written === null) return '';
    result += `${text.slice(at, lines[i].from)}${line.pile}: ${written}`;
    at = lines[i].to;
  }
  return result + text.slice(at);
}
