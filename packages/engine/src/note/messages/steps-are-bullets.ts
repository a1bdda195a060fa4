import { defineMessage, noteOf, onReading } from './message.ts';

export const stepsAreBullets = defineMessage({
  code: 'steps-are-bullets',
  severity: 'error',
  words: () => 'These are bullets; steps are numbered.',
  remedy: () => 'Begin each step with a number and a stop, such as "1. Cut the packet."',
  shown: onReading(noteOf({ working: '- ⟦Cut the packet.⟧' })),
});
