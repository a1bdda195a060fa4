import blank from './templates/blank.md?raw';
import fullPack from './templates/full-pack.md?raw';
import prediction from './templates/prediction.md?raw';

export interface Template {
  readonly name: string;
  readonly text: string;
}

/** What a new note may start from. */
export const TEMPLATES: readonly Template[] = [
  { name: 'Empty page', text: blank },
  { name: 'A packet and a prediction', text: prediction },
  { name: 'A full pack', text: fullPack },
];

/** The note that teaches by being changed, and the finished notes; loaded only when somebody asks for them. */
export async function loadExamples(): Promise<readonly string[]> {
  return (await import('./examples.ts')).EXAMPLES;
}
