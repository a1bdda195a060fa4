import { defaultServerConditions, defineConfig } from 'vite';

// The private condition reads the engine's TypeScript, so the command line is one step from source to bundle.
const conditions = ['@foregone/source', ...defaultServerConditions];

export default defineConfig({
  root: import.meta.dirname,
  resolve: { conditions },
  ssr: { resolve: { conditions }, noExternal: true, target: 'node' },
  build: {
    ssr: 'src/main.ts',
    target: 'node20',
    outDir: 'dist',
    // Type declarations of the same package may lie beside the bundle.
    emptyOutDir: false,
    minify: false,
    sourcemap: false,
    reportCompressedSize: false,
    rolldownOptions: { output: { entryFileNames: 'foregone.mjs', format: 'es', codeSplitting: false } },
  },
});
