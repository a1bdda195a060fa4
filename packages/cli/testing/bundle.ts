import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';

/** The bundled program and what starts it, made anew for the tests; `remove` takes them away again. */
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
    build: { outDir: join(folder, 'dist') },
  });
  cpSync(join(root, 'bin'), join(folder, 'bin'), { recursive: true });
  return {
    program: join(folder, 'bin/foregone.mjs'),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
