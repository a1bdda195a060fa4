import { byProgram, defineMessage, listed, namesOf, text } from './message.ts';

export const mishapNames = defineMessage({
  code: 'mishap-names',
  severity: 'error',
  words: (facts) => `${listed(namesOf(facts.names))} has no value yet ${text(facts.place)}.`,
  remedy: () => 'Name it in the mishap, or write a number.',
  shown: byProgram({ names: ['n'], place: 'before step 2' }),
});
