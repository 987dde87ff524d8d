import { objections } from './objections';
import { expect, openCase, test } from './page';

// Colors are looked at on the wide page alone, and once for each look: that nothing escapes by that.
test('one faint word among many that look like it is objected to, deep in a shadow root too', {
  tag: '@once',
}, async ({ page }) => {
  await openCase(page, 'crossover-and-single-axle');
  const put = (style: string, scheme: string) =>
    page.evaluate(
      ([rule, name]) => {
        const host = document.createElement('div');
        const root = host.attachShadow({ mode: 'open' });
        const sheet = new CSSStyleSheet();
        sheet.replaceSync(`@media (prefers-color-scheme: ${name}) { ${rule} }`);
        root.adoptedStyleSheets = [sheet];
        for (let i = 0; i < 30; i += 1) {
          const line = document.createElement('p');
          line.textContent = `line ${i}`;
          root.append(line);
        }
        document.querySelector('main')?.append(host);
      },
      [style, scheme],
    );
  await put('p { color: #777; background: #fff; } p:nth-child(17) { color: #ccc; }', 'light');
  expect(await objections(page)).toEqual(
    expect.arrayContaining([expect.stringMatching(/light color-contrast/)]),
  );
  await put('p { color: #fff; background: #000; } p:nth-child(29) { background: #eee; }', 'dark');
  expect(await objections(page)).toEqual(
    expect.arrayContaining([expect.stringMatching(/dark color-contrast/)]),
  );
});
