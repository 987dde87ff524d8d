import { gasSupply, serviceTriage, sway, topics, usedTrailer } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { firstReplies } from '../../packages/record/src/questions/first-reply';

/** Every text below a value, wherever it stands in it. */
function texts(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(texts) : [];
}
const finding = (topic: typeof gasSupply | typeof serviceTriage, facts: FactsGiven, id: string) =>
  answerNow(topic, { facts }).findings.find((each) => each.id === id);

describe('sway', () => {
  test('brakes by hand are said only with the lever they need: surge brakes have none', () => {
    const said = [...texts(sway), ...texts(serviceTriage), ...texts(firstReplies)].filter((text) =>
      /trailer.? brakes,? by/i.test(text),
    );
    expect(said.length).toBeGreaterThanOrEqual(6);
    for (const text of said) expect(text).toMatch(/lever (for them|if there is one)|lever, if any/);
  });
});

describe('gas', () => {
  test.each([gasSupply, serviceTriage])(
    '$id: an alarm has a cause, and who feels sick is helped',
    (topic) => {
      const smelled = finding(topic, { 'gas.smell': 'yes' }, 'smell');
      expect([smelled?.level, smelled?.wrong]).toEqual([
        'stop',
        expect.stringMatching(/fresh air/),
      ]);
      expect(smelled?.do).toMatch(/headache.*sick/);
      expect(smelled?.do).toMatch(/emergency number/);
      expect(smelled?.do).not.toMatch(/leak/);
    },
  );

  test('an alarm that sounds is told by itself, in gas supply as at the service desk', () => {
    for (const topic of [gasSupply, serviceTriage]) {
      const sounds = finding(topic, { 'alarm.heard': 'sounds', 'gas.smell': 'no' }, 'alarm');
      expect(sounds?.level).toBe('stop');
      expect(`${sounds?.wrong} ${sounds?.do}`).toMatch(/fresh air.*emergency number.*sick/);
      expect(sounds?.do).not.toMatch(/leak/);
      expect(finding(topic, { 'alarm.heard': 'chirps' }, 'alarm')?.level).toBe('if');
    }
  });

  test.each(Object.values(firstReplies))('at most forty words: %s', (reply) => {
    expect(reply.split(/\s+/).length).toBeLessThanOrEqual(40);
  });
});

const withAlarms = Object.values(topics).filter(({ findings }) => 'alarms' in findings);
describe.each(withAlarms)('alarms, as $id tells of them', (topic) => {
  const level = (facts: FactsGiven) =>
    answerNow(topic, { facts }).findings.find(({ id }) => id === 'alarms')?.level;
  const ages = { 'alarm.gasAge': '2 yr', 'alarm.monoxideAge': '2 yr' };

  test('the replace-by date that is printed wins over any age', () => {
    expect(level(ages)).toBe('ok');
    expect(level({ ...ages, 'alarm.monoxideReplaceBy': 'past' })).toBe('stop');
    expect(level({ ...ages, 'alarm.gasReplaceBy': 'past' })).toBe('stop');
    const old = { 'alarm.gasAge': '9 yr', 'alarm.monoxideAge': '9 yr' };
    expect(level(old)).toBe('stop');
    const ahead = { 'alarm.gasReplaceBy': 'ahead', 'alarm.monoxideReplaceBy': 'ahead' };
    expect(level({ ...old, ...ahead })).toBe('ok');
    expect(level(ahead)).toBe('ok');
  });

  test('a monoxide alarm of six years is not taken for good before its back is read', () => {
    expect(level({ ...ages, 'alarm.monoxideAge': '6 yr' })).toBe('if');
    expect(
      level({ ...ages, 'alarm.monoxideAge': '6 yr', 'alarm.monoxideReplaceBy': 'ahead' }),
    ).toBe('ok');
    expect(level({ ...ages, 'alarm.monoxideAge': '5 yr' })).toBe('ok');
  });
});

describe('gas, where it is connected and how cold it is', () => {
  test.each(['none', 'trim'])(
    'a plate for cylinder pressure starves after the regulator: %s',
    (own) => {
      const facts = {
        'appliance.inlet': 'cylinder-pressure',
        'appliance.ownRegulator': own,
        'supply.point': 'after-regulator',
        'supply.adapter': 'no',
      };
      const found = finding(gasSupply, facts, 'connection');
      expect(found?.level).toBe('stop');
      expect(`${found?.wrong} ${found?.because}`).toMatch(/starve/);
      expect(`${found?.wrong} ${found?.because}`).not.toMatch(
        /would get cylinder pressure|nothing stands/i,
      );
    },
  );

  test('the rule’s straight line is carried to its end and no further', () => {
    const rule = (degrees: number) =>
      answerNow(gasSupply, {
        facts: {
          'cylinder.fill': '30 lb',
          'cylinder.filled': 'yes',
          'outside.temperature': `${degrees} °F`,
        },
      }).values['vapor.rule'].lo;
    const zero = rule(0);
    for (const degrees of [-20, -19, -15, -10, -1, 10, 20])
      expect(rule(degrees) / zero).toBeCloseTo(1 + degrees / 20, 6);
    expect(rule(-25)).toBe(0);
  });
});

describe('sway, on a ball and on a pin', () => {
  const level = (facts: FactsGiven, id: string) =>
    answerNow(sway, { facts }).findings.find((each) => each.id === id)?.level;

  test('a share of the loss that the makers want is no bars set wrong, and without bars there are none', () => {
    const fender = (option: string, bars?: string) =>
      level(
        { 'hitch.frontFender': option, ...(bars && { 'hitch.distribution': bars }) },
        'front-fender',
      );
    expect(['half-back', 'as-alone'].map((option) => fender(option, 'yes'))).toEqual(['ok', 'ok']);
    expect(fender('hardly-back', 'yes')).toBe('care');
    expect(fender('hardly-back', 'no')).toBe('ok');
    expect(fender('hardly-back')).toBe('if');
    expect(fender('lower', 'yes')).toBe('stop');
  });

  test('of a fifth-wheel neither sway control nor fender nor a heavier vehicle is asked', () => {
    const rig = {
      'trailer.dryWeight': '9,000 lb',
      'vehicle.curbWeight': '6,000 lb',
      'hitch.swayControl': 'none',
      'hitch.frontFender': 'hardly-back',
    };
    for (const id of ['sway-control', 'lighter-vehicle'])
      expect(level({ ...rig, 'trailer.coupling': 'ball' }, id)).toBe('care');
    for (const id of ['sway-control', 'lighter-vehicle', 'front-fender'])
      expect(level({ ...rig, 'trailer.coupling': 'fifth-wheel' }, id)).toBe('not-asked');
  });

  test('what swayed once and was mended may be towed, with care', () => {
    expect(level({ 'sway.felt': 'mended' }, 'sway-felt')).toBe('care');
    expect(level({ 'sway.felt': 'by-itself' }, 'sway-felt')).toBe('stop');
  });
});

describe('a used trailer', () => {
  const found = (facts: FactsGiven, id: string) =>
    answerNow(usedTrailer, { facts }).findings.find((each) => each.id === id);
  const title = (state: string) => found({ 'title.state': state }, 'title');

  test('a lender is paid before he releases, and the seller only after', () => {
    const lien = title('lien');
    expect(lien?.level).toBe('if');
    expect(lien?.do).toMatch(/payoff.*lender.*rest to the seller against the release/);
  });

  test.each([
    ['clean', 'ok'],
    ['lien', 'if'],
    ['state-issues-none', 'if'],
    ['other-name-with-paper', 'if'],
    ['other-name', 'stop'],
    ['number-differs', 'stop'],
    ['branded', 'stop'],
    ['none', 'stop'],
  ])('a title that is %s: %s, and the walking away says the same', (state, level) => {
    expect(title(state)?.level).toBe(level);
    const facts = { 'title.state': state, 'frame.state': 'sound', 'soft.zones': '0' };
    expect(answerNow(usedTrailer, { facts }).outcome === 'walk-away').toBe(level === 'stop');
  });

  test('each ruling has the class of its own source', () => {
    const classes = Object.fromEntries(
      Object.entries(usedTrailer.findings).map(([id, { source }]) => [id, source.class]),
    );
    expect(classes).toMatchObject({
      frame: 'common-practice',
      'frame-rust': 'house',
      structure: 'common-practice',
      'structure-moves': 'house',
      tires: 'common-practice',
    });
    expect(sway.findings['far-ends'].source.class).toBe('house');
    expect(gasSupply.formulas['pipe.capacity'].source.class).toBe('from-memory');
  });
});

test.each(['none', 'trim', 'high-pressure'])('another gas is never connected: %s', (own) => {
  for (const point of ['after-regulator', 'trailer-cylinder', 'separate-cylinder']) {
    const facts = {
      'appliance.inlet': 'other-gas',
      'appliance.ownRegulator': own,
      'supply.point': point,
      'supply.adapter': 'no',
    };
    expect(finding(gasSupply, facts, 'connection')?.level).toBe('stop');
  }
});
