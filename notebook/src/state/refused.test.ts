import { readCase } from '@tarebook/casebook';
import { towFit as topic } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { placeOf, refusalOf, refusedIn } from './refused';

const text = `---
title: Refused
topic: tow-fit
---

| Fact | Value |
| --- | --- |
| \`vehicle.placardPayload\` What the door says | 12oo lb |
| \`vehicle.maxTongueCarried\` | 5,000,000 lb |
| \`trailer.brakes.none\` | yes |

| \`load.cargo\` | Weight |
| --- | --- |
| Bags | 40 ft |
`;

test('each refused entry is named by its label, in words without an id', () => {
  const refused = refusedIn(readCase(text));
  expect(refused.map(({ label }) => label)).toEqual([
    'Maximum tongue weight, carried',
    'What the door says',
    'Cargo in the vehicle, row 1, weight',
  ]);
  for (const { label, says } of refused) {
    expect(`${label} ${says}`).not.toMatch(/`|\w\.\w/);
  }
  expect(refused.map(placeOf).toSorted()).toEqual([
    'load.cargo.0.weight',
    'vehicle.maxTongueCarried',
    'vehicle.placardPayload',
  ]);
});

test('one value is refused or taken by itself', () => {
  expect(refusalOf(topic, 'vehicle.placardPayload', '1,260 lb')).toBeUndefined();
  expect(refusalOf(topic, 'vehicle.placardPayload', 'unknown')).toBeUndefined();
  expect(refusalOf(topic, 'vehicle.placardPayload', '1,260 ft')?.label).toBe(
    'Payload on the door label',
  );
});

test('a case without troubles refuses nothing', () => {
  expect(
    refusedIn(
      readCase(
        text
          .replace('12oo', '1200')
          .replace('5,000,000', '500')
          .replace('40 ft', '40 lb')
          .replace(/\| `trailer.brakes.*\n/, ''),
      ),
    ),
  ).toEqual([]);
});
