// `npm run bench [suite...]`: bundles the measurements as the command line is bundled, since a program run from its source by a
// loader is another program, and runs them in a process of their own.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, defaultServerConditions } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));
const conditions = ['@foregone/source', ...defaultServerConditions];
const folder = mkdtempSync(join(tmpdir(), 'foregone-bench-'));

try {
  await build({ root: join(root, 'packages/cli'), logLevel: 'error' });
  await build({
    configFile: false,
    logLevel: 'error',
    root,
    resolve: { conditions },
    ssr: { resolve: { conditions }, noExternal: true, target: 'node' },
    build: {
      ssr: 'bench/main.ts',
      target: 'node20',
      outDir: folder,
      emptyOutDir: false,
      minify: false,
      rolldownOptions: { output: { entryFileNames: 'bench.mjs', format: 'es', codeSplitting: false } },
    },
  });
  const { status } = spawnSync(
    process.execPath,
    ['--expose-gc', join(folder, 'bench.mjs'), '--root', root, ...process.argv.slice(2)],
    { stdio: 'inherit' },
  );
  process.exitCode = status ?? 70;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
