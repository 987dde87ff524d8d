import { execFile } from 'node:child_process';
import { createServer } from 'node:net';
import { test as base, expect, type Page } from '@playwright/test';
import { objections } from './objections';

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
  await trainer.getByText('Learners’ phones, at once over the shop’s network').click();
  await trainer.getByRole('button', { name: 'Only try it, on this machine alone' }).click();
  const href = await trainer
    .getByRole('link', { name: 'The link for the learners' })
    .getAttribute('href');
  const code = (await trainer.locator('relay-desk .read-out').textContent()) ?? '';
  expect(new URL(href ?? '').port).not.toBe(new URL(started).port);
  const phones = await Promise.all(
    ['Ada', 'Ben', 'Cal'].map(async (name, at) => {
      const phone = await windowOf();
      // Over the shop's network a phone has plain http, where a browser gives less than on this machine.
      await phone.addInitScript(() => {
        for (const [of, what] of [
          [Crypto.prototype, 'subtle'],
          [Crypto.prototype, 'randomUUID'],
          [Navigator.prototype, 'serviceWorker'],
          [Navigator.prototype, 'clipboard'],
        ] as const)
          Reflect.deleteProperty(of, what);
      });
      // The first types what stands on the wall; the others scan it, the join code in it.
      if (at > 0) await phone.goto(href ?? '');
      else {
        await phone.goto(new URL('join', href ?? '').href);
        await phone.getByLabel('Join code').fill('AAAAAA');
        await phone.getByRole('button', { name: 'Join' }).click();
        await expect(phone.getByRole('alert')).toContainText('not the join code');
        await phone.getByLabel('Join code').fill(code);
        await phone.getByRole('button', { name: 'Join' }).click();
      }
      await expect(phone.getByText('You have joined.')).toBeVisible();
      // Nothing there leads to the filed cases.
      await expect(phone.getByRole('link', { name: 'Cases' })).toHaveCount(0);
      await phone.getByRole('button', { name, exact: true }).click();
      await phone.getByLabel('I say').fill(String(1000 + at));
      await phone.getByRole('button', { name: 'That is my guess' }).click();
      await expect(phone.getByText(`${name}, your guess is noted.`)).toBeVisible();
      return phone;
    }),
  );
  await expect(trainer.getByText('3 phones have joined.')).toBeVisible();
  await expect(trainer.getByText('Committed: 3 of 3.')).toBeVisible();
  const [first] = phones;
  await first?.getByRole('button', { name: 'I mistyped' }).click();
  await expect(
    first?.getByText('What you sent first stands until you send it anew.') ?? trainer.locator('x'),
  ).toBeVisible();
  // What was said stands there to be set right, and gives way to what is said anew.
  await expect(first?.getByLabel('I say') ?? trainer.locator('x')).toHaveValue('1000');
  await first?.getByLabel('I say').fill('900');
  await first?.getByRole('button', { name: 'That is my guess' }).click();
  await expect(first?.getByText('Ada, your guess is noted.') ?? trainer.locator('x')).toBeVisible();
  await expect(trainer.getByText('Committed: 3 of 3.')).toBeVisible();
  // A phone that slept and reads the page anew is let in again, as whom it was, without typing.
  await first?.reload();
  await expect(first?.getByText('You say 900 lb.') ?? trainer.locator('x')).toBeVisible();
  await expect(first?.getByLabel('Join code') ?? trainer.locator('x')).toHaveCount(0);
  await trainer.getByRole('button', { name: 'Open the working', exact: true }).click();
  await expect(trainer.getByRole('row', { name: /^Ada/ })).toContainText('900 lb');
  await trainer.getByRole('button', { name: 'To the tally' }).click();
  await expect(trainer.getByText('Together:')).toBeVisible();
  for (const [at, phone] of phones.entries()) {
    await expect(phone.getByRole('heading', { level: 1 })).toHaveText('The class is over');
    await expect(phone.locator('main')).toContainText(`Thank you, ${['Ada', 'Ben', 'Cal'][at]}.`);
    await expect(phone.getByLabel('Join code')).toHaveCount(0);
  }
  await expect(fetch((href ?? '').replace(/#.*/, ''))).rejects.toThrow();
  expect(wrong).toEqual([]);
});

const lesson = [
  [unread, 'predict'],
  ['A drift against the wall', 'ask'],
  ['Four people, a dog, and a crossover rated for five thousand', 'say'],
  ['A foot further back, and what it costs', 'spot'],
] as const;

test('a lesson of four cases, an exercise each: on the wall, on two phones and on the trainer’s own device', {
  tag: '@once',
}, async ({ started, browser }) => {
  test.setTimeout(240_000);
  const shop = await browser.newContext();
  const trainer = await shop.newPage();
  await trainer.goto(`${started}#/class`);
  await trainer.getByLabel('First names or numbers, one on a line').fill('Ada\nBen\nCal');
  for (const [title, exercise] of lesson) {
    await trainer.getByRole('searchbox').fill(title);
    await trainer.getByRole('checkbox', { name: title }).check();
    await trainer.getByLabel(`What they do with ${title}`).selectOption(exercise);
  }
  await trainer.getByRole('button', { name: 'Begin with 4 cases' }).click();
  await trainer.getByText('Learners’ phones, at once over the shop’s network').click();
  await trainer.getByRole('button', { name: 'Only try it, on this machine alone' }).click();
  const code = (await trainer.locator('relay-desk .read-out').textContent()) ?? '';
  const href =
    (await trainer.getByRole('link', { name: 'The link for the learners' }).getAttribute('href')) ??
    '';
  const wall = await shop.newPage();
  await wall.setViewportSize({ width: 1920, height: 1080 });
  await wall.goto(`${started}#/class/learners`);
  await expect(wall.locator('.invited')).toContainText(`${new URL(href).host}/join`);
  await expect(wall.locator('.invited')).toContainText(code);
  await expect(wall.locator('.ask svg.code')).toBeVisible();
  const join = async (name: string): Promise<Page> => {
    const phone = await (
      await browser.newContext({ viewport: { width: 360, height: 740 } })
    ).newPage();
    await phone.goto(href);
    await expect(phone.getByText('You have joined.')).toBeVisible();
    await phone.getByRole('button', { name, exact: true }).click();
    return phone;
  };
  const [ada, ben] = await Promise.all([join('Ada'), join('Ben')]);
  await expect(wall.locator('.invited')).toContainText('2 joined');
  // A name that a phone has is not offered to the next, and may be taken along to another phone.
  const third = await (
    await browser.newContext({ viewport: { width: 360, height: 740 } })
  ).newPage();
  await third.goto(href);
  await expect(third.getByText('On another phone already: Ada, Ben')).toBeVisible();
  await expect(third.getByRole('button', { name: 'Ada' })).toHaveCount(0);
  expect(await objections(third)).toEqual([]);
  const taken = async (phone: Page, name: string) => {
    await phone.getByRole('button', { name: /^That is my/ }).click();
    await expect(phone.getByText(`${name}, your guess is noted.`)).toBeVisible();
  };
  let isThirdIn = false;
  const opened = async (spread: string, then: string) => {
    await trainer.getByRole('button', { name: 'Open the working', exact: true }).click();
    await expect(wall.locator('guess-spread')).toContainText('3 answers.');
    if (!isThirdIn) {
      // Whoever comes once the working is open is not asked for a guess.
      isThirdIn = true;
      await third.getByRole('button', { name: 'Cal', exact: true }).click();
      await expect(third.getByText('so no guess is taken any more')).toBeVisible();
      await expect(third.getByLabel('I say')).toHaveCount(0);
      await expect(ada.getByRole('button', { name: 'I mistyped' })).toHaveCount(0);
    }
    // Who was right comes by the trainer's own step, with all of it on the wall.
    await trainer.getByRole('group', { name: 'On the wall' }).getByRole('button').nth(1).click();
    await expect(wall.locator('.were-right')).toHaveText(spread);
    const over = await wall.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    expect(over).toBeLessThanOrEqual(0);
    await trainer.getByRole('button', { name: then }).click();
  };
  const commit = () => trainer.getByRole('button', { name: 'Commit' }).click();

  await ada.getByLabel('I say').fill('1,003');
  await taken(ada, 'Ada');
  await ben.getByLabel('I say').fill('900');
  await taken(ben, 'Ben');
  await trainer.locator('#prediction').fill('1,020');
  await commit();
  await opened('2 of 3 were right.', 'The next case');

  // What is asked is answered at once; the rules would have asked for one thing.
  await expect(wall.locator('.ask')).toContainText('What do you ask next?');
  const chimney = /furnace.*snow/i;
  await ada.locator('.asks button', { hasText: chimney }).click();
  await expect(ada.getByText('That settles it.')).toBeVisible();
  // Settled is not said yet: the verdict is asked of everybody, and how sure they are of it.
  await ada.getByRole('button', { name: 'That is my answer' }).click();
  await expect(ada.getByRole('alert')).toContainText('choose what the verdict is');
  const verdict = 'What is the verdict?';
  await ada.getByLabel(verdict).selectOption('must not stay so');
  await taken(ada, 'Ada');
  await ben.getByRole('button', { name: 'That is my answer' }).click();
  await expect(ben.getByRole('alert')).toContainText('still open; ask until it is settled');
  await ben.locator('.asks button').filter({ hasNotText: chimney }).first().click();
  await ben.locator('.asks button', { hasText: chimney }).click();
  await ben.getByLabel(verdict).selectOption('must not stay so');
  await taken(ben, 'Ben');
  await trainer.locator('guess-field .asks button', { hasText: chimney }).click();
  await trainer.getByLabel(verdict).selectOption('must not stay so');
  await commit();
  await opened('2 of 3 were right.', 'The next case');

  await expect(wall.locator('.ask')).toContainText('Say it to the customer');
  await ada.getByLabel('I say to the customer').fill('It is fine.');
  await taken(ada, 'Ada');
  await expect(ada.locator('.handed')).toContainText('“It is fine.”');
  await ben
    .getByLabel('I say to the customer')
    .fill('It is fine, but keep to the manuals of the makers, and weigh the loaded rig.');
  await taken(ben, 'Ben');
  await trainer.locator('#prediction').fill('It fits.');
  await commit();
  await trainer.getByRole('button', { name: 'Open the working', exact: true }).click();
  await expect(trainer.getByRole('row', { name: /^Ben/ })).toContainText('weigh the loaded rig');
  await expect(trainer.getByRole('row', { name: /^Ada/ })).toContainText('missed: the limit');
  await trainer.getByRole('button', { name: 'The next case' }).click();

  await expect(wall.locator('ol.lines li')).toHaveCount(6);
  const wrong = 'Tongue share, if the water aboard sits behind the axles';
  // What was taken down of the case before is not said of this one.
  await expect(ada.getByRole('heading', { level: 1 })).toHaveText(lesson[3][0]);
  await expect(ada.getByText('your guess is noted')).toHaveCount(0);
  await expect(ada.getByRole('button', { name: 'The next case' })).toHaveCount(0);
  await ada.getByLabel('I say').selectOption(wrong);
  await taken(ada, 'Ada');
  await ben.getByLabel('I say').selectOption({ index: 1 });
  await taken(ben, 'Ben');
  await trainer.locator('#prediction').selectOption(wrong);
  await commit();
  await opened('2 of 3 were right.', 'To the tally');
  await expect(trainer.getByText('Together: 6 of 12 predictions met.')).toBeVisible();
  // Who was taken down is not sent to read anything out once the lesson is over.
  await expect(ben.getByRole('heading', { level: 1 })).toHaveText('The class is over');
  await expect(ben.locator('.read-out')).toHaveCount(0);
  // The next class invites nobody to the last one's address.
  await trainer.getByRole('button', { name: 'To the lessons' }).click();
  await trainer.getByRole('button', { name: 'Begin with 4 cases' }).click();
  await expect(trainer.getByText('Case 1 of 4')).toBeVisible();
  await expect(wall.locator('.stage.is-asked')).toBeVisible();
  await expect(wall.locator('.invited, .ask svg.code')).toHaveCount(0);
  // A window that is opened anew says that its phones are gone, and where to let them in.
  await trainer.getByText('Learners’ phones, at once over the shop’s network').click();
  await trainer.getByRole('button', { name: 'Only try it, on this machine alone' }).click();
  await expect(trainer.locator('relay-desk .read-out')).toBeVisible();
  await trainer.reload();
  await expect(trainer.getByText('so the phones are cut off')).toBeVisible();
  await expect(
    trainer.getByRole('button', { name: 'Only try it, on this machine alone' }),
  ).toBeVisible();
  await trainer.getByRole('button', { name: 'End the class here' }).click();
  await trainer.goto(`${started}#/class/weeks`);
  await expect(trainer.getByText('Find the wrong figure').first()).toBeVisible();
  await expect(trainer.getByRole('row', { name: /^Ada/ })).toContainText('3 of 4');
});
