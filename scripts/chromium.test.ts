import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findChromium } from './chromium.mjs';

const folder = mkdtempSync(join(tmpdir(), 'foregone-chromium-'));
const program = (name: string, mode = 0o755) => {
  const path = join(folder, name);
  mkdirSync(join(path, '..'), { recursive: true });
  writeFileSync(path, '');
  chmodSync(path, mode);
  return path;
};

beforeAll(() => {
  program('later/chromium');
  program('first/google-chrome');
  program('locked/chromium', 0o644);
  program('elsewhere/my-browser');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('where Chromium is', () => {
  const path = (...names: string[]) => names.map((name) => join(folder, name)).join(delimiter);

  test('what CHROMIUM_PATH names comes before the PATH', () => {
    const CHROMIUM_PATH = join(folder, 'elsewhere/my-browser');
    expect(findChromium({ CHROMIUM_PATH, PATH: path('later') })).toBe(CHROMIUM_PATH);
  });

  test('a CHROMIUM_PATH that leads nowhere is not passed over in silence', () => {
    expect(findChromium({ CHROMIUM_PATH: join(folder, 'none'), PATH: path('later') })).toBeUndefined();
  });

  test('the first folder of the PATH that has one of its names', () => {
    expect(findChromium({ PATH: path('empty', 'first', 'later') })).toBe(join(folder, 'first/google-chrome'));
  });

  test('a file that cannot be run is none', () => {
    expect(findChromium({ PATH: path('locked') })).toBeUndefined();
  });

  test('nowhere', () => {
    expect(findChromium({ PATH: '' })).toBeUndefined();
    expect(findChromium({})).toBeUndefined();
  });
});
