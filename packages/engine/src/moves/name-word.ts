import { trouble } from '../base/diagnostic.ts';
import { lettersIn } from '../phrases/blanks/spot.ts';
import { phrase } from '../phrases/phrase.ts';
import { decided } from './handling.ts';
import { defineMove } from './move.ts';
import { badName, HOW } from './name-number.ts';

type NameWordArgs = { words: readonly string[]; how: 'names' | 'thinks of'; call: string };

/** P41: one of several words is named; its number of letters is kept for later steps. */
export const nameWord = defineMove<NameWordArgs>({
  id: 'name-word',
  procedures: ['P41'],
  hands: 'choose',
  title: 'name a word',
  phrases: [phrase(`${HOW} [one of] {words:words}, ` + 'call the number of [its] letters {call:newname}')],
  defaults: { how: 'names' },
  help: 'One of these words is named; later sentences may deal or move a card for each of its letters. Spaces count nothing.',
  caution: 'Only the number of letters is kept. Words of one length lead to the same.',
  synonyms: ['spell a word named'],
  brings: ({ call }) => ({ numbers: [call] }),
  check: ({ words, call }) => [
    ...badName(call),
    ...(new Set(words).size === words.length ? [] : [trouble('word-twice')]),
  ],
  open: ({ how }) => how === 'names',
  options: ({ words, call }) =>
    decided(words.map((text) => ({ key: text, actions: [], next: null, set: { [call]: lettersIn(text) } }))),
  say: ({ how }, [text]) => `${how} "${text}"`,
  examples: [
    {
      before: '1',
      sentence: 'The spectator names one of "lamp", "tea" or "sea wind", call the number of its letters N.',
      choices: ['sea wind'],
      after: 'n = 7; 1',
    },
  ],
});
