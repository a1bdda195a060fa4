// Makes node_modules match package-lock.json. It runs before anything is installed, so it uses Node's built-ins only.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

const OLDEST_NODE = [20, 19];

/**
 * Brings node_modules up to date, doing nothing when it already is.
 *
 * @param {string} [folder] the folder that holds package-lock.json
 * @returns {boolean} whether the dependencies are ready; when they are not, what to do has been printed
 */
export function ensure(folder = root) {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor < OLDEST_NODE[1])) {
    console.error(
      `Node ${OLDEST_NODE.join('.')} or newer is needed; this is ${process.versions.node}. Install a newer one from https://nodejs.org and try again.`,
    );
    return false;
  }

  const wanted = stampFor(folder);
  const stampFile = join(folder, 'node_modules', '.foregone-stamp');
  const found = existsSync(stampFile) ? readFileSync(stampFile, 'utf8') : undefined;
  if (found === wanted) return true;

  // Somebody who has just run `npm install` needs no second, slower one. A stamp from another platform or another
  // major version of Node is not trusted that far.
  const sameMachine = found === undefined || found.split('\n')[1] === wanted.split('\n')[1];
  if (sameMachine && installedMatchesLock(folder)) {
    writeFileSync(stampFile, wanted);
    return true;
  }

  console.log('Installing what package-lock.json lists (once, about half a minute) ...');
  // `npm ci` refuses a lock that lacks another platform's optional binary; `npm install --no-save` accepts it.
  if (!npm(folder, ['ci', '--include=dev'])) {
    console.log('`npm ci` did not work here; trying `npm install --no-save` ...');
    if (!npm(folder, ['install', '--no-save', '--include=dev'])) {
      console.error(
        'The dependencies could not be installed; the lines above say why. Check the network, then run the same command again.',
      );
      return false;
    }
  }
  writeFileSync(stampFile, wanted);
  return true;
}

/**
 * Two lines: a hash of the lock file, and the machine the dependencies were installed for.
 *
 * @param {string} folder
 */
export function stampFor(folder) {
  const lock = createHash('sha256')
    .update(readFileSync(join(folder, 'package-lock.json')))
    .digest('hex');
  return `${lock}\n${process.platform} ${process.arch} node ${process.versions.node.split('.')[0]}\n`;
}

/**
 * What a lock file says about one package.
 *
 * @typedef {{ version?: string, link?: boolean, optional?: boolean, os?: string[], cpu?: string[], libc?: string[] }} Entry
 */

/**
 * Whether every package the lock lists for this platform is there, in the listed version.
 *
 * @param {string} folder
 */
export function installedMatchesLock(folder) {
  const hidden = join(folder, 'node_modules', '.package-lock.json');
  if (!existsSync(hidden)) return false;
  /** @type {Record<string, Entry>} */
  let listed;
  /** @type {Record<string, Entry>} */
  let installed;
  try {
    listed = JSON.parse(readFileSync(join(folder, 'package-lock.json'), 'utf8')).packages;
    installed = JSON.parse(readFileSync(hidden, 'utf8')).packages;
  } catch {
    return false;
  }
  return Object.entries(listed).every(([path, entry]) => {
    // The workspaces themselves are folders of this repository; only what lies in node_modules is installed.
    if (!path.includes('node_modules/')) return true;
    const present = existsSync(join(folder, path, 'package.json'));
    if (entry.link) return present;
    if (present) return installed[path]?.version === entry.version;
    return entry.optional === true && mayBeAbsent(entry);
  });
}

/** @param {Entry} entry */
function mayBeAbsent({ os, cpu, libc }) {
  const namesNoPlatform = os === undefined && cpu === undefined;
  // An optional package without a platform is a helper of one that has one, and is left out together with it.
  return namesNoPlatform || libc !== undefined || !allows(os, process.platform) || !allows(cpu, process.arch);
}

/**
 * @param {string[] | undefined} list
 * @param {string} value
 */
function allows(list, value) {
  if (list === undefined) return true;
  if (list.some((item) => item.startsWith('!'))) return !list.includes(`!${value}`);
  return list.includes(value);
}

/**
 * @param {string} folder
 * @param {string[]} parameters
 */
function npm(folder, parameters) {
  // Started through npm, we know where npm itself is; started by hand, we have to find it on the PATH.
  const self = process.env.npm_execpath;
  const viaNode = self !== undefined && /\bnpm-cli\.[cm]?js$/.test(self);
  const done = viaNode
    ? spawnSync(process.execPath, [self, ...parameters], { cwd: folder, stdio: 'inherit' })
    : spawnSync('npm', parameters, {
        cwd: folder,
        stdio: 'inherit',
        shell: process.platform === 'win32',
      });
  return done.status === 0;
}

if (process.argv[1] !== undefined && fileURLToPath(import.meta.url) === process.argv[1]) {
  process.exitCode = ensure() ? 0 : 1;
}
