import startHere from './start-here.md?raw';

const finished = import.meta.glob<string>('../../../../notes/**/*.md', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** The note that teaches by being changed first, then the finished notes of this repository in the order of their names. */
export const EXAMPLES: readonly string[] = [
  startHere,
  ...Object.keys(finished)
    .filter((path) => !path.endsWith('/README.md'))
    .toSorted()
    .map((path) => finished[path]!),
];
