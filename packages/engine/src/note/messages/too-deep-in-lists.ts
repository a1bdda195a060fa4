import { defineMessage, onReading } from './message.ts';

export const tooDeepInLists = defineMessage({
  code: 'too-deep-in-lists',
  severity: 'error',
  words: () => 'So many quotes and lists inside one another are not told apart.',
  remedy: () => 'Use fewer marks at the beginning of the line.',
  shown: onReading(
    '⟦> > > > > > > > > > > > > > > > > > > > ⟧a\n\n## Set-up\n- packet: A-8 of clubs, face down\n\n## Working\n1. Cut the packet.\n',
  ),
});
