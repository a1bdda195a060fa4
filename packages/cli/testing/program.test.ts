import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundle, type Bundle } from './bundle.ts';
import { rerun } from './log.ts';

const LOGS = join(import.meta.dirname, 'logs');
let made: Bundle;
let folder: string;
beforeAll(async () => {
  made = await bundle();
  folder = mkdtempSync(join(tmpdir(), 'foregone-log-'));
  cpSync(join(import.meta.dirname, '../../../notes'), join(folder, 'notes'), { recursive: true });
}, 120_000);
afterAll(() => {
  made.remove();
  rmSync(folder, { recursive: true, force: true });
});

// `UPDATE_LOGS=1` writes what comes out now; the difference is then read by a person.
describe('commands, what they print and how they end', () => {
  test.each(readdirSync(LOGS).filter((file) => file.endsWith('.md')))('%s', { timeout: 120_000 }, (file) => {
    const path = join(LOGS, file);
    const log = readFileSync(path, 'utf8');
    const now = rerun(log, made.program, folder);
    if (process.env.UPDATE_LOGS === '1') writeFileSync(path, now);
    expect(now).toBe(readFileSync(path, 'utf8'));
  });
});

/** True, but only after every order of 11 different cards has been tried: longer than anybody waits. */
const LONG = `## Set-up
- packet: A-J of spades, face down

## Working
1. Shuffle the packet.

## Ending
- The values ascend or all cards are face down.
`;

interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function ended(child: ChildProcess): Promise<Ended> {
  let out = '';
  let err = '';
  child.stdout?.on('data', (chunk: Buffer) => (out += chunk.toString()));
  child.stderr?.on('data', (chunk: Buffer) => (err += chunk.toString()));
  return new Promise((resolve) => child.on('close', (code) => resolve({ code, out, err })));
}

const start = (parameters: readonly string[]): ChildProcess =>
  spawn(process.execPath, [made.program, ...parameters], { cwd: folder, stdio: ['pipe', 'pipe', 'pipe'] });

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

// More than a pipe holds: when all of it has been taken in, the program is up and reading.
const PADDED = `${LONG}\n## History\n\n${'Long ago. '.repeat(30_000)}\n`;

test('Ctrl-C ends a long proof at once, with 130', { timeout: 60_000 }, async () => {
  const child = start(['prove', '-', '--tables', '1000000000']);
  const end = ended(child);
  await new Promise<void>((resolve) => child.stdin?.end(PADDED, resolve));
  await wait(3000);
  expect(child.exitCode).toBeNull();
  const asked = performance.now();
  child.kill('SIGINT');
  expect(await end).toEqual({ code: 130, out: '', err: 'Stopped.\n' });
  expect(performance.now() - asked).toBeLessThan(10_000);
});

test('a reader that goes away is no fault', { timeout: 60_000 }, async () => {
  const child = start(['moves', '--json']);
  child.stdout?.once('data', () => child.stdout?.destroy());
  const { code, err } = await ended(child);
  expect(err).toBe('');
  expect(code).toBe(0);
});

test('files that cannot be read say why', () => {
  mkdirSync(join(folder, 'binary'), { recursive: true });
  writeFileSync(join(folder, 'binary/note.md'), Uint8Array.from([0, 1, 2, 255]));
  writeFileSync(join(folder, 'binary/latin.md'), Uint8Array.from([0x23, 0x20, 0xe9, 0x0a]));
  const prove = (path: string) =>
    spawnSync(process.execPath, [made.program, 'prove', path], { cwd: folder, encoding: 'utf8' });
  expect(prove('binary/note.md')).toMatchObject({
    status: 2,
    stderr: 'binary/note.md is no text: it has bytes that no note has.\n',
  });
  expect(prove('binary/latin.md')).toMatchObject({ status: 2, stderr: 'binary/latin.md is not in UTF-8.\n' });
  expect(prove('binary')).toMatchObject({ status: 64, stderr: 'binary is a folder, not a file.\n' });
  expect(prove('binary/none.md')).toMatchObject({ status: 64, stderr: 'binary/none.md is not there.\n' });
});

test('colours only where they are wanted', () => {
  const prove = (env: NodeJS.ProcessEnv): string =>
    spawnSync(process.execPath, [made.program, 'prove', 'notes/four-doors.md'], {
      cwd: folder,
      encoding: 'utf8',
      env: { PATH: process.env.PATH, ...env },
    }).stdout;
  expect(prove({})).not.toContain('\u001b[');
  expect(prove({ FORCE_COLOR: '1' })).toContain('\u001b[');
  expect(prove({ FORCE_COLOR: '1', NO_COLOR: '1' })).not.toContain('\u001b[');
});

test('a note on standard input', () => {
  const { status, stdout } = spawnSync(process.execPath, [made.program, 'prove', '-', '--json'], {
    cwd: folder,
    encoding: 'utf8',
    input: readFileSync(join(folder, 'notes/four-doors.md')),
  });
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({ file: '-', verdict: 'proved' });
});
