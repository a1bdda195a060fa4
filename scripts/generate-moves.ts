import { MOVES } from '../packages/engine/src/moves/index.ts';
import type { Hands, Move, MoveExample, Reading } from '../packages/engine/src/moves/move.ts';
import { namesFor, parseTable, perform, readAs } from '../packages/engine/testing/packets.ts';
import { draw } from './generate-drawing.ts';
import {
  anchor,
  block,
  capital,
  code,
  HOW_TO_READ_TABLES,
  HOW_TO_READ_WORDINGS,
  page,
  plain,
  table,
  wordings,
} from './generate-parts.ts';

/** Groups in the order in which somebody works at a table. */
const GROUPS: Readonly<Record<Hands, string>> = {
  cut: 'Cuts',
  turn: 'Turning',
  deal: 'Deals and counts',
  gather: 'Gathering',
  mix: 'Shuffles',
  choose: 'Choosing and noting',
  'hand over': 'Several piles, several people',
  order: 'Order',
};

/** Every sentence of a working, with a small packet before and after. */
export function movesPage(moves: readonly Move[] = MOVES): string {
  const groups = (Object.keys(GROUPS) as Hands[])
    .map((hands) => ({ title: GROUPS[hands], own: moves.filter((move) => move.hands === hands) }))
    .filter(({ own }) => own.length > 0);
  const list = groups.map(
    ({ title, own }) =>
      `**${title}**: ${own.map((move) => `[${move.title}](#${anchor(move.title)})`).join(', ')}.`,
  );
  return page([
    '# Sentences of the working',
    `The ${moves.length} moves there are. Unless the sentence says otherwise the spectator chooses, and every choice counts, the silly ones included.`,
    HOW_TO_READ_WORDINGS,
    HOW_TO_READ_TABLES,
    ...list,
    ...groups.flatMap(({ title, own }) => [`## ${title}`, ...own.flatMap(entry)]),
  ]);
}

function entry(move: Move): string[] {
  return [
    `### ${capital(move.title)}`,
    plain(move.help),
    `**Mind:** ${plain(move.caution)}`,
    wordings(move.phrases),
    ...facts(move),
    ...readings(move),
    ...move.examples.map((example) => drawn(move, example)),
  ];
}

function facts(move: Move): string[] {
  const { synonyms, procedures } = move;
  const known = openness(move);
  return [
    [
      ...(synonyms.length === 0 ? [] : [`Trade words: ${synonyms.map(plain).join(', ')}.`]),
      ...(move.looks === undefined ? [] : ['It looks at cards.']),
      ...(known === '' ? [] : [known]),
      `Catalogue: ${procedures.join(', ')}.`,
    ].join(' '),
  ];
}

function openness({ open }: Move): string {
  if (open === undefined || open === false) return '';
  return open === true
    ? 'The choice is known to everybody unless the sentence says that it is secret.'
    : 'Depending on the wording, the choice is known to everybody unless the sentence says that it is secret.';
}

/** Words with two meanings that come up in the sentences of the examples. */
function readings(move: Move): string[] {
  const found = new Map<string, Reading>();
  for (const { before, sentence } of move.examples)
    for (const args of readAs(move, sentence, namesFor(parseTable(before))).slice(0, 1))
      for (const reading of move.readings?.(args) ?? []) found.set(JSON.stringify(reading), reading);
  if (found.size === 0) return [];
  const rows = [...found.values()].map(({ word, taken, other }) => [plain(word), plain(taken), code(other)]);
  return [table(['Word', 'Taken to mean', 'For the other meaning write'], rows)];
}

function drawn(move: Move, { before, sentence, choices, after, source }: MoveExample): string {
  const { moments, keys } = perform(move, sentence, before, choices);
  const [args] = readAs(move, sentence, namesFor(parseTable(before)));
  const [first] = moments;
  // The laws of moves have every example read and carried out.
  if (args === undefined || first === undefined) throw new Error(`${move.id}: "${sentence}" leads nowhere`);
  const said = move.say(args, keys, first.view);
  const ways = first.options.length;
  const choice = [
    ...(choices.length === 0 ? [] : [`chosen  ${choices.join(', ')}`]),
    ...(said === '' ? [] : [`        the spectator ${said}`]),
    ...(ways < 2 ? [] : [`        ${ways} ways on at first`]),
  ];
  const pictures = draw([
    ['before', parseTable(before)],
    ['after', parseTable(after)],
  ]);
  const parts = [sentence, pictures, choice.join('\n'), source === undefined ? '' : `from    ${source}`];
  return block(parts.filter((part) => part !== '').join('\n\n'));
}
