import optimizeLocales from '@react-aria/optimize-locales-plugin';
import react from '@vitejs/plugin-react';
import { defaultClientConditions, defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

// The private condition reads the engine's TypeScript, so nothing has to be built before the app.
const conditions = ['@foregone/source', ...defaultClientConditions];

// Notes are hostile text, so the page may load and run its own files only. Styles made by scripts are narrowed to a
// nonce at start-up, because a page made of files cannot send a fresh one itself: see src/ui/style-policy.ts.
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "media-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

const headers = {
  'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
};

/** Puts the policy into the page too, for servers that send no headers of their own. */
const contentPolicy: Plugin = {
  name: 'content-policy',
  apply: 'build',
  transformIndexHtml: {
    order: 'pre',
    handler: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: policy },
        injectTo: 'head-prepend',
      },
    ],
  },
};

export default defineConfig({
  root: import.meta.dirname,
  // The address bar is the hash, so the built files work from any folder of any server.
  base: './',
  resolve: { conditions },
  worker: { format: 'es' },
  plugins: [
    react(),
    // The app speaks English; the widgets bring thirty tongues.
    optimizeLocales.vite({ locales: ['en-US'] }),
    contentPolicy,
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Foregone',
        short_name: 'Foregone',
        description: 'Invent, check, rehearse, perform and teach self-working card effects',
        display: 'standalone',
        background_color: '#efe9dc',
        theme_color: '#efe9dc',
        icons: [
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{html,js,css,woff2,svg,png,webmanifest,wasm,ttf}'],
        maximumFileSizeToCacheInBytes: 8_000_000,
        cleanupOutdatedCaches: true,
        navigateFallback: 'index.html',
      },
    }),
  ],
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    manifest: true,
    reportCompressedSize: false,
    modulePreload: { polyfill: false },
  },
  preview: { headers },
});
