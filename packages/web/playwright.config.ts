import { defineConfig } from '@playwright/test';
import { findChromium } from '../../scripts/chromium.mjs';

// Its own for every run, so that two runs do not meet; the run's other processes inherit it.
process.env['FOREGONE_PORT'] ??= String(4_200 + (process.pid % 800));
const port = process.env['FOREGONE_PORT'];

export default defineConfig({
  testDir: 'testing/browser',
  outputDir: '../../node_modules/.cache/playwright',
  snapshotPathTemplate: '{testDir}/../screenshots/{arg}{ext}',
  fullyParallel: true,
  workers: 2,
  // A test that only passes at a second try tells of a fault, in it or in the app.
  retries: 0,
  forbidOnly: process.env['CI'] !== undefined,
  timeout: 120_000,
  // Fonts are drawn a little differently from machine to machine.
  expect: {
    timeout: 30_000,
    toHaveScreenshot: { maxDiffPixelRatio: 0.03, threshold: 0.3, animations: 'disabled' },
  },
  // Killing pages wants the machine for itself, and would slow down every other test beside it.
  projects: [
    { name: 'rooms', testMatch: '**/*.e2e.ts', testIgnore: '**/killed.e2e.ts' },
    { name: 'kills', testMatch: '**/killed.e2e.ts', dependencies: ['rooms'] },
  ],
  reporter: [['list']],
  use: {
    baseURL: `http://localhost:${port}/`,
    viewport: { width: 1280, height: 860 },
    locale: 'en-GB',
    timezoneId: 'UTC',
    trace: 'off',
    actionTimeout: 30_000,
    launchOptions: {
      executablePath: findChromium() ?? '',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: `npx vite preview --strictPort --port ${port}`,
    url: `http://localhost:${port}/`,
    reuseExistingServer: false,
    timeout: 30_000,
  },
});
