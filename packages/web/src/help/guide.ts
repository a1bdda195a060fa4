const FILES: Readonly<Record<string, string>> = import.meta.glob<string>('../../../../docs/guide/*.md', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** A page of the guide. */
export interface GuidePage {
  /** As in its address. */
  readonly name: string;
  readonly title: string;
  readonly text: string;
}

/** The guide, in the order in which it is read. */
export const GUIDE: readonly GuidePage[] = Object.entries(FILES)
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([path, text]) => ({
    name: path.replace(/^.*\/\d*-?|\.md$/g, ''),
    title: /^# (.*)$/m.exec(text)?.[1] ?? path,
    text,
  }));
