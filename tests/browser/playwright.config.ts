import { defineConfig } from '@playwright/test';

const port = Number(process.env.TAREBOOK_TEST_PORT ?? 4199);
const address = `http://localhost:${port}/`;

/**
 * Chromium draws parts of its own window as pages, in a process beside every page that is tested:
 * half of what a test cost. The others stand here because Playwright's own list is replaced by ours.
 */
const without = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'AimEnabled',
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsFirstBalancedModeAutoEnable',
  'HttpsUpgrades',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
];

const flags = [
  `--disable-features=${without.join()}`,
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export default defineConfig({
  testDir: '.',
  outputDir: '../.results',
  forbidOnly: true,
  workers: 2,
  // Once more where a machine that does much else let a click fall on what was moving; told as flaky.
  retries: 1,
  // Machines that do much else at the same time are given time.
  timeout: 180_000,
  expect: { timeout: 45_000 },
  use: {
    baseURL: address,
    // Only what tests offline needs one; elsewhere it would fetch the whole page for every test.
    serviceWorkers: 'block',
    launchOptions: {
      executablePath: process.env.TAREBOOK_CHROMIUM ?? '/usr/bin/chromium',
      args: flags,
    },
  },
  projects: [
    { name: 'desktop', use: { viewport: { width: 1280, height: 900 } } },
    {
      name: 'phone',
      // What hangs on no width is tried once: what is kept, typed, linked, copied, printed, works offline.
      testIgnore: ['**/keep.spec.ts', '**/offline.spec.ts', '**/paper.spec.ts'],
      grepInvert: /@once/,
      use: { viewport: { width: 360, height: 740 }, hasTouch: true },
    },
  ],
  webServer: {
    command: `npx vite preview --port ${port} --strictPort --host localhost`,
    cwd: new URL('../../notebook', import.meta.url).pathname,
    url: address,
    reuseExistingServer: false,
  },
});
