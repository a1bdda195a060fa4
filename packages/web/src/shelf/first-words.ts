const LONGEST = 140;

/** The first words for people in a note, after its head and its heading: what the shelf shows under the title. */
export function firstWords(text: string): string {
  // Only the beginning is looked at: a shelf shows hundreds of notes at once.
  const body = text.slice(0, 4_000).replace(/^\uFEFF?---\r?\n[\s\S]*?\r?\n---[ \t]*(?:\r?\n|$)/, '');
  for (const line of body.split(/\r?\n/)) {
    const words = line.trim();
    if (words === '' || /^(?:#|[-*+]\s|\d+[.)]\s|>|```|---)/.test(words)) continue;
    // Signs of emphasis and of links are for the page, not for one line of a list.
    const letters = [...words.replace(/\[([^\]]*)\]\([^)]*\)/g, '$1').replace(/[*_`]/g, '')];
    return letters.length > LONGEST
      ? `${letters
          .slice(0, LONGEST - 1)
          .join('')
          .trimEnd()}…`
      : letters.join('');
  }
  return '';
}
