import { expect, test } from './page';

const unread = 'The label nobody has read';
const settled = 'A pickup rated ninety-four hundred that runs out of payload';

test('an exercise that a case has nothing for cannot be chosen, and why is said', {
  tag: '@once',
}, async ({ page }) => {
  await page.goto('/#/class');
  for (const title of [unread, settled]) {
    await page.getByRole('searchbox').fill(title);
    await page.getByRole('checkbox', { name: title }).check();
  }
  const exercise = (title: string) => page.getByLabel(`What they do with ${title}`);
  const option = (title: string, name: string) =>
    exercise(title).getByRole('option', { name, exact: true });
  await expect(option(unread, 'What do you ask next?')).toBeDisabled();
  await expect(option(unread, 'Say it aloud')).toBeEnabled();
  await expect(exercise(unread)).toHaveAccessibleDescription(
    /Not with this case: “What do you ask next\?”: its verdict stays open/,
  );
  await expect(option(settled, 'What do you ask next?')).toBeEnabled();
  await expect(exercise(settled)).toHaveAccessibleDescription('');
});
