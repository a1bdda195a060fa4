import { defineMessage, noteOf, onReading } from './message.ts';

export const ownSecret = defineMessage({
  code: 'own-secret',
  severity: 'error',
  words: () => 'The performer makes this choice, so it cannot be kept from the performer.',
  remedy: () => 'Leave out "in secret", or let the spectator choose.',
  shown: onReading(noteOf({ working: '1. ⟦You cut the packet, in secret⟧.' })),
});
