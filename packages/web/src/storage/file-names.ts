/** Longest name of a file, without its ending; every common file system takes it. */
const LONGEST = 80;

/** A name for a note's file that every file system takes: letters, figures and hyphens. */
export function fileNameOf(title: string): string {
  const words = title
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  const cut = [...words].slice(0, LONGEST).join('').replace(/-+$/, '');
  // Windows keeps these names for devices, whatever the ending.
  return cut === '' || /^(?:con|prn|aux|nul|com\d|lpt\d)$/.test(cut) ? `note-${cut}`.replace(/-$/, '') : cut;
}

/** One file name for each title, all different even where a file system takes large and small letters for the same. */
export function fileNamesOf(titles: readonly string[], taken: Iterable<string> = []): string[] {
  const used = new Set([...taken].map((name) => name.toLowerCase()));
  return titles.map((title) => {
    const stem = fileNameOf(title);
    let name = `${stem}.md`;
    for (let count = 2; used.has(name); count += 1) name = `${stem}-${count}.md`;
    used.add(name);
    return name;
  });
}
