import { describe, expect, test } from 'vitest';
import { judge } from './judge.ts';

const engine = 'packages/engine/src';

/** Judges a small made-up repository; paths without a package are in the engine. */
function judged(files: Record<string, string>): string[] {
  const full = Object.entries(files).map(
    ([path, text]) => [path.startsWith('packages/') ? path : `${engine}/${path}`, text] as const,
  );
  return judge({
    files: new Map(full),
    dependencies: new Map([
      ['engine', new Set(['yaml', '@lezer/common'])],
      ['sheets', new Set(['@foregone/engine'])],
      ['web', new Set(['@foregone/engine', 'foregone'])],
      ['cli', new Set(['@foregone/engine', '@foregone/sheets', 'commander'])],
    ]),
    packages: new Map([
      ['@foregone/engine', 'engine'],
      ['@foregone/sheets', 'sheets'],
      ['@foregone/web', 'web'],
      ['foregone', 'cli'],
    ]),
  });
}

const empty = 'export const a = 1;';

describe('allowed', () => {
  test.each<[string, Record<string, string>]>([
    ['down the ladder', { 'cards/a.ts': "import '../base/b.ts';", 'base/b.ts': empty }],
    ['down several rungs', { 'report/a.ts': "import '../cards/b.ts';", 'cards/b.ts': empty }],
    ['within a folder', { 'note/messages/a.ts': "import '../b.ts';", 'note/b.ts': empty }],
    ['the file that knows all stages', { 'check.ts': "import './note/b.ts';", 'note/b.ts': empty }],
    ['the public names', { 'index.ts': "export * from './check.ts';", 'check.ts': empty }],
    ['a listed library', { 'note/a.ts': "import 'yaml'; import '@lezer/common/sub';" }],
    [
      'the engine from another package',
      { 'packages/web/src/ui/a.ts': "import '@foregone/engine';", 'index.ts': empty },
    ],
    [
      'a room of the workbench from its frame',
      {
        'packages/web/src/app/a.ts': "import '../shelf/b.ts'; import '../ui/c.ts';",
        'packages/web/src/shelf/b.ts': empty,
        'packages/web/src/ui/c.ts': empty,
      },
    ],
    ['a style sheet', { 'packages/web/src/ui/a.ts': "import './a.css';" }],
    ['Node in the command line', { 'packages/cli/src/a.ts': "import 'node:fs'; import 'commander';" }],
    [
      'anything in a test',
      {
        'recheck/a.test.ts': "import { test } from 'vitest'; import '../proving/b.ts'; Date.now();",
        'proving/b.ts': empty,
      },
    ],
    [
      'helpers of tests',
      { 'packages/engine/testing/a.ts': "import '../src/cards/b.ts';", 'cards/b.ts': empty },
    ],
  ])('%s', (_what, files) => {
    expect(judged(files)).toEqual([]);
  });
});

describe('forbidden', () => {
  test.each<[string, Record<string, string>, string]>([
    [
      'up the ladder',
      { 'base/a.ts': "import '../cards/b.ts';", 'cards/b.ts': empty },
      `${engine}/base/a.ts:1: base may not import cards, which stands above it`,
    ],
    [
      'up the ladder for a type',
      { 'moves/a.ts': "\nexport type { A } from '../routine/b.ts';", 'routine/b.ts': empty },
      `${engine}/moves/a.ts:2: moves may not import routine, which stands above it`,
    ],
    [
      'a neighbour on the same rung',
      { 'recheck/a.ts': "import '../proving/b.ts';", 'proving/b.ts': empty },
      `${engine}/recheck/a.ts:1: recheck and proving stand on one rung and may not see each other`,
    ],
    [
      'the public names from inside',
      { 'note/a.ts': "import '../index.ts';", 'index.ts': empty },
      `${engine}/note/a.ts:1: note may not import index, which stands above it`,
    ],
    [
      'a library that is not listed',
      { 'note/a.ts': "import 'react';" },
      `${engine}/note/a.ts:1: react is not among the dependencies in packages/engine/package.json`,
    ],
    [
      'the engine by its own name',
      { 'note/a.ts': "import '@foregone/engine';", 'index.ts': empty },
      `${engine}/note/a.ts:1: @foregone/engine is not among the dependencies in packages/engine/package.json`,
    ],
    [
      'Node in the engine',
      { 'note/a.ts': "import 'node:fs';" },
      `${engine}/note/a.ts:1: node:fs is Node's, and engine runs without Node`,
    ],
    [
      'Node by its old name',
      { 'note/a.ts': "import 'fs';" },
      `${engine}/note/a.ts:1: fs is not among the dependencies in packages/engine/package.json`,
    ],
    [
      'the clock in the engine',
      { 'note/a.ts': 'export const t = Date.now();' },
      `${engine}/note/a.ts:1: the engine may not use Date (the clock belongs to the caller)`,
    ],
    [
      'another package by path',
      { 'packages/cli/src/a.ts': "import '../../engine/src/base/b.ts';", 'base/b.ts': empty },
      'packages/cli/src/a.ts:1: ../../engine/src/base/b.ts lies outside the source of this package; other packages are imported by name',
    ],
    [
      'a package on the same rung',
      { 'packages/web/src/ui/a.ts': "import 'foregone';", 'packages/cli/src/index.ts': empty },
      'packages/web/src/ui/a.ts:1: web/ui and cli stand on one rung and may not see each other',
    ],
    [
      'one room of the workbench from another',
      {
        'packages/web/src/shelf/a.ts': "import '../editor/b.ts';",
        'packages/web/src/editor/b.ts': empty,
      },
      'packages/web/src/shelf/a.ts:1: web/shelf and web/editor stand on one rung and may not see each other',
    ],
    [
      'a folder of the workbench without a rung',
      { 'packages/web/src/attic/a.ts': empty },
      'packages/web/src/attic/a.ts: no rung of the ladder is for this place; give it one in scripts/layers/ladder.ts',
    ],
    [
      'a test from source',
      { 'note/a.ts': "import './b.test.ts';", 'note/b.test.ts': empty },
      `${engine}/note/a.ts:1: ./b.test.ts is for tests only`,
    ],
    [
      'helpers of tests from source',
      { 'note/a.ts': "import '../../testing/b.ts';", 'packages/engine/testing/b.ts': empty },
      `${engine}/note/a.ts:1: ../../testing/b.ts lies outside the source of this package; other packages are imported by name`,
    ],
    [
      'a file that is not there',
      { 'note/a.ts': "import './gone.ts';" },
      `${engine}/note/a.ts:1: ./gone.ts does not exist`,
    ],
    [
      'a name that is computed',
      { 'note/a.ts': 'export const a = (name: string) => import(name);' },
      `${engine}/note/a.ts:1: an import whose name is computed cannot be checked`,
    ],
    [
      'a circle of types',
      { 'note/a.ts': "import type { B } from './b.ts';", 'note/b.ts': "export type { A } from './a.ts';" },
      `a circle: ${engine}/note/a.ts -> ${engine}/note/b.ts -> ${engine}/note/a.ts`,
    ],
  ])('%s', (_what, files, fault) => {
    expect(judged(files)).toEqual([fault]);
  });

  test.each(['magic/a.ts', 'helpers.ts', 'check/a.ts', 'index/a.ts', 'cli/a.ts', 'packages/extra/src/a.ts'])(
    'a place without a rung: %s',
    (path) => {
      const full = path.startsWith('packages/') ? path : `${engine}/${path}`;
      expect(judged({ [path]: empty })).toEqual([
        `${full}: no rung of the ladder is for this place; give it one in scripts/layers/ladder.ts`,
      ]);
    },
  );

  test('a file that does not parse', () => {
    expect(judged({ 'note/a.ts': 'const = ;' })).toEqual([
      expect.stringContaining(`${engine}/note/a.ts: cannot be read:`),
    ]);
  });
});
