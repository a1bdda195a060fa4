// Loads the bundled program together with the machine code that V8 made of it when it was built, which halves the time
// to start. Built-ins only.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';

/**
 * What src/main.ts exports.
 *
 * @typedef {{ run: () => Promise<void>, warm: (notes: readonly string[]) => Promise<void> }} Program
 */

/** @param {string} bundle path of the bundled program */
export const codeFileOf = (bundle) => bundle.replace(/\.cjs$/, '.code');

/**
 * What the bundle exports, and the script it came from.
 *
 * @param {string} bundle path of the bundled program, a CommonJS module
 * @param {string} entry URL of the file that starts it: what the program starts again for a thread of its own
 * @param {{ code?: boolean }} [options] whether code made before may be used
 * @returns {{ program: Program, script: Script, digest: Buffer }}
 */
export function load(bundle, entry, { code = true } = {}) {
  const text = readFileSync(bundle);
  const digest = createHash('sha1').update(text).digest();
  const cachedData = code ? codeFor(bundle, digest) : undefined;
  // The bundle is ASCII.
  const source = `(function (exports, require, module, __filename, __dirname) {${text.toString('latin1')}\n})`;
  const script = new Script(source, {
    filename: bundle,
    cachedData,
  });
  const module = { exports: /** @type {Program} */ ({}) };
  // The program knows itself by the file that started it.
  script.runInThisContext()(module.exports, createRequire(bundle), module, fileURLToPath(entry), '');
  return { program: module.exports, script, digest };
}

/**
 * Code made from just this bundle; V8 itself compares its own version and the length of the text, and no more.
 *
 * @param {string} bundle
 * @param {Buffer} digest
 */
function codeFor(bundle, digest) {
  try {
    const file = readFileSync(codeFileOf(bundle));
    return file.subarray(0, digest.length).equals(digest) ? file.subarray(digest.length) : undefined;
  } catch {
    return undefined;
  }
}
