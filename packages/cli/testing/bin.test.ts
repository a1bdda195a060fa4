import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'foregone-bin-'));
  mkdirSync(join(folder, 'bin'));
  copyFileSync(new URL('../bin/foregone.mjs', import.meta.url), join(folder, 'bin/foregone.mjs'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const start = (...parameters: string[]) =>
  spawnSync(process.execPath, [join(folder, 'bin/foregone.mjs'), ...parameters], { encoding: 'utf8' });

test('without a bundle it says what to type and ends with 70', () => {
  const { status, stderr } = start();
  expect(stderr).toContain('npm run build');
  expect(status).toBe(70);
});

test('with a bundle it hands over, arguments and exit code included', () => {
  mkdirSync(join(folder, 'dist'));
  writeFileSync(
    join(folder, 'dist/foregone.mjs'),
    'process.stdout.write(process.argv.slice(2).join(" ")); process.exitCode = 3;',
  );
  expect(start('prove', 'note.md')).toMatchObject({ status: 3, stdout: 'prove note.md' });
});
