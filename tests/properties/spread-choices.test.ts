import { askedOf, judgeCaseNow, readCase } from '@tarebook/casebook';
import { spread } from '@tarebook/rules';
import { describe, expect, test } from 'vitest';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101) % 4_000_000_000;

/** A case of every topic, those first whose headline holds more than numbers. */
const filed = markdownBelow(casesFolder, refusedFolder).map(({ name, text }) => ({
  name,
  doc: readFiled(text),
}));
const drawable = filed.filter(({ doc }) => doc.topic && doc.troubles.length === 0);
const worded = drawable.filter(({ doc }) =>
  doc.topic?.headline.some((name) => Object.hasOwn(doc.topic?.decisions ?? {}, name)),
);

describe('a result that is a choice is drawn like any other', () => {
  test('there are cases of it', () => expect(worded.length).toBeGreaterThan(30));

  test.each(worded)('$name', ({ doc }) => {
    const { topic, asked } = askedOf(doc);
    const found = spread(topic, asked, { draws: 60, seed });
    const { choices } = judgeCaseNow(doc);
    for (const [name, chances] of Object.entries(found.choices)) {
      const sum = Object.values(chances).reduce((total, { chance }) => total + chance, 0);
      expect(sum, name).toBeCloseTo(1, 9);
      const among = choices[name]?.among ?? ['yes', 'no'];
      const possible = among.length === 1 ? among : [...among, 'unknown'];
      expect(possible, name).toEqual(expect.arrayContaining(Object.keys(chances)));
      if (among.length === 1) expect(Object.keys(chances)).toEqual(among);
    }
    const decisions = topic.headline.filter((name) => Object.hasOwn(choices, name));
    expect(Object.keys(found.choices)).toEqual(expect.arrayContaining(decisions));
  });
});

/**
 * The ball stands 2¾ in above its platform and the receiver at 20 in: a coupler at 22¾ in needs
 * neither rise nor drop. Evenly between 20¾ and 24¾ in, each comes in one half of the draws; four
 * standard errors of 4,000 draws are 3.2 percent.
 */
test('which way a ball mount goes is counted where the range decides it', () => {
  const text =
    drawable.find(({ name }) => name === 'hitch-setup/bars-too-strong.md')?.doc.text ?? '';
  expect(text).toContain('17 3/4 in');
  const { topic, asked } = askedOf(readCase(text.replace('17 3/4 in', '20.75–24.75 in')));
  const { rise, drop } = spread(topic, asked, { draws: 4000, seed }).choices['mount.way'] ?? {};
  expect(Math.abs((rise?.chance ?? 0) - 0.5)).toBeLessThan(0.032);
  expect((rise?.chance ?? 0) + (drop?.chance ?? 0)).toBe(1);
});
