import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { defaultServerConditions, defineConfig, type Plugin } from 'vite';

// The private condition reads the engine's TypeScript, so the command line is one step from source to bundle.
const conditions = ['@foregone/source', ...defaultServerConditions];

/** Writes what is not ASCII as escapes, last of all: text of single bytes is read and compiled in half the time. */
const asciiOnly: Plugin = {
  name: 'ascii-only',
  generateBundle(_options, files) {
    for (const file of Object.values(files)) if (file.type === 'chunk') file.code = inAscii(file.code);
  },
};

/** Keeps the machine code beside the bundle; made by a process of its own, as it will be used. */
const keepCode: Plugin = {
  name: 'keep-code',
  writeBundle({ dir }) {
    execFileSync(process.execPath, [join(import.meta.dirname, 'keep-code.mjs'), join(dir!, 'foregone.cjs')]);
  },
};

const inAscii = (code: string): string =>
  code.replace(/[^\0-\x7f]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`);

export default defineConfig({
  root: import.meta.dirname,
  plugins: [asciiOnly, keepCode],
  resolve: { conditions },
  ssr: { resolve: { conditions }, noExternal: true, target: 'node' },
  build: {
    ssr: 'src/main.ts',
    target: 'node20',
    outDir: 'dist',
    // Type declarations of the same package may lie beside the bundle.
    emptyOutDir: false,
    // Spaces and comments only: a fault that is reported should still name the function it came from.
    sourcemap: false,
    reportCompressedSize: false,
    rolldownOptions: {
      output: {
        entryFileNames: 'foregone.cjs',
        format: 'cjs',
        codeSplitting: false,
        minify: { compress: false, mangle: false, codegen: { removeWhitespace: true } },
      },
    },
  },
});
