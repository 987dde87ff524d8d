import { expect, fact, openCase, test, unfold, verdict } from './page';

test('the weight that decides is moved by hand: verdict, bars and facts follow, turns are told, and it goes back', async ({
  page,
}) => {
  await openCase(page, 'crossover-and-single-axle');
  await expect(verdict(page)).toHaveText('Fits with care');
  const heaviest = await unfold(page, 'The heaviest that fits');
  const range = heaviest.getByRole('slider', { name: /Trailer weight, loaded/ });
  await expect(range).toHaveAttribute('aria-valuetext', /4,335.1 lb: fits with care/);
  await expect(heaviest.locator('.turns')).toContainText(
    /fits.*up to 3,840 lb.*does not fit.*from 4,580 lb up/s,
  );

  // Its own largest is stricter than the line where the tongue is an estimate: it counts.
  await heaviest.getByRole('button', { name: 'The heaviest that fits: 4,530 lb' }).click();
  await expect(range).toHaveAttribute('aria-valuetext', /^4,530 lb: fits with care/);
  await expect(verdict(page)).toHaveText('Fits with care');
  await range.fill('4700');
  await expect(verdict(page)).toHaveText('Does not fit');
  await expect(range).toHaveAttribute('aria-valuetext', /4,700 lb: does not fit/);
  await expect(fact(page, 'trailer.dryWeight')).toHaveValue('4,228.3');
  const limits = await unfold(page, 'How close to each limit');
  await expect(limits).toContainText('4,700 lb of 5,000 lb');

  await range.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(range).toHaveAttribute('aria-valuetext', /^4,690 lb/);
  await heaviest.getByRole('button', { name: /^Back to 4,335.1/ }).click();
  await expect(fact(page, 'trailer.dryWeight')).toHaveValue('3,900');
  await expect(verdict(page)).toHaveText('Fits with care');
});
