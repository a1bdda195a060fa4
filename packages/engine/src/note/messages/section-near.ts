import { defineMessage, onReading, text } from './message.ts';

export const sectionNear = defineMessage({
  code: 'section-near',
  severity: 'warning',
  words: (facts) =>
    `The heading "${text(facts.heading)}" is none of the sections that are read, but nearly "${text(facts.near)}".`,
  remedy: (facts) => `Write "${text(facts.near)}", or leave it if it is a section of your own.`,
  shown: onReading(
    '## Set-up\n- packet: A-8 of clubs, face down\n\n## Working\n1. Cut the packet.\n\n## ⟦Endng⟧\n- All cards are face down.\n',
    { heading: 'Endng', near: 'Ending' },
  ),
});
