/** A name set to fit a card's face: the lines and their size in the card's own units (70 wide). */
export interface FittedName {
  readonly lines: readonly string[];
  readonly size: number;
}

const WIDTH = 58;
const LARGEST = 15;
const SMALLEST = 8;
const MOST_LINES = 4;
// Mean width of a letter of the italic, in ems; a little generous, so that no name touches the edge.
const EM = 0.56;

/** Breaks a name at its spaces and sizes it; what still does not fit is cut with an ellipsis (the label says it all). */
export function fitName(name: string): FittedName {
  const words = name.trim().split(/\s+/u);
  const longest = Math.max(1, ...words.map((word) => [...word].length));
  const size = Math.min(LARGEST, Math.max(SMALLEST, WIDTH / (longest * EM)));
  const room = Math.max(1, Math.floor(WIDTH / (size * EM)));
  const lines: string[] = [];
  for (const word of words.map((each) => cut(each, room))) {
    const line = lines.at(-1);
    if (line !== undefined && [...line].length + 1 + [...word].length <= room) {
      lines[lines.length - 1] = `${line} ${word}`;
    } else lines.push(word);
  }
  const kept = lines.slice(0, MOST_LINES);
  if (lines.length > MOST_LINES) kept[MOST_LINES - 1] = cut(`${kept[MOST_LINES - 1]}…`, room);
  return { lines: kept, size };
}

function cut(text: string, room: number): string {
  const letters = [...text];
  return letters.length <= room ? text : `${letters.slice(0, room - 1).join('')}…`;
}
