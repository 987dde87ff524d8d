import { readFileSync } from 'node:fs';
import { crossover, drop, linkOf, openSend, post, scanned, share, shut } from './leaving';
import { objections } from './objections';
import { allFigures, expect, fact, openCase, test, verdict } from './page';
import { isStored } from './stored';

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
  await allFigures(stranger);
  await expect(fact(stranger, 'vehicle.placardPayload')).toHaveValue('1,100');
  await expect(stranger.getByText('This case came with a link')).toBeVisible();
  expect(
    asked.some((url) => url.includes('1,100') || url.includes(link.split('/').at(-1) ?? '?')),
  ).toBe(false);
  await stranger.context().close();
});

test('a shared case opens beside one’s own and never over it, and can be kept', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, crossover);
  const link = await linkOf(page);
  await fact(page, 'vehicle.placardPayload').fill('1,150 lb');
  await expect(verdict(page)).toHaveText('Does not fit');
  await isStored(page, '1,150 lb');
  await page.goto(link);
  await allFigures(page);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,260');
  await fact(page, 'vehicle.placardPayload').fill('1,400 lb');
  await isStored(page, '1,400 lb');
  await openCase(page, crossover);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,150');
  await page.goto(link);
  await allFigures(page);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,400');
  await page.getByRole('button', { name: 'Keep this case' }).click();
  await expect(page.getByText('This case came with a link')).toBeHidden();
  expect(decodeURIComponent(page.url())).toContain('/shared: crossover');
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,400');
  await openCase(page, crossover);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,150');
});

test('a damaged or cut link is told in a sentence, and nothing is lost', { tag: '@once' }, async ({
  page,
}) => {
  await openCase(page, crossover);
  const link = await linkOf(page);
  await fact(page, 'vehicle.placardPayload').fill('1,150 lb');
  await isStored(page, '1,150 lb');
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
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,150');
});

test('a shared document that is hostile runs nothing', { tag: '@once' }, async ({ page }) => {
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

test('the code on the screen reads as a link that opens this very case', { tag: '@once' }, async ({
  page,
}) => {
  await openCase(page, crossover);
  await openSend(page);
  await share(page).getByRole('button', { name: 'Show a code to scan' }).click();
  const code = share(page).getByRole('img', { name: 'Code that opens this case' });
  await expect(code).toBeVisible();
  const link = await scanned(code);
  expect(link).toContain(`#/case/tow-fit/${crossover}/`);
  await page.goto(link);
  await expect(verdict(page)).toHaveText('Fits with care');
  await allFigures(page);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,260');
});

test('Markdown is saved byte for byte, JSON as the command line has it, and both open again', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, crossover);
  await openSend(page);
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
  expect(limits).toHaveLength(23);
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
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,270');
});

test('several files dropped anywhere open beside one’s own; what cannot be read is told in a sentence each', {
  tag: '@once',
}, async ({ page }) => {
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
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,150');
  expect(page.url()).toContain(`${crossover}-2`);
  await openCase(page, crossover);
  await expect(fact(page, 'vehicle.placardPayload')).toHaveValue('1,260');
});

test('nothing by which an answer leaves has anything for axe to object to', async ({ page }) => {
  await openCase(page, crossover);
  const link = await linkOf(page);
  await openSend(page);
  await post(page).fill('My own words.');
  await page.getByRole('button', { name: 'Copy: A short post' }).click();
  await share(page).getByRole('button', { name: 'Show a code to scan' }).click();
  await expect(share(page).locator('svg.code')).toBeVisible();
  const check = async (state: string): Promise<void> => {
    expect(await objections(page), state).toEqual([]);
  };
  await check('a case');
  await shut(page);
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
