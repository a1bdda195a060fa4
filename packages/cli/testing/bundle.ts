import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';

/** The bundled program, made anew for the tests; `remove` takes it away again. */
export interface Bundle {
  readonly program: string;
  readonly remove: () => void;
}

export async function bundle(): Promise<Bundle> {
  const folder = mkdtempSync(join(tmpdir(), 'foregone-cli-'));
  const root = join(import.meta.dirname, '..');
  await build({
    root,
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'error',
    build: { outDir: folder },
  });
  return {
    program: join(folder, 'foregone.mjs'),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
