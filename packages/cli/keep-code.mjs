// After the bundle is made: proves a note with it and keeps the machine code that V8 made on the way. `node keep-code.mjs BUNDLE`
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { codeFileOf, load } from './bin/load.mjs';

const NOTE = `# A warm-up

## Set-up
- packet: 8 cards, alternating red and black, face down

## Working
1. Any number of times:
   - Cut and turn over the top two.
2. Riffle shuffle the packet.

## Ending
- Exactly 4 cards are face up.
`;

const bundle = process.argv[2];
const entry = new URL('bin/foregone.mjs', import.meta.url).href;
const { program, script, digest } = load(bundle, entry, { code: false });
const folder = mkdtempSync(join(tmpdir(), 'foregone-code-'));
try {
  const note = join(folder, 'note.md');
  writeFileSync(note, NOTE);
  await program.warm([note]);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
writeFileSync(codeFileOf(bundle), Buffer.concat([digest, script.createCachedData()]));
