import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'foregone-bin-'));
  cpSync(new URL('../bin', import.meta.url), join(folder, 'bin'), { recursive: true });
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
  withBundle('process.stdout.write(process.argv.slice(2).join(" ")); process.exitCode = 3;');
  expect(start('prove', 'note.md')).toMatchObject({ status: 3, stdout: 'prove note.md' });
});

test('code kept for another bundle, or by another Node, is not used', () => {
  const bundle = withBundle('process.stdout.write("new");');
  const code = join(folder, 'dist/foregone.code');
  writeFileSync(code, 'of some other bundle altogether');
  expect(start().stdout).toBe('new');
  const digest = createHash('sha1').update(readFileSync(bundle)).digest();
  writeFileSync(code, Buffer.concat([digest, Buffer.from('no code of this Node')]));
  expect(start()).toMatchObject({ status: 0, stdout: 'new', stderr: '' });
});

test('code is kept beside a bundle when it is made, and the bundle then runs', () => {
  withBundle('process.stdout.write("ran");', 'process.stdout.write("warm");');
  const kept = spawnSync(
    process.execPath,
    [join(import.meta.dirname, '../keep-code.mjs'), join(folder, 'dist/foregone.cjs')],
    { encoding: 'utf8' },
  );
  expect(kept).toMatchObject({ status: 0, stdout: 'warm' });
  expect(existsSync(join(folder, 'dist/foregone.code'))).toBe(true);
  expect(start().stdout).toBe('ran');
});

function withBundle(run: string, warm = ''): string {
  mkdirSync(join(folder, 'dist'));
  const bundle = join(folder, 'dist/foregone.cjs');
  writeFileSync(bundle, `exports.run = async () => { ${run} }; exports.warm = async () => { ${warm} };`);
  return bundle;
}
