import { posix } from 'node:path';
import { circles } from './circles.ts';
import { nodePackages, rungOf, unitOf } from './ladder.ts';
import { readFile } from './read-file.ts';

/** What the checker is told about the repository. */
export interface Repository {
  /** Text of every source file, by its path from the root of the repository, with `/` between folders. */
  readonly files: ReadonlyMap<string, string>;
  /** The names each package lists under `dependencies`, by the package's folder name. */
  readonly dependencies: ReadonlyMap<string, ReadonlySet<string>>;
  /** The folder name of each workspace package, by the name it is imported under. */
  readonly packages: ReadonlyMap<string, string>;
}

/**
 * Every way in which the source breaks the ladder, one sentence each, in the order of the files.
 *
 * Tests, and what lies in a `testing` folder, may import anything; nothing else may import them.
 */
export function judge(repository: Repository): string[] {
  const faults: string[] = [];
  const edges = new Map<string, Set<string>>();
  for (const [file, text] of [...repository.files].toSorted(([a], [b]) => (a < b ? -1 : 1))) {
    const facts = readFile(file, text);
    if (facts.broken !== undefined) faults.push(`${file}: cannot be read: ${facts.broken}`);
    const targets = new Set<string>();
    edges.set(file, targets);

    const isSource = !isTest(file);
    if (isSource && unitOf(file) === undefined) {
      faults.push(
        `${file}: no rung of the ladder is for this place; give it one in scripts/layers/ladder.ts`,
      );
    }
    if (isSource && packageOf(file) === 'engine') {
      for (const { what, line } of facts.impurities)
        faults.push(`${file}:${line}: the engine may not use ${what}`);
    }
    for (const { module, line } of facts.imports) {
      const target = module === undefined ? undefined : resolve(file, module, repository);
      if (target !== undefined) targets.add(target);
      if (!isSource) continue;
      const fault =
        module === undefined
          ? 'an import whose name is computed cannot be checked'
          : faultOf(file, module, target, repository);
      if (fault !== undefined) faults.push(`${file}:${line}: ${fault}`);
    }
  }
  for (const circle of circles(edges)) {
    faults.push(`a circle: ${[...circle, circle[0]].join(' -> ')}`);
  }
  return faults;
}

function faultOf(
  file: string,
  module: string,
  target: string | undefined,
  repository: Repository,
): string | undefined {
  const home = packageOf(file);
  if (module.startsWith('.')) {
    const path = posix.join(posix.dirname(file), module);
    if (!path.startsWith(`packages/${home}/src/`)) {
      return `${module} lies outside the source of this package; other packages are imported by name`;
    }
    if (isTest(path)) return `${module} is for tests only`;
    // Style sheets and the like have no imports of their own, so they have no place on the ladder either.
    if (target === undefined) return /\.[cm]?[jt]sx?$/.test(path) ? `${module} does not exist` : undefined;
    return faultOnLadder(file, unitOf(target));
  }
  if (module.startsWith('node:')) {
    return nodePackages.includes(home) ? undefined : `${module} is Node's, and ${home} runs without Node`;
  }
  const name = module.split('/', module.startsWith('@') ? 2 : 1).join('/');
  if (!(repository.dependencies.get(home)?.has(name) ?? false)) {
    return `${name} is not among the dependencies in packages/${home}/package.json`;
  }
  const neighbour = repository.packages.get(name);
  if (neighbour === undefined) return undefined;
  return faultOnLadder(file, neighbour === 'engine' ? 'index' : neighbour);
}

function faultOnLadder(file: string, target: string | undefined): string | undefined {
  const unit = unitOf(file);
  // A place without a rung is reported once, for itself.
  if (unit === undefined || target === undefined || unit === target) return undefined;
  const [from, to] = [rungOf(unit) ?? 0, rungOf(target) ?? 0];
  if (to < from) return undefined;
  return to === from
    ? `${unit} and ${target} stand on one rung and may not see each other`
    : `${unit} may not import ${target}, which stands above it`;
}

/** The file an import leads to, where it is one of the repository's. */
function resolve(file: string, module: string, repository: Repository): string | undefined {
  if (module.startsWith('.')) {
    const path = posix.join(posix.dirname(file), module);
    return repository.files.has(path) ? path : undefined;
  }
  const folder = repository.packages.get(module);
  const index = `packages/${folder}/src/index.ts`;
  return folder !== undefined && repository.files.has(index) ? index : undefined;
}

function packageOf(file: string): string {
  return file.split('/')[1] ?? '';
}

function isTest(file: string): boolean {
  return /\.test\.tsx?$/.test(file) || /^packages\/[^/]+\/testing\//.test(file);
}
