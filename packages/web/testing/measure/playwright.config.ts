import { defineConfig } from '@playwright/test';
import config from '../../playwright.config.ts';

const { webServer } = config;
if (webServer === undefined || Array.isArray(webServer)) throw new Error('the package has one server');

/** What `npm run bench -- browser` runs: one thing after the other, so that nothing is measured beside something else. */
export default defineConfig({
  ...config,
  testDir: '.',
  testMatch: '**/*.measure.ts',
  outputDir: '../../../../node_modules/.cache/playwright-measure',
  fullyParallel: false,
  workers: 1,
  webServer: { ...webServer, cwd: '../..' },
});
