import { attributesOfKind, bitsOfKind, isOfKind } from '../phrases/of-kind.ts';
import { phrase } from '../phrases/phrase.ts';
import type { Kind, PileRef } from '../phrases/values.ts';
import { defineMove } from './move.ts';
import { badName } from './name-number.ts';
import { wholePile } from './seeing.ts';

type CountKindArgs = { kind: Kind; pile: PileRef; call: string };

/** P73: how many cards of a pile are of a kind, such as face up; nothing moves. */
export const countKind = defineMove<CountKindArgs>({
  id: 'count-kind',
  procedures: ['P73'],
  hands: 'choose',
  title: 'count cards of a kind',
  phrases: [
    phrase('count {kind:class} [(of|in) {pile:pile}], call (it|the number) {call:newname}'),
    phrase('call the number of {kind:class} (of|in) {pile:pile} {call:newname}'),
  ],
  defaults: { pile: 'packet' },
  help: 'Cards of a kind are counted as they lie, and later sentences may use the number.',
  caution: 'The faces have to be seen for that, so it cannot be done behind the back.',
  synonyms: ['how many are face up'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ call }) => badName(call),
  looks: {
    attributes: ({ kind }) => attributesOfKind(kind),
    bits: ({ kind }) => bitsOfKind(kind),
    observe: (args, table, view) =>
      wholePile(args.pile, view).filter(({ pile, place }) =>
        isOfKind(args.kind, table.cardAt(pile, place), (bit) => table.bitAt(pile, place, bit)),
      ).length,
  },
  options: ({ call }, view) => {
    const n = Number(view.seen ?? 0);
    return [{ key: n, actions: [], next: null, off: 0, set: { [call]: n } }];
  },
  say: () => '',
  examples: [
    {
      before: '1 2^ 3^',
      sentence: 'Count the face-up cards, call the number N.',
      choices: [],
      after: 'n = 2; 1 2^ 3^',
    },
    {
      before: 'packet: 1; pile 2: 4H 5S',
      sentence: 'Call the number of red cards in pile 2 K.',
      choices: [],
      after: 'k = 1; packet: 1; pile 2: 4H 5S',
    },
  ],
});
