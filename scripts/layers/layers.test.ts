import { expect, test } from 'vitest';
import { judge } from './judge.ts';
import { walk } from './walk.ts';

const repository = walk();

test('the walk finds the source of every package', () => {
  for (const folder of repository.dependencies.keys()) {
    expect([...repository.files.keys()].some((file) => file.startsWith(`packages/${folder}/src/`))).toBe(
      true,
    );
  }
});

test('no file imports against the ladder, in a circle, or anything a pure engine may not use', () => {
  expect(judge(repository).join('\n')).toBe('');
});
