/** Lines of at most `width` characters, broken between words; every line after the first begins with `indent` spaces. */
export function wrap(text: string, width: number, indent = 0): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const room = width - (lines.length === 0 ? 0 : indent);
    if (line !== '' && line.length + 1 + word.length > room) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.join(`\n${' '.repeat(indent)}`);
}

/** The same with `lead` before the first line and as many spaces before the others. */
export function hang(lead: string, text: string, width: number): string {
  return lead + wrap(text, width - lead.length, 0).replaceAll('\n', `\n${' '.repeat(lead.length)}`);
}
