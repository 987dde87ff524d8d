import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import jsQR from 'jsqr';
import { PNG } from 'pngjs';
import { expect, fact, objections, openCase, test, verdict } from './page';
import { textOfPdf } from './pdf-text';

const crossover = 'crossover-and-single-axle';
const caution = 'The labels and the manual of that very vehicle win over any brochure';

const spoken = (page: Page) => page.getByLabel('To say aloud', { exact: true });
const post = (page: Page) => page.getByLabel('A short post', { exact: true });
const letter = (page: Page) => page.getByLabel('A long reply, with the working', { exact: true });
const card = (page: Page) => page.locator('reply-card');
const share = (page: Page) => page.locator('share-case');

const grant = (page: Page) =>
  page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
const clipboard = (page: Page) => page.evaluate(() => navigator.clipboard.readText());

/** What a scanner reads from the code as it is painted; like a person's, it looks until it reads. */
async function scanned(code: Locator): Promise<string> {
  let read = '';
  await expect(async () => {
    const { data, width, height } = PNG.sync.read(await code.screenshot());
    read = jsQR(Uint8ClampedArray.from(data), width, height)?.data ?? '';
    expect(read).not.toBe('');
  }).toPass({ timeout: 20_000 });
  return read;
}

test('the reply stands three ways, each with its figure and its caution', async ({ page }) => {
  await openCase(page, crossover);
  for (const field of [spoken(page), post(page), letter(page)]) {
    await expect(field).toHaveValue(/52 (lb|pounds)/);
    await expect(field).toHaveValue(new RegExp(caution));
  }
  await expect(letter(page)).toHaveValue(/The working/);
  await expect(card(page)).toContainText(/About \d+ seconds aloud, at 150 words a minute/);
});

test('what would change the verdict comes into post and letter once it is found', async ({
  page,
}) => {
  await openCase(page, crossover);
  await spoken(page).fill('Go slowly.');
  await expect(post(page)).toHaveValue(/What would change it: .+ Then: fits\. /, {
    timeout: 15_000,
  });
  await expect(letter(page)).toHaveValue(/What would change it\n– .+ Then: fits\./);
  await expect(spoken(page)).toHaveValue('Go slowly.');
});

test('the sentence that is copied by the verdict is the one to say aloud', async ({ page }) => {
  await grant(page);
  await openCase(page, crossover);
  const copy = page.getByRole('button', { name: 'Copy the sentence' });
  await copy.click();
  await expect(page.getByText('Copied, with its caution.')).toBeVisible();
  expect(await clipboard(page)).toBe(await spoken(page).inputValue());
  await spoken(page).fill(`Go slowly. ${caution}`);
  await copy.click();
  await expect(async () => expect(await clipboard(page)).toContain('Go slowly.')).toPass();
  expect(await clipboard(page)).toContain(caution);
});

test('a reply is copied at a touch, and that it was is said once', async ({ page }) => {
  await grant(page);
  await openCase(page, crossover);
  await expect(post(page)).toHaveValue(/What would change it/, { timeout: 15_000 });
  await page.getByRole('button', { name: 'Copy: A short post' }).click();
  await expect(card(page).getByRole('status')).toHaveText('Copied, with its caution.');
  expect(await clipboard(page)).toBe(await post(page).inputValue());
});

test('a caution that was deleted is put back when the text is copied, and that is said', async ({
  page,
}) => {
  await grant(page);
  await openCase(page, crossover);
  await spoken(page).fill('Fifty pounds left, go slowly.');
  await page.getByRole('button', { name: 'Copy: To say aloud' }).click();
  await expect(card(page).getByRole('status')).toContainText('it was put back');
  const copied = await clipboard(page);
  expect(copied).toContain('Fifty pounds left, go slowly.');
  expect(copied).toContain(caution);
  await expect(spoken(page)).toHaveValue(copied);
});

test('without a clipboard the text is marked, and the page says what to press', async ({
  page,
}) => {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'clipboard', {
      value: { writeText: () => Promise.reject(new Error('refused')) },
    });
    document.execCommand = () => false;
  });
  await openCase(page, crossover);
  await page.getByRole('button', { name: 'Copy: A short post' }).click();
  await expect(card(page).getByRole('status')).toContainText('the text is marked');
  const marked = await post(page).evaluate((field) =>
    field instanceof HTMLTextAreaElement
      ? field.value.slice(field.selectionStart, field.selectionEnd)
      : '',
  );
  expect(marked).toBe(await post(page).inputValue());
});

test('own words are kept until the verdict changes, then it is said and they can be had back', async ({
  page,
}) => {
  await openCase(page, crossover);
  await post(page).fill('My own words about 52 lb.');
  await expect(card(page)).toContainText('In your words.');
  await page.reload();
  await expect(post(page)).toHaveValue('My own words about 52 lb.');
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await expect(post(page)).toHaveValue(/108 lb/);
  await expect(card(page)).toContainText('The verdict has changed since you reworded this');
  await page.getByRole('button', { name: 'Bring my words back' }).click();
  await expect(post(page)).toHaveValue('My own words about 52 lb.');
  await page.getByRole('button', { name: 'Write it afresh: A short post' }).click();
  await expect(post(page)).toHaveValue(/108 lb/);
});

test('a reply of a verdict that is no longer that of the text cannot be copied', async ({
  page,
}) => {
  await openCase(page, crossover);
  await expect(spoken(page)).toBeVisible();
  await fact(page, 'vehicle.placardPayload').fill('1,100');
  await expect(card(page)).toContainText('before the entry marked above');
  await expect(page.getByRole('button', { name: 'Copy: To say aloud' })).toBeDisabled();
  await expect(page.getByRole('button', { name: 'Save as JSON' })).toBeDisabled();
});

test('replies are metric or US as chosen', async ({ page }) => {
  await openCase(page, crossover);
  await page.getByRole('button', { name: 'Show metric' }).click();
  await expect(post(page)).toHaveValue(/23\.6 kg left of 571\.5 kg/);
  await expect(spoken(page)).toHaveValue(/23\.6 kilograms left/);
});

const linkOf = async (page: Page): Promise<string> => {
  await grant(page);
  await share(page).getByRole('button', { name: 'Copy a link to this case' }).click();
  await expect(share(page).getByRole('status')).toContainText('Link copied.');
  return clipboard(page);
};

test('a link carries this very case to anyone with the page, and no server sees it', async ({
  page,
  browser,
  baseURL,
}) => {
  await openCase(page, crossover);
  await fact(page, 'vehicle.placardPayload').fill('1,100 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  const link = await linkOf(page);
  expect(link.startsWith(`${baseURL}#/case/tow-fit/${crossover}/`)).toBe(true);
  const stranger = await (await browser.newContext()).newPage();
  const asked: string[] = [];
  stranger.on('request', (request) => asked.push(request.url()));
  await stranger.goto(link);
  await expect(verdict(stranger)).toHaveText('Does not fit');
  await expect(fact(stranger, 'vehicle.placardPayload')).toHaveValue('1,100 lb');
  await expect(stranger.getByText('This case came with a link')).toBeVisible();
  expect(
    asked.some((url) => url.includes('1,100') || url.includes(link.split('/').at(-1) ?? '?')),
  ).toBe(false);
  await stranger.context().close();
});

test('a shared case opens beside one’s own and never over it, and can be kept', async ({
  page,
}) => {
  await openCase(page, crossover);
  const link = await linkOf(page);
  await fact(page, 'vehicle.placardPayload').fill('1,150 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await page.waitForTimeout(600);
  await page.goto(link);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,260 lb');
  await fact(page, 'vehicle.placardPayload').fill('1,400 lb');
  await page.waitForTimeout(600);
  await openCase(page, crossover);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,150 lb');
  await page.goto(link);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,400 lb');
  await page.getByRole('button', { name: 'Keep it among my cases' }).click();
  await expect(page.getByText('This case came with a link')).toBeHidden();
  expect(decodeURIComponent(page.url())).toContain('/shared: crossover');
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,400 lb');
  await openCase(page, crossover);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,150 lb');
});

test('a damaged or cut link is told in a sentence, and nothing is lost', async ({ page }) => {
  await openCase(page, crossover);
  const link = await linkOf(page);
  await fact(page, 'vehicle.placardPayload').fill('1,150 lb');
  await page.waitForTimeout(600);
  const middle = link.length - 300;
  const damaged = [
    link.slice(0, -200),
    `${link.slice(0, middle)}${link[middle] === 'A' ? 'B' : 'A'}${link.slice(middle + 1)}`,
    `${link.slice(0, -5)}%%%`,
  ];
  for (const each of damaged) {
    await page.goto(each);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('This link leads to no case');
    await expect(page.getByRole('alert')).toContainText('ask for it once more');
  }
  await openCase(page, crossover);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,150 lb');
});

test('a shared document that is hostile runs nothing', async ({ page }) => {
  await openCase(page, crossover);
  const packed = await page.evaluate(async () => {
    const text =
      '---\ntitle: "<img src=x onerror=alert(1)>"\ntopic: tow-fit\n---\n\n<script>window.reached = 1</script> [x](javascript:window.reached=1)\n\n| Fact | Value |\n| --- | --- |\n| `trailer.gvwr` | 5,000 lb |\n';
    const bytes = new TextEncoder().encode(text);
    const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw'));
    const folded = new Uint8Array(await new Response(stream).arrayBuffer());
    let sum = 0xffffffff;
    for (const byte of bytes) {
      sum ^= byte;
      for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
    }
    const head = new DataView(new ArrayBuffer(5));
    head.setUint8(0, 1);
    head.setUint32(1, (sum ^ 0xffffffff) >>> 0);
    const all = [...new Uint8Array(head.buffer), ...folded];
    return btoa(String.fromCharCode(...all))
      .replaceAll('+', '-')
      .replaceAll('/', '_')
      .replace(/=+$/, '');
  });
  await page.goto(`/#/case/tow-fit/x/${packed}`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('<img');
  expect(await page.evaluate(() => 'reached' in window)).toBe(false);
  expect(await page.locator('article img, article script').count()).toBe(0);
});

test('the code on the screen reads as a link that opens this very case', async ({ page }) => {
  await openCase(page, crossover);
  await share(page).getByRole('button', { name: 'Show a code to scan' }).click();
  const code = share(page).getByRole('img', { name: 'Code that opens this case' });
  await expect(code).toBeVisible();
  const link = await scanned(code);
  expect(link).toContain(`#/case/tow-fit/${crossover}/`);
  await page.goto(link);
  await expect(verdict(page)).toHaveText('Fits with care');
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,260 lb');
});

test('Markdown is saved byte for byte, JSON as the command line has it, and both open again', async ({
  page,
}) => {
  await openCase(page, crossover);
  const file = new URL(`../../cases/tow-fit/${crossover}.md`, import.meta.url);
  const save = async (name: string) => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      share(page).getByRole('button', { name }).click(),
    ]);
    const path = await download.path();
    return { name: download.suggestedFilename(), text: readFileSync(path, 'utf8') };
  };
  const markdown = await save('Save as Markdown');
  expect(markdown).toEqual({ name: `${crossover}.md`, text: readFileSync(file, 'utf8') });
  const json = await save('Save as JSON');
  const { topic, outcome, binding, limits, values, cautions, trace, document } = JSON.parse(
    json.text,
  );
  expect({ topic, outcome, binding }).toEqual({
    topic: 'tow-fit',
    outcome: 'fits-with-care',
    binding: 'payload',
  });
  expect(limits).toHaveLength(18);
  expect(values['tongue.loaded']).toEqual({ lo: 473, hi: 473, unit: 'lb' });
  expect(cautions.length).toBeGreaterThan(0);
  expect(trace.root).toBe('verdict');
  expect(document).toBe(markdown.text);
  const other = { name: 'other.json', text: json.text.replaceAll('1,260 lb', '1,270 lb') };
  await share(page)
    .getByLabel(/Open cases from files/)
    .setInputFiles({
      name: other.name,
      mimeType: 'application/json',
      buffer: Buffer.from(other.text),
    });
  await expect(page).toHaveURL(/#\/case\/tow-fit\/other$/);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,270 lb');
});

const drop = (page: Page, files: readonly { name: string; text: string }[]) =>
  page.evaluate((given) => {
    const dataTransfer = new DataTransfer();
    for (const { name, text } of given) dataTransfer.items.add(new File([text], name));
    const at = document.querySelector('main') ?? document.body;
    const send = (type: string) =>
      at.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
    send('dragover');
    return new Promise<string>((done) => {
      requestAnimationFrame(() => {
        const hint = document.querySelector('.drop-hint')?.textContent ?? '';
        send('drop');
        done(hint);
      });
    });
  }, files);

test('several files dropped anywhere open beside one’s own; what cannot be read is told in a sentence each', async ({
  page,
}) => {
  await page.goto('/#/rules');
  await expect(page.locator('drop-cases [role="status"]')).toBeAttached();
  const text = readFileSync(
    new URL(`../../cases/tow-fit/${crossover}.md`, import.meta.url),
    'utf8',
  );
  const hint = await drop(page, [
    { name: `${crossover}.md`, text: text.replace('1,260 lb', '1,150 lb') },
    { name: 'second.md', text: text.replace('1,260 lb', '1,160 lb') },
    { name: 'note.txt', text: 'Buy milk.' },
    { name: 'empty.md', text: '' },
  ]);
  expect(hint).toContain('Let go to open');
  const news = page.locator('.arrived');
  await expect(news).toContainText('note.txt, line 1:');
  await expect(news).toContainText('empty.md is empty');
  await expect(page.locator('.drop-hint')).toBeHidden();
  await news.getByRole('link', { name: `${crossover}.md` }).click();
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,150 lb');
  expect(page.url()).toContain(`${crossover}-2`);
  await openCase(page, crossover);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,260 lb');
});

const printed = [crossover, 'payload-not-known', 'rear-axle-with-bars', 'wrong-ball-size'];

test.describe('on paper', () => {
  // A printer sets many more points than a screen.
  test.use({ deviceScaleFactor: 4 });

  for (const format of ['Letter', 'A4'] as const) {
    test(`a case prints on one or two sheets of ${format}, with verdict, cautions, rules and a code that opens it`, async ({
      page,
    }) => {
      for (const name of printed) {
        await openCase(page, name);
        const word = await verdict(page).textContent();
        const code = page.locator('print-sheet svg.code');
        await expect(code).toBeAttached({ timeout: 10_000 });
        const pdf = await page.pdf({ format });
        const { pages, text } = textOfPdf(pdf);
        expect(pages, name).toBeLessThanOrEqual(2);
        for (const part of [
          word ?? '?',
          caution,
          'rules tow-fit',
          'as of 2026-',
          'The working',
          'Sources',
          'of the eighteen limits',
        ]) {
          expect(text.replace(/\s+/g, ''), `${name}: ${part}`).toContain(part.replace(/\s+/g, ''));
        }
        await page.emulateMedia({ media: 'print' });
        const link = await scanned(code);
        await page.emulateMedia({ media: null });
        expect(link, name).toContain(`#/case/tow-fit/${name}/`);
        expect(link.length).toBeLessThanOrEqual(1200);
        await page.goto(link);
        await expect(verdict(page)).toHaveText(word ?? '?');
      }
    });
  }
});

test('paper has no colour, and none of what is for the screen', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
  await openCase(page, crossover);
  await expect(page.locator('print-sheet svg.code')).toBeVisible({ timeout: 10_000 });
  for (const part of ['.masthead', 'reply-card', 'share-case', 'fact-table', 'page-foot']) {
    await expect(page.locator(part).first()).toBeHidden();
  }
  const { data } = PNG.sync.read(await page.locator('print-sheet').screenshot());
  let coloured = 0;
  for (let i = 0; i < data.length; i += 4) {
    const [r = 0, g = 0, b = 0] = [data[i], data[i + 1], data[i + 2]];
    if (Math.max(r, g, b) - Math.min(r, g, b) > 8) coloured += 1;
  }
  expect(coloured).toBe(0);
});

test('a case too long for a code prints without one and says why', async ({ page }) => {
  const rows = Array.from(
    { length: 400 },
    (_, i) => `| Box ${(i * 7919) % 9973} | ${(i % 9) + 1} lb |`,
  );
  await page.goto('/#/rules');
  await expect(page.locator('drop-cases [role="status"]')).toBeAttached();
  await drop(page, [
    {
      name: 'boxes.md',
      text: `---\ntitle: Boxes\ntopic: tow-fit\n---\n\n| Fact | Value |\n| --- | --- |\n| \`trailer.gvwr\` | 5,000 lb |\n\n| \`trailer.cargo\` | Weight |\n| --- | --- |\n${rows.join('\n')}\n`,
    },
  ]);
  await expect(verdict(page)).toBeVisible();
  await expect(page.locator('.sheet-code')).toContainText('too long for one');
  await share(page).getByRole('button', { name: 'Show a code to scan' }).click();
  await expect(share(page)).toContainText('too long for a code');
});

test('nothing by which an answer leaves has anything for axe to object to', async ({ page }) => {
  await openCase(page, crossover);
  const link = await linkOf(page);
  await post(page).fill('My own words.');
  await page.getByRole('button', { name: 'Copy: A short post' }).click();
  await share(page).getByRole('button', { name: 'Show a code to scan' }).click();
  await expect(share(page).locator('svg.code')).toBeVisible();
  const check = async (state: string): Promise<void> => {
    expect(await objections(page), state).toEqual([]);
  };
  await check('a case');
  await drop(page, [{ name: 'note.txt', text: 'Buy milk.' }]);
  await expect(page.locator('.arrived')).toBeVisible();
  await check('files opened');
  await page.goto(link);
  await expect(page.getByText('This case came with a link')).toBeVisible();
  await check('a shared case');
  await page.goto(link.slice(0, -20));
  await expect(page.getByRole('alert')).toBeVisible();
  await check('a cut link');
});
