import { expect, fact, openCase, test } from './page';

test('where the device keeps nothing, work goes on in this window, and whoever closes it is asked', {
  tag: '@once',
}, async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
    Storage.prototype.setItem = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  await openCase(page, 'crossover-and-single-axle');
  const payload = fact(page, 'vehicle.placardPayload');
  await payload.click();
  await payload.fill('1,107 lb');
  await expect(page.getByText('lives only in this window')).toBeVisible();
  // Leaving by a link and coming back finds it as it was left.
  await page.getByRole('link', { name: 'Cases', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.goBack();
  await expect(payload).toHaveValue('1,107');

  const asked = page.waitForEvent('dialog');
  await page.evaluate(() => setTimeout(() => location.reload()));
  const dialog = await asked;
  expect(dialog.type()).toBe('beforeunload');
  await dialog.dismiss();
  await expect(payload).toHaveValue('1,107');

  // Put back as it came there is nothing left to lose, and nobody is asked.
  await payload.fill('1,260');
  await page.waitForTimeout(600);
  await page.reload();
  await expect(payload).toHaveValue('1,260');
});
