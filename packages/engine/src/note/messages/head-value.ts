import { defineMessage, noteOf, onReading, text } from './message.ts';

const WANTED: Readonly<Record<string, string>> = {
  title: 'Write a line of text.',
  minutes: 'Write a number, such as "minutes: 4".',
  credits: 'Write a list whose entries have "for" and "source".',
  readings: 'Write a list of entries such as "- cut: the cut is completed".',
};

export const headValue = defineMessage({
  code: 'head-value',
  severity: 'error',
  words: (facts) => `This is not a value for "${text(facts.key)}".`,
  remedy: (facts) => WANTED[text(facts.key)] ?? 'Write a value after the colon.',
  shown: onReading(noteOf({ head: '---\ntitle: Lamps\nminutes: ⟦a few⟧\n---\n' }), { key: 'minutes' }),
});
