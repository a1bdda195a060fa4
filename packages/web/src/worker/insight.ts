import {
  mixingReport,
  sayTrouble,
  setUpReport,
  sizesReport,
  type Checked,
  type Limits,
  type Result,
  type Trouble,
} from '@foregone/engine';
import type { Insight, Topic } from './protocol.ts';

/** Most numbers of cards that the page asks about at once. */
const MOST_SIZE = 32;

/** What the engine says of one topic, in words. */
export function insightInto(topic: Topic, checked: Checked, limits: Limits): Insight {
  switch (topic) {
    case 'set-up':
      return told(setUpReport(checked, limits), ({ words, sentences }) => ({
        words,
        lines: sentences.flatMap(({ text, needs, why }) =>
          needs === null
            ? [`${text}: ${why}`]
            : [...needs.structures.map((structure) => structure.words), ...needs.rest].map(
                (needed) => `${text}: ${needed}`,
              ),
        ),
      }));
    case 'sizes':
      return told(sizesReport(checked, { most: MOST_SIZE }, limits), ({ words, rows }) => ({
        words,
        lines: rows
          .filter(({ verdict }) => verdict !== 'does not fit')
          .map(({ cards, verdict, why }) => `${cards} cards: ${verdict}${why === '' ? '' : `. ${why}`}`),
      }));
    case 'mixing':
      return told(mixingReport(checked, {}, limits), ({ words }) => ({ words, lines: [] }));
  }
}

function told<T>(found: Result<T, Trouble>, say: (report: T) => Insight): Insight {
  return found.ok ? say(found.value) : { words: sayTrouble(found.error), lines: [] };
}
