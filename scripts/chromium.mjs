// Finds a Chromium for the browser tests, or installs Debian's. It uses Node's built-ins only.
import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/**
 * Where Chromium is: CHROMIUM_PATH, else one of its usual names on the PATH.
 *
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {string | undefined}
 */
export function findChromium(env = process.env) {
  const named = env.CHROMIUM_PATH;
  if (named !== undefined && named !== '') return isProgram(named) ? named : undefined;
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.flatMap((folder) => NAMES.map((name) => join(folder, name))).find(isProgram);
}

/**
 * Finds Chromium or, as root on Debian, installs it.
 *
 * @returns {string | undefined} where it is; when it is nowhere, what to do has been printed
 */
export function ensureChromium() {
  const found = findChromium();
  if (found !== undefined) return found;
  if (process.env.CHROMIUM_PATH !== undefined && process.env.CHROMIUM_PATH !== '') {
    console.error(`CHROMIUM_PATH is ${process.env.CHROMIUM_PATH}, and no program is there.`);
    return undefined;
  }
  if (process.getuid?.() === 0 && apt(['--version'])) {
    console.log('Installing Chromium for the browser tests (once, some minutes) ...');
    if (apt(['update']) && apt(['install', '-y', '--no-install-recommends', 'chromium'])) {
      const installed = findChromium();
      if (installed !== undefined) return installed;
    }
  }
  console.error(
    'The browser tests need Chromium, and none was found. Install it (on Debian: sudo apt-get install chromium), or set ' +
      'CHROMIUM_PATH to the program, and run the same command again.',
  );
  return undefined;
}

/** @param {string[]} parameters */
function apt(parameters) {
  // Somebody else's installation may be under way; ten minutes are enough for any.
  const all = ['-o', 'DPkg::Lock::Timeout=600', '-q', ...parameters];
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const isQuestion = parameters[0] === '--version';
  return spawnSync('apt-get', all, { stdio: isQuestion ? 'ignore' : 'inherit', env }).status === 0;
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

if (process.argv[1] !== undefined && fileURLToPath(import.meta.url) === process.argv[1]) {
  const found = ensureChromium();
  if (found !== undefined) console.log(found);
  process.exitCode = found === undefined ? 1 : 0;
}
