import { describe, expect, test } from 'vitest';
import { readFile } from './read-file.ts';

const modules = (text: string) => readFile('a.ts', text).imports.map(({ module }) => module);
const impurities = (text: string) => readFile('a.ts', text).impurities.map(({ what }) => what.split(' ')[0]);

describe('imports', () => {
  test.each([
    ["import { a } from './b.ts';", './b.ts'],
    ["import type { A } from './b.ts';", './b.ts'],
    ["import { type A } from './b.ts';", './b.ts'],
    ["import * as b from './b.ts';", './b.ts'],
    ["import './b.ts';", './b.ts'],
    ["export { a } from './b.ts';", './b.ts'],
    ["export type { A } from './b.ts';", './b.ts'],
    ["export * from './b.ts';", './b.ts'],
    ["export type * as b from './b.ts';", './b.ts'],
    ["const b = await import('./b.ts');", './b.ts'],
    ["type A = import('./b.ts').A;", './b.ts'],
    ["type B = typeof import('./b.ts');", './b.ts'],
    ["import b = require('./b.ts');", './b.ts'],
    ["import url from './b.ts?worker&url';", './b.ts'],
  ])('%s', (text, expected) => {
    expect(modules(text)).toEqual([expected]);
  });

  test('a computed name is kept, as unknown', () => {
    expect(modules('const b = await import(name);')).toEqual([undefined]);
  });

  test('comments, strings and plain exports import nothing', () => {
    const text = `// import { a } from './b.ts'\nconst s = "import './b.ts'";\nexport { s };\nexport const t = 1;`;
    expect(modules(text)).toEqual([]);
  });

  test('the line is that of the name', () => {
    expect(readFile('a.ts', "\n\nimport {\n  a,\n} from './b.ts';").imports[0]?.line).toBe(5);
  });

  test('tsx is read too', () => {
    expect(readFile('a.tsx', "import { B } from './b.tsx';\nexport const a = <B>hi</B>;")).toMatchObject({
      imports: [{ module: './b.tsx' }],
      broken: undefined,
    });
  });

  test('a file that does not parse says so', () => {
    expect(readFile('a.ts', 'const = ;').broken).toBeTypeOf('string');
  });
});

describe('impurities', () => {
  test.each([
    ['const t = Date.now();', 'Date'],
    ['const t = new Date();', 'Date'],
    ['function f(when: Date) { return when; }', 'Date'],
    ['const o = { Date };', 'Date'],
    ['const x = Math.random();', 'Math.random,'],
    ["const x = Math['random']();", 'Math.random,'],
    ['const { random } = Math;', 'Math'],
    ["console.log('hi');", 'console'],
    ['const log = console;', 'console'],
    ['const t = performance.now();', 'performance'],
    ['const g = globalThis;', 'globalThis'],
    ['const f = new Intl.NumberFormat();', 'Intl'],
    ['names.sort((a, b) => a.localeCompare(b));', 'localeCompare'],
    ['const s = (5).toLocaleString();', 'toLocaleString'],
    ['declare const fetch: () => string;', 'declare'],
    ['/// <reference lib="dom" />', '///'],
  ])('%s', (text, expected) => {
    expect(impurities(text)).toContain(expected);
  });

  test.each([
    'const x = Math.floor(3.5);',
    'const note = { Date: 1, console: 2 };',
    'const t = note.Date;',
    'interface Note { readonly Date: string; console(): void }',
    'const performance = { steps: 3 }; const n = performance.steps;',
    "const s = 'Date, console, Math.random()'; // Date",
  ])('pure: %s', (text) => {
    expect(impurities(text)).toEqual([]);
  });
});
