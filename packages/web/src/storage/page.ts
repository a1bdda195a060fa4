import { openJournal, type Journal } from './journal.ts';

/** This page, among all pages of this browser. */
export const page: string = crypto.randomUUID();

/** The journal of this page. */
export function pageJournal(): Journal {
  return openJournal(localStorage, page);
}
