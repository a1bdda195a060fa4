import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { ensure, installedMatchesLock, stampFor } from './ensure.mjs';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'foregone-ensure-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

interface Entry {
  readonly version?: string;
  readonly optional?: boolean;
  readonly link?: boolean;
  readonly os?: string[];
  readonly cpu?: string[];
}

function lock(packages: Record<string, Entry>): void {
  writeFileSync(join(folder, 'package-lock.json'), JSON.stringify({ packages: { '': {}, ...packages } }));
}

function install(packages: Record<string, Entry>): void {
  for (const path of Object.keys(packages)) {
    mkdirSync(join(folder, path), { recursive: true });
    writeFileSync(join(folder, path, 'package.json'), '{}');
  }
  mkdirSync(join(folder, 'node_modules'), { recursive: true });
  writeFileSync(join(folder, 'node_modules', '.package-lock.json'), JSON.stringify({ packages }));
}

const a = { 'node_modules/a': { version: '1.0.0' } };

test('nothing installed does not match', () => {
  lock(a);
  expect(installedMatchesLock(folder)).toBe(false);
});

test('the listed version matches, another or a missing one does not', () => {
  lock(a);
  install(a);
  expect(installedMatchesLock(folder)).toBe(true);
  install({ 'node_modules/a': { version: '2.0.0' } });
  expect(installedMatchesLock(folder)).toBe(false);
  install(a);
  rmSync(join(folder, 'node_modules/a'), { recursive: true });
  expect(installedMatchesLock(folder)).toBe(false);
});

test("another platform's binary may be missing, this one's may not", () => {
  const other = { optional: true, version: '1.0.0', os: ['no such system'] };
  const own = { optional: true, version: '1.0.0', os: [process.platform], cpu: [process.arch] };
  lock({ ...a, 'node_modules/other': other });
  install(a);
  expect(installedMatchesLock(folder)).toBe(true);
  lock({ ...a, 'node_modules/own': own });
  expect(installedMatchesLock(folder)).toBe(false);
});

test('the workspaces of the repository need no installing, their links do', () => {
  const link = { 'node_modules/engine': { link: true } };
  lock({ ...a, 'packages/engine': { version: '0.1.0' }, ...link });
  install(a);
  expect(installedMatchesLock(folder)).toBe(false);
  install({ ...a, ...link });
  expect(installedMatchesLock(folder)).toBe(true);
});

test('the stamp follows the lock', () => {
  lock(a);
  const before = stampFor(folder);
  expect(stampFor(folder)).toBe(before);
  lock({});
  expect(stampFor(folder)).not.toBe(before);
});

test('what is already installed is accepted without installing', () => {
  lock(a);
  install(a);
  expect(ensure(folder)).toBe(true);
});
