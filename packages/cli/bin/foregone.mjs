#!/usr/bin/env node
// Hands over to the bundled program. Built-ins only: this file has to work when nothing has been built yet.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { load } from './load.mjs';

const bundle = fileURLToPath(new URL('../dist/foregone.cjs', import.meta.url));

if (existsSync(bundle)) {
  await load(bundle, import.meta.url).program.run();
} else {
  process.stderr.write(
    'foregone has not been built yet. In the folder with package-lock.json, type:\n\n  npm run build\n\n',
  );
  process.exitCode = 70;
}
