const WORDS = {
  saved: 'saved',
  saving: 'saving …',
  conflict: 'changed in two places',
  refused: 'not saved',
  gone: 'no longer on the shelf',
} as const;

/** Whether what is on the page is kept. */
export function SaveMark({ state }: { readonly state: keyof typeof WORDS }) {
  const isTrouble = state !== 'saved' && state !== 'saving';
  return <span className={isTrouble ? 'brick' : undefined}>{WORDS[state]}</span>;
}
