import { byProgram, defineMessage, listed, text } from './message.ts';

export const noSuchPlace = defineMessage({
  code: 'no-such-place',
  severity: 'error',
  words: (facts) => `There is no place ${text(facts.place)} in the working.`,
  remedy: (facts) => `There are ${listed(facts.places)}.`,
  shown: byProgram({ place: '9', places: ['1', '2', 'end'] }),
});
