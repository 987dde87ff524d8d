import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { askedOf } from '@tarebook/casebook';
import { formsOf } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { readFiled } from './filed';
import { casesFolder } from './files';

/**
 * Who asks about something else hears the danger all the same: what is wrong and what to do, on the
 * phone, in public and to everybody, before the rule and the figures of an example.
 */
const dangers: readonly (readonly [path: string, wrong: RegExp, todo: RegExp])[] = [
  [
    'truck-camper/two-facts-a-mark-seventy-inches-back.md',
    /lies 12 (inches|in) behind the rear axle/,
    /Do not drive it so/,
  ],
  [
    'hitch-setup/two-facts-an-extension-in-the-receiver.md',
    /[Ww]hat may rest on the ball with the extension/,
    /Read the extension’s own label/,
  ],
  [
    'shore-power/two-facts-a-bonding-plug-in-the-generator.md',
    /A bonding plug is in the generator/,
    /Take it out before the trailer goes on shore power/,
  ],
  [
    'shore-power/two-facts-a-generator-and-no-word-of-a-plug.md',
    /no bonding plug is in the trailer/,
    /nor stays in the generator on shore power/,
  ],
  [
    'cold-weather/turned-down-to-save-gas.md',
    /Turn the heat up: 44/,
    /At least 55 .*, day and night/,
  ],
  [
    'cold-weather/off-before-dawn.md',
    /Leave the heat on: the furnace is set for 6 h.*, and the frost lasts 12/,
    /or drain the water first/,
  ],
  [
    'body-repair/two-facts-hit-from-behind.md',
    // A post ends with the question that would settle it.
    /((whether|Whether) something that carries is|is anything) bent or cracked|before frame, coupler, axle and floor have been looked at/,
    /Do not tow it before frame, coupler, axle and floor have been looked at/,
  ],
  [
    'tires/two-facts-passenger-tires-on-a-trailer.md',
    /divided by 1\.1|rating divided/,
    /only where the trailer’s maker allows/,
  ],
  [
    'tow-fit/surge-brakes-and-bars.md',
    /the surge brakes’ actuator is approved/,
    /Ask the actuator’s maker before the bars go on/,
  ],
  [
    'tow-fit/rear-axle-with-bars.md',
    /Before the bars are tightened the rear axle carries/,
    /load less behind the vehicle’s rear axle/,
  ],
];

describe.each(dangers)('%s', (path, wrong, todo) => {
  const doc = readFiled(readFileSync(join(casesFolder, path), 'utf8'));
  const { topic, asked } = askedOf(doc);
  const { asking, forms } = formsOf(topic, asked);
  const because = topic.everybody?.[asking ?? 'any']?.because;

  test.each(['spoken', 'post', 'everybody'] as const)('%s says it', (form) => {
    expect(forms[form]).toMatch(wrong);
  });

  test('spoken says what to do', () => {
    expect(forms.spoken).toMatch(todo);
  });

  test('no reason of the rule comes before it', () => {
    const before = forms.spoken.slice(0, forms.spoken.search(wrong));
    if (because !== undefined) expect(before).not.toContain(because);
  });
});
