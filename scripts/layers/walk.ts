import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Repository } from './judge.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Reads the source and the tests of every package in this repository. */
export function walk(): Repository {
  const files = new Map<string, string>();
  const dependencies = new Map<string, ReadonlySet<string>>();
  const packages = new Map<string, string>();
  for (const entry of readdirSync(join(root, 'packages'), { withFileTypes: true })) {
    if (!entry.isDirectory()) continue;
    const manifest: unknown = JSON.parse(
      readFileSync(join(root, 'packages', entry.name, 'package.json'), 'utf8'),
    );
    if (!isManifest(manifest)) throw new Error(`packages/${entry.name}/package.json has no name`);
    packages.set(manifest.name, entry.name);
    dependencies.set(entry.name, new Set(Object.keys(manifest.dependencies ?? {})));
    for (const folder of ['src', 'testing']) collect(`packages/${entry.name}/${folder}`, files);
  }
  return { files, dependencies, packages };
}

function collect(folder: string, files: Map<string, string>): void {
  for (const entry of list(folder)) {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) collect(path, files);
    else if (/\.[cm]?[jt]sx?$/.test(entry.name)) files.set(path, readFileSync(join(root, path), 'utf8'));
  }
}

function list(folder: string) {
  try {
    return readdirSync(join(root, folder), { withFileTypes: true });
  } catch (error) {
    // A package need not have a testing folder.
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return [];
    throw error;
  }
}

function isManifest(value: unknown): value is { name: string; dependencies?: Record<string, string> } {
  return typeof value === 'object' && value !== null && 'name' in value && typeof value.name === 'string';
}
