import type { Page } from '@playwright/test';
import { objections } from './objections';
import { expect, test, verdict } from './page';

// No link goes along from a page that nobody else can open; under this name the same page is a shop's.
test.use({
  baseURL: async ({ baseURL }, use) => {
    await use(baseURL?.replace('//localhost', '//sallowbridge.localhost'));
  },
});

const asked = `# Mail
From: Dale Rivers <dale@example.org>

Can I tow 3,900 lb dry with a crossover rated 5,000 lb? Two adults, a child and a dog, and 120 lb of tools in the trunk. Call me at 555-0142.
`;

const entry = (page: Page) => page.locator('asked-entry').first();
const box = (page: Page) => page.getByLabel('Paste what came in, from all sides');
const answer = (page: Page) => entry(page).getByLabel('Answer: Ask back');

async function askBack(page: Page): Promise<string> {
  await page.goto('/#/questions');
  await box(page).fill(asked);
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByText('1 message was taken in.')).toBeVisible();
  await entry(page).getByRole('button', { name: 'Ask back' }).click();
  await expect(answer(page)).toHaveValue(/#\/case\/tow-fit\/asked-/);
  return answer(page).inputValue();
}

/** Whoever was asked opens the link on a device of their own, fills it in and sends it back. */
async function filledIn(page: Page, hash: string): Promise<string> {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'share', { value: undefined });
  });
  await page.goto(`/${hash}`);
  const back = page.getByRole('region', { name: 'Asked of you' });
  await expect(back).toContainText('What does the label in the driver’s door say');
  await expect(page.locator('reader-face')).not.toContainText('555-0142');
  await expect(page.getByRole('region', { name: 'Asked here' })).toHaveCount(0);
  await back.locator('input[data-fact="vehicle.placardPayload"]').fill('1260');
  await expect(verdict(page)).toBeVisible();
  await back.getByRole('button', { name: 'Send the answers back' }).click();
  await expect(back).toContainText('is copied');
  return page.evaluate(() => navigator.clipboard.readText());
}

test('what decides is asked back by a link, and the answer comes back into the same entry', async ({
  page,
  context,
  browser,
  baseURL,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const text = await askBack(page);
  expect(text).toContain('What does the label in the driver’s door say');
  expect(text).not.toContain('555-0142');
  await entry(page).getByRole('button', { name: 'Copy', exact: true }).click();
  // It waits, and stays open; the first page says for what.
  await expect(entry(page)).toContainText('waits for: What');
  await page.goto('/#/today');
  const tray = page.getByRole('region', { name: 'Questions' });
  await expect(tray).toContainText('waits for: What');
  await expect(tray).not.toContainText('555-0142');

  const theirs = await browser.newContext({ ...(baseURL && { baseURL }), serviceWorkers: 'block' });
  await theirs.grantPermissions(['clipboard-read', 'clipboard-write']);
  const hash = /#\S+/.exec(text)?.[0] ?? '';
  const sent = await filledIn(await theirs.newPage(), hash);
  await theirs.close();

  await page.goto('/#/questions');
  await expect(page.getByText('Reading:')).toHaveCount(0);
  await box(page).fill(`Here you are: ${sent}\n\n# Phone\nWhat tire pressure should I run?`);
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByText(/Answers came back to “Can I tow 3,900 lb dry/)).toBeVisible();
  await expect(page.getByText(/1 message was taken in\./)).toBeVisible();
  await expect(page.locator('asked-entry')).toHaveCount(2);
  await expect(entry(page)).toContainText(/Came back:[^:]*: 1,?260/);
  await expect(entry(page)).not.toContainText('waits for:');
  await entry(page).getByRole('button', { name: 'To hand on' }).click();
  const slip = entry(page).getByLabel('Answer: To hand on');
  await expect(slip).toHaveValue(/: 1,?260 lb/);
  // What came back is struck out by a touch, and stands again by another.
  const told = entry(page).getByRole('button', { name: /: 1,?260/ });
  await told.click();
  await expect(slip).not.toHaveValue(/: 1,?260 lb/);
  await told.click();
  await expect(slip).toHaveValue(/: 1,?260 lb/);
  expect(await objections(page)).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);
  await page.reload();
  await expect(entry(page)).toContainText(/Came back:[^:]*: 1,?260/);
  // The same link again tells nothing new; one that is damaged changes nothing.
  await box(page).fill(sent);
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByText(/Nothing new came back to “Can I tow/)).toBeVisible();
  await box(page).fill(sent.slice(0, -9));
  await page.getByRole('button', { name: 'Take them in' }).click();
  await expect(page.getByText(/damaged or cut off|cannot be trusted/).first()).toBeVisible();
  await expect(entry(page)).toContainText(/Came back:[^:]*: 1,?260/);
});

test('a link that is opened here puts its answers to the question', { tag: '@once' }, async ({
  page,
  context,
  browser,
  baseURL,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const text = await askBack(page);
  const theirs = await browser.newContext({ ...(baseURL && { baseURL }), serviceWorkers: 'block' });
  await theirs.grantPermissions(['clipboard-read', 'clipboard-write']);
  const sent = await filledIn(await theirs.newPage(), /#\S+/.exec(text)?.[0] ?? '');
  await theirs.close();
  await page.goto(`/${new URL(sent).hash}`);
  const here = page.getByRole('region', { name: 'Asked here' });
  await expect(here).toContainText('Can I tow 3,900 lb dry');
  expect(await objections(page)).toEqual([]);
  await here.getByRole('button', { name: 'Put the answers to the question' }).click();
  await expect(entry(page)).toContainText(/Came back:[^:]*: 1,?260/);
});

test('who rides along and what is packed stand in the answer, and each is left out and taken again', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/questions');
  await box(page).fill(
    `# Counter\nCan I tow 3,900 lb dry with a crossover rated 5,000 lb? Door label says payload 1,100 lb. Two adults, two kids and a dog, and 120 lb of tools in the trunk.`,
  );
  await page.getByRole('button', { name: 'Take them in' }).click();
  await entry(page).getByRole('button', { name: 'To hand on' }).click();
  const slip = entry(page).getByLabel('Answer: To hand on');
  await expect(slip).toHaveValue(/Driver/);
  await expect(slip).toHaveValue(/Tools/);
  await expect(slip).toHaveValue(/120 lb/);
  await entry(page).getByRole('button', { name: /Tools/ }).click();
  await entry(page).getByRole('button', { name: 'Leave it out' }).click();
  await expect(slip).not.toHaveValue(/Tools/);
  await entry(page)
    .getByRole('button', { name: /Driver 150 lb/ })
    .click();
  await entry(page).getByRole('button', { name: 'Leave it out' }).click();
  await expect(slip).not.toHaveValue(/Driver/);
  await entry(page)
    .getByRole('button', { name: /Driver 150 lb/ })
    .click();
  await entry(page).getByRole('button', { name: 'Take it after all' }).click();
  await expect(slip).toHaveValue(/Driver/);
  // A case that is like it stands beside it, and the question opens as a case with all of that.
  await expect(entry(page).getByRole('link', { name: /^A case like this/ })).toBeVisible();
  await entry(page).getByRole('button', { name: 'Open as a case' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Can I tow 3,900 lb dry');
  const people = page.getByRole('group', { name: 'People and animals' });
  for (const each of ['2 adults', '2 children', '1 dog']) await expect(people).toContainText(each);
  await page.goBack();
  await expect(entry(page)).toBeVisible();
});
