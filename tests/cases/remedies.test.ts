import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { askedOf } from '@tarebook/casebook';
import { type Remedies, remedies } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { readFiled } from './filed';
import { casesFolder } from './files';

function of(name: string, folder = 'tow-fit'): Remedies {
  const text = readFileSync(join(casesFolder, folder, `${name}.md`), 'utf8');
  const { topic, asked } = askedOf(readFiled(text));
  return remedies(topic, asked);
}

const brief = ({ remedies: found }: Remedies) =>
  found.map(({ fact, row, from, to, outcome }) => {
    const end = (told: typeof from) => (told !== null && typeof told === 'object' ? told.lo : told);
    return [row === undefined ? fact : `${fact} ${row}`, end(from), end(to), outcome];
  });

/**
 * Trailer 4,300 + 250 + 170 + 50 gal × 8.34 + 40 = 5,177 lb, 177 lb over 5,000 lb.
 * Water: 177 ÷ 8.34 = 21.223 gal, so 50 − 21.223 = 28.777, down to the tenth 28.7 gal.
 * Kitchen: 250 − 177 = 73 lb. Clothes: all 170 lb are less than 177 lb.
 * Another trailer: 5,000 lb itself is within the rating. Below the care line, 4,500 lb, care stays:
 * its own label allows 5,600 lb.
 */
test('a full tank: 28.7 gal of water, or 73 lb of kitchen, or another trailer', () => {
  expect(brief(of('remedy-full-tank'))).toEqual([
    ['trailer.freshWater', 50, 28.7, 'fits-with-care'],
    ['trailer.cargo 1', 250, 73, 'fits-with-care'],
    ['trailer.dryWeight', 5177, 5000, 'fits-with-care'],
  ]);
});

/**
 * Ball 450 + (140 · 14 + 200 · 2) ÷ 16 + 40 · 0.8 = 629.5 lb: 29.5 lb over 600 lb, and 59.5 lb over
 * the care line of 570 lb. A foot of the pantry is 200 ÷ 16 = 12.5 lb, of the generator 8.75 lb.
 * Pantry: 29.5 ÷ 12.5 = 2.36 ft would take it from 2 ft to behind the axles: not offered.
 * Generator: 3.37 ft, to 10.63, outward to 10.5 ft; 6.8 ft, to 7.2, outward to 7 ft.
 * A pound less of it is 14 ÷ 16 = 0.875 lb on the ball: 33.71 lb, so 106 lb stay; 68 lb, so 72 stay.
 * A pound less of propane is 0.8 lb: 36.875 lb, so 3 lb stay. By proportion 4,780 · 600 ÷ 629.5 =
 * 4,556, down to 4,550 lb; 4,780 · 570 ÷ 629.5 = 4,328.2, down to 4,320 lb.
 */
test('a heavy nose: the generator to 10.5 ft, and the pantry never behind the axles', () => {
  expect(brief(of('remedy-heavy-nose'))).toEqual([
    ['trailer.cargo 1', 14, 10.5, 'fits-with-care'],
    ['trailer.cargo 1', 14, 7, 'fits'],
    ['trailer.cargo 1', 140, 106, 'fits-with-care'],
    ['trailer.cargo 1', 140, 72, 'fits'],
    ['trailer.propane', 40, 3, 'fits-with-care'],
    ['trailer.dryWeight', 4780, 4550, 'fits-with-care'],
    ['trailer.dryWeight', 4780, 4320, 'fits'],
  ]);
});

/**
 * Trailer 4,426.4 + 300 + 40 gal × 8.34 + 40 = 5,100 lb: 100 lb over, and no brake controller.
 * 100 ÷ 8.34 = 11.99 gal, so 40 − 11.99 = 28.01, down to the tenth 28 gal.
 */
test('two things wrong: no single change, but a brake controller together with 28 gal', () => {
  const found = of('remedy-two-at-once');
  expect(brief(found)).toEqual([['vehicle.brakeController', 'no', 'yes', 'fits-with-care']]);
  expect(found.remedies[0]?.with).toEqual({
    fact: 'trailer.freshWater',
    from: { lo: 40, hi: 40, unit: 'gal' },
    to: { lo: 28, hi: 28, unit: 'gal' },
  });
  expect(found.remedies[0]?.says).toBe(
    'Have a brake controller fitted, or make sure that there is one. Carry 28 gal of fresh water instead of 40 gal, and fill up where you camp. Then: fits with care.',
  );
});

/**
 * Ball 480 + 200 · 3 ÷ 18 + 60 · 0.8 = 561.33 lb; payload 190 + 150 + 110 + 95 + 561.33 = 1,106.33
 * of 1,050 lb, 56.33 lb over. A foot of the kitchen is 200 ÷ 18 = 11.11 lb: 5.07 ft, to −2.07,
 * outward to −2.5 ft, would do for payload; but 561.33 − 61.11 = 500.22 lb are 9.2 % of 5,460 lb,
 * too light a tongue. Bags: 110 − 56.33 = 53.67, down to 53 lb; for the care line of 997.5 lb it
 * takes 108.83 lb, so 1 lb stays. The partner's 150 lb are more than that. In proportion:
 * 561.33 − 56.33 = 505 lb on the ball, 5,460 · 505 ÷ 561.33 = 4,912, down to 4,910 lb; for the care
 * line 5,460 · 452.5 ÷ 561.33 = 4,401.4, down to 4,400 lb.
 */
test('what people believe in: the kitchen to the nose and the bars tighter do not help payload', () => {
  const found = of('remedy-believed-and-vain');
  expect(brief(found)).toEqual([
    ['load.cargo 1', 110, 53, 'fits-with-care'],
    ['load.cargo 1', 110, 1, 'fits'],
    ['load.occupants 2', 150, 'none', 'fits'],
    ['trailer.dryWeight', 5460, 4910, 'fits-with-care'],
    ['trailer.dryWeight', 5460, 4400, 'fits'],
  ]);
  // To the A-frame, 0.8 · 18 = 14.4 ft: 200 · (14.4 − 3) ÷ 18 = 126.67 lb more.
  expect(found.noHelp.map(({ says }) => says)).toEqual(
    expect.arrayContaining([
      'Move Kitchen in the trailer: from 3 ft ahead of the axles to 14.4 ft ahead of the axles. That does not turn it: payload goes from 1,106.3 lb to 1,233 lb of 1,050 lb, and that is worse.',
      'Set the bars to restore 100 % of the front axle’s loss (now 50 %), within what the hitch’s and the vehicle’s makers allow. That does not turn it: it does nothing for payload, 1,106.3 lb of 1,050 lb as before.',
    ]),
  );
});

test('what heats is moved to the other leg and never left off; a water heater may be', () => {
  const { remedies: found } = of('fifty-four-on-one-leg', 'shore-power');
  const off = found.filter(({ to }) => to === 'none').map(({ rowName }) => rowName);
  expect(off).toContain('Water heater');
  expect(off.filter((name) => /heat pump/i.test(name ?? ''))).toEqual([]);
  expect(found.some(({ rowName, to }) => rowName === 'Front heat pump' && to !== 'none')).toBe(
    true,
  );
});
