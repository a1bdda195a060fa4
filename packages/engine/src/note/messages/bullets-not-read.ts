import { defineMessage, noteOf, onReading } from './message.ts';

export const bulletsNotRead = defineMessage({
  code: 'bullets-not-read',
  severity: 'warning',
  words: () => 'These bullets are not read as steps.',
  remedy: () => 'Number them if they are steps; leave them if they are notes.',
  shown: onReading(noteOf({ working: '1. Cut the packet.\n   - ⟦gently⟧' })),
});
