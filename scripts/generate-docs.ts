// `npm run docs` writes the pages that are made from the modules; `npm run docs:check` (`--check`) says whether they are up to date
// and whether every module has all its parts.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CLAIMS } from '../packages/engine/src/claims/index.ts';
import { MOVES } from '../packages/engine/src/moves/index.ts';
import { MESSAGES } from '../packages/engine/src/note/messages/index.ts';
import { missingParts } from './generate-completeness.ts';
import { endingsPage } from './generate-endings.ts';
import { messagesPage } from './generate-messages.ts';
import { movesPage } from './generate-moves.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Every generated page, by its path from the root of the repository. */
const PAGES: Readonly<Record<string, () => string>> = {
  'docs/generated/moves.md': () => movesPage(),
  'docs/generated/endings.md': () => endingsPage(),
  'docs/generated/messages.md': () => messagesPage(),
};

function main(parameters: readonly string[]): number {
  const missing = missingParts(MOVES, CLAIMS, MESSAGES);
  missing.forEach((line) => console.error(line));
  const onlyCheck = parameters.includes('--check');
  const stale = Object.entries(PAGES).filter(([path, make]) => {
    const made = make();
    if (made === textOf(path)) return false;
    if (!onlyCheck) {
      mkdirSync(dirname(join(root, path)), { recursive: true });
      writeFileSync(join(root, path), made);
    }
    console.error(`${path} ${onlyCheck ? 'is not up to date: npm run docs' : 'written'}`);
    return true;
  });
  return missing.length > 0 || (onlyCheck && stale.length > 0) ? 1 : 0;
}

function textOf(path: string): string | undefined {
  try {
    return readFileSync(join(root, path), 'utf8');
  } catch (error) {
    // A page that was never written is not up to date.
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw error;
  }
}

process.exitCode = main(process.argv.slice(2));
