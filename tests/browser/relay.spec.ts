import { execFile } from 'node:child_process';
import { createServer } from 'node:net';
import { test as base, expect, type Page } from '@playwright/test';

const freePort = () =>
  new Promise<number>((done) => {
    const server = createServer();
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });

/** The notebook as `npm start` serves it, the relay beside it. */
const test = base.extend<{ started: string }>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads what a fixture needs from here.
  started: async ({}, use) => {
    const port = await freePort();
    const code = `import('./tests/run/serve.mjs').then(({ serve }) => serve(${port})).then(() => console.log('ready'))`;
    const root = new URL('../..', import.meta.url).pathname;
    const child = execFile(process.execPath, ['--input-type=module', '-e', code], { cwd: root });
    await new Promise((done) => child.stdout?.once('data', done));
    await use(`http://127.0.0.1:${port}/`);
    child.kill();
  },
});

const unread = 'The label nobody has read';

test('three phones join by the code and their guesses are taken down at once; with the lesson the line ends', {
  tag: '@once',
}, async ({ started, browser }) => {
  test.setTimeout(120_000);
  const wrong: string[] = [];
  const windowOf = async (): Promise<Page> => {
    const page = await (await browser.newContext()).newPage();
    page.on('console', (message) => {
      if (/Content Security Policy/.test(message.text())) wrong.push(message.text());
    });
    return page;
  };
  const trainer = await windowOf();
  await trainer.goto(`${started}#/class`);
  await trainer.getByLabel('First names or numbers, one on a line').fill('Ada\nBen\nCal');
  await trainer.getByRole('searchbox').fill(unread);
  await trainer.getByRole('checkbox', { name: unread }).check();
  await trainer.getByRole('button', { name: /^Begin with/ }).click();
  await trainer.getByText('Guesses at once, over the shop’s network').click();
  await trainer.getByRole('button', { name: 'Turn it on' }).click();
  await trainer.getByRole('button', { name: 'Let the learners in' }).click();
  const href = await trainer
    .getByRole('link', { name: 'The link for the learners' })
    .getAttribute('href');
  const code = (await trainer.locator('relay-desk .read-out').textContent()) ?? '';
  expect(new URL(href ?? '').port).not.toBe(new URL(started).port);
  const phones = await Promise.all(
    ['Ada', 'Ben', 'Cal'].map(async (name, at) => {
      const phone = await windowOf();
      await phone.goto(href ?? '');
      if (at === 0) {
        await phone.getByLabel('Join code').fill('AAAAAA');
        await phone.getByRole('button', { name: 'Join' }).click();
        await expect(phone.getByRole('alert')).toContainText('not the join code');
      }
      await phone.getByLabel('Join code').fill(code);
      await phone.getByRole('button', { name: 'Join' }).click();
      await expect(phone.getByText('You have joined.')).toBeVisible();
      await phone.getByRole('button', { name, exact: true }).click();
      await phone.getByLabel('I say').fill(String(1000 + at));
      await phone.getByRole('button', { name: 'That is my guess' }).click();
      await expect(phone.getByText(`${name}, your guess is taken down.`)).toBeVisible();
      return phone;
    }),
  );
  await expect(trainer.getByText('3 phones have joined.')).toBeVisible();
  await expect(trainer.getByText('Committed: 3 of 3.')).toBeVisible();
  const [first] = phones;
  await first?.getByRole('button', { name: 'I mistyped' }).click();
  await first?.getByLabel('I say').fill('900');
  await first?.getByRole('button', { name: 'That is my guess' }).click();
  await expect(first?.getByText('Ada has committed already') ?? trainer.locator('x')).toBeVisible();
  await trainer.getByRole('button', { name: 'Open the working', exact: true }).click();
  await expect(trainer.getByRole('row', { name: /^Ada/ })).toContainText('1000 lb');
  await trainer.getByRole('button', { name: 'To the tally' }).click();
  await expect(trainer.getByText('Together:')).toBeVisible();
  await expect(
    first?.getByText('The line to the trainer is closed') ?? trainer.locator('x'),
  ).toBeVisible();
  await expect(fetch((href ?? '').replace(/#.*/, ''))).rejects.toThrow();
  expect(wrong).toEqual([]);
});
