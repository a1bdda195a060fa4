import { MOST_PILES } from '../limits.ts';
import { defineMessage, noteOf, onReading, text } from './message.ts';

function lines(what: string): string {
  const line = (name: string): string => `- ${name}: "${name}", face down\n`;
  const letter = (i: number): string => String.fromCharCode(97 + i);
  return Array.from({ length: MOST_PILES }, (_, i) =>
    line(`${what}${letter(Math.floor(i / 26))}${letter(i % 26)}`),
  ).join('');
}

export const setUpManyPiles = defineMessage({
  code: 'set-up-many-piles',
  severity: 'error',
  words: (facts) => `A set-up may have at most ${text(facts.most)} piles.`,
  remedy: () => 'Use fewer piles.',
  shown: onReading(noteOf({ setUp: `${lines('pile')}- ⟦last⟧: 7H, face down` }), { most: MOST_PILES }),
});
