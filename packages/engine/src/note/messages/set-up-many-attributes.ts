import { defineMessage, noteOf, onReading, text } from './message.ts';

function lines(what: string): string {
  const line = (name: string): string => `- ${name}: hearts\n`;
  const letter = (i: number): string => String.fromCharCode(97 + i);
  return Array.from({ length: 20 }, (_, i) =>
    line(`${what}${letter(Math.floor(i / 26))}${letter(i % 26)}`),
  ).join('');
}

export const setUpManyAttributes = defineMessage({
  code: 'set-up-many-attributes',
  severity: 'error',
  words: (facts) => `A note may declare at most ${text(facts.most)} attributes of its own.`,
  remedy: () => 'Declare only those that sentences speak of.',
  shown: onReading(
    noteOf({ setUp: `- packet: A-8 of clubs, face down\n${lines('attribute')}- ⟦last⟧: hearts` }),
    { most: 20 },
  ),
});
