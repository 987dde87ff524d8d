import { defineConfig } from '@playwright/test';
import { flags } from '../run/flags.mjs';

const port = Number(process.env.TAREBOOK_TEST_PORT ?? 4199);
const address = `http://localhost:${port}/`;

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
