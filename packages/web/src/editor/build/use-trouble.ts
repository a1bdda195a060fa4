import { useEffect, useState } from 'react';
import { createEngine } from '../../worker/client.ts';

/** A pause after which a sentence is read, in milliseconds. */
const PAUSE = 150;

/** What the engine says against a sentence at its place; empty when it is understood, undefined while it reads. */
export function useTrouble(text: string | undefined, sentence: string): string | undefined {
  const [engine] = useState(() => createEngine());
  const [found, setFound] = useState<{ readonly text: string; readonly words: string }>();
  useEffect(() => () => engine.stop(), [engine]);
  useEffect(() => {
    if (text === undefined) return undefined;
    const timer = setTimeout(() => {
      engine.ask('read', text).then(
        (answer) => {
          if (answer === undefined) return;
          const at = text.indexOf(sentence);
          const first = answer.report.diagnostics.find(
            ({ severity, range }) =>
              severity === 'error' && range.from < at + sentence.length && range.to > at,
          );
          setFound({ text, words: first === undefined ? '' : `${first.words} ${first.remedy}`.trim() });
        },
        () => setFound({ text, words: '' }),
      );
    }, PAUSE);
    return () => clearTimeout(timer);
  }, [engine, text, sentence]);
  return found?.text === text ? found?.words : undefined;
}

export function sayTrouble(trouble: string | undefined): string {
  if (trouble === undefined) return 'Reading …';
  return trouble === '' ? 'Understood.' : trouble;
}
