import type { Diagnostic } from '../../base/diagnostic.ts';
import { MESSAGES } from './index.ts';

const BY_CODE = new Map(MESSAGES.map((message) => [message.code, message]));

/** What is the matter and what to do about it. */
export interface Described {
  readonly words: string;
  readonly remedy: string;
}

/** A diagnostic, or any cause with a code, in words. */
export function describe({ code, facts }: Pick<Diagnostic, 'code' | 'facts'>): Described {
  const message = BY_CODE.get(code);
  // A test holds that every code has its words; a person is better served by a bare code than by a crash.
  if (message === undefined) return { words: `Trouble: ${code}.`, remedy: '' };
  return { words: sentence(message.words(facts)), remedy: sentence(message.remedy(facts)) };
}

/** Words may begin with a fact, such as the name of a pile. */
function sentence(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
