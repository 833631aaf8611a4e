import { defineConfig } from '@playwright/test';
import { findBrowser, quietArgs } from './browser.ts';

const executablePath = findBrowser();
const port = 4329;

export default defineConfig({
  testDir: '../browser',
  outputDir: '../../test-results',
  fullyParallel: true,
  workers: 2,
  timeout: 120_000,
  // A busy machine is no fault of the page.
  expect: { timeout: 20_000 },
  reporter: [['list'], ['json', { outputFile: '../../test-results/browser.json' }]],
  use: {
    actionTimeout: 20_000,
    baseURL: `http://localhost:${port}`,
    launchOptions: { args: quietArgs, ...(executablePath ? { executablePath } : {}) },
    trace: 'retain-on-failure',
  },
  projects: [
    { name: 'phone', use: { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true } },
    { name: 'laptop', use: { viewport: { width: 1280, height: 800 } } },
  ],
  webServer: {
    command: `astro preview --ignore-lock --port ${port}`,
    cwd: '../..',
    url: `http://localhost:${port}/`,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
