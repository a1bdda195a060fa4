import { defineMessage, onReading } from './message.ts';

export const headUnclosed = defineMessage({
  code: 'head-unclosed',
  severity: 'error',
  words: () => 'The head begins with --- but no line --- ends it.',
  remedy: () => 'Add a line --- after the last line of the head.',
  shown: onReading('⟦---⟧\ntitle: Lamps\n\n## Set-up\n- packet: A-8 of clubs, face down\n'),
});
