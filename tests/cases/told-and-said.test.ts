import { topics } from '@tarebook/rules';
import {
  answerEverybody,
  answerNow,
  type FactsGiven,
  formOf,
  type Level,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';

const asOf = '2026-11-01';

function topicOf(id: string) {
  const topic = topics[id];
  if (!topic) throw new Error(id);
  return topic;
}

const spoken = (id: string, facts: FactsGiven): string =>
  formOf('spoken', topicOf(id), { facts, asOf });
const levelOf = (id: string, facts: FactsGiven, finding: string): Level | 'not-asked' | undefined =>
  answerNow(topicOf(id), { facts, asOf }).findings.find((each) => each.id === finding)?.level;

/** Who tells it, of what, what, what must be heard, and what must not. */
type Heard = readonly [
  name: string,
  topic: string,
  facts: FactsGiven,
  says: RegExp,
  never?: RegExp | undefined,
];

const told: readonly Heard[] = [
  [
    'two dry figures of which the share is light',
    'sway',
    { 'trailer.dryWeight': '4000–5000 lb', 'trailer.dryTongueWeight': '300 lb' },
    /Only 6 to 7\.5 percent of the trailer rests on the ball; 10 to 15 percent is usual/,
  ],
  [
    'a tongue that lifts on the scale',
    'weigh-in',
    {
      'slack.front': '3200 lb',
      'slack.rear': '3000 lb',
      'slack.trailer': '5200 lb',
      'alone.front': '3100 lb',
      'alone.rear': '3400 lb',
      'alone.sameLoad': 'yes',
      'scale.step': '20 lb',
    },
    /Nothing of the trailer rests on its coupling/,
    /less than nothing/,
  ],
  [
    'a cracked frame, once',
    'used-trailer',
    { 'frame.state': 'cracked' },
    /The frame is cracked\./,
    /No price.*No price/,
  ],
  [
    'a date on a collar',
    'used-trailer',
    { 'cylinder.stampYear': '2010', 'cylinder.dateKind': 'made' },
    /^The gas cylinders are past their dates\./,
  ],
  [
    'a voltage with nothing on, and nobody said for how long',
    'house-battery',
    {
      'battery.voltage': '12.2 V',
      'battery.reading': 'at-rest',
      'battery.chemistry': 'flooded',
      'battery.capacity': '100 Ah',
    },
    /^If nothing charged it or drew on it for 6 hours, it is 44 percent full\. That is below the 50 percent/,
    /next to nothing/,
  ],
  [
    'a voltage while something charges it',
    'house-battery',
    { 'battery.voltage': '13.6 V', 'battery.reading': 'charging', 'battery.chemistry': 'agm' },
    /switch charger and everything else off for 6 hours, and read it again/,
    /^The battery is/,
  ],
  [
    'days of gas, with the hours nobody told',
    'gas-supply',
    { 'cylinder.fill': '30 lb', 'furnace.input': '30000 Btu/h', 'furnace.duty': '40 %' },
    /^With the furnace set for 12 hours a night, the gas lasts 4\.5 days\./,
    /Weigh it and/,
  ],
  [
    'one ticket',
    'weigh-in',
    { 'tight.front': '3200 lb', 'tight.rear': '3900 lb', 'tight.trailer': '5640 lb' },
    /axles carry 5,640 pounds, and the vehicle’s 7,100 pounds\. The trailer weighs more/,
    /You told me/,
  ],
  [
    'nothing but a price',
    'used-trailer',
    { 'price.asked': '9500 USD' },
    /^Whether 9,500 dollars is right waits: frame, floor and title/,
  ],
  [
    'a quote below the deductible',
    'body-repair',
    {
      'shop.quote': '900 USD',
      'policy.deductible': '1000 USD',
      'services.hurt': 'no',
      'structure.hurt': 'no',
    },
    /^As quoted the insurer pays nothing/,
  ],
  [
    'a quote below the deductible, and nobody has looked underneath',
    'body-repair',
    { 'shop.quote': '900 USD', 'policy.deductible': '1000 USD' },
    /^As quoted the insurer pays nothing.*Only if more is found behind the panel would a claim pay\..*Cylinders shut, battery and cord off.*Do not tow it before /,
  ],
  [
    'a weighed tongue and the trailer’s maximum',
    'sway',
    { 'trailer.measuredTongueWeight': '400 lb', 'trailer.gvwr': '5200 lb' },
    /7\.7 percent on the ball\. That tongue is 10 percent of a trailer of 4,000 pounds/,
  ],
  [
    'a maximum and what the door label leaves',
    'tow-fit',
    { 'trailer.gvwr': '7000 lb', 'vehicle.placardPayload': '1200 lb' },
    /about 910 pounds on the ball\. Of your label’s 1,200 pounds that leaves 290 pounds/,
  ],
  [
    'a soft tire whose label nobody read',
    'tires',
    { 'tire.pressure': '50 psi', 'tire.maxPressure': '80 psi' },
    /hangs on the label’s pressure: above 63 pounds a square inch, the tires will not do/,
  ],
  [
    'a voltage that nobody read closely',
    'house-battery',
    { 'battery.voltage': 'about 12.2 V' },
    /nobody can tell how full the battery is.*Read it on a meter/,
    /percent (?:left|full)/,
  ],
  [
    'a label that asks for more than the sidewall allows',
    'tires',
    { 'tire.labelPressure': 'about 80 psi', 'tire.maxPressure': '65 psi' },
    /Never fill beyond the sidewall/,
  ],
  [
    'a label that may ask for more than the sidewall allows',
    'tires',
    { 'tire.labelPressure': '60–70 psi', 'tire.maxPressure': '65 psi' },
    /The label may ask for more than this sidewall allows.*never fill beyond the sidewall/,
  ],
  [
    'a pressure as labeled',
    'tires',
    { 'tire.pressure': '50 psi', 'tire.labelPressure': '50 psi', 'tire.maxPressure': '80 psi' },
    /^Leave it so: the label asks for 50 pounds/,
    /If you find no label/,
  ],
  [
    'a label that is met by more than the sidewall allows',
    'tires',
    { 'tire.pressure': '90 psi', 'tire.labelPressure': '65 psi', 'tire.maxPressure': '80 psi' },
    /Set it cold, standing to the side, before it rolls\./,
    /Leave it so/,
  ],
  [
    'a tire at all the pressure that its sidewall allows, below the label’s',
    'tires',
    { 'tire.pressure': '50 psi', 'tire.labelPressure': '65 psi', 'tire.maxPressure': '50 psi' },
    /Do not tow on it, and fill it no further: .*fit the tire that the label means/,
    /percent of its \d+ pounds a square inch|Fill it to/,
  ],
  [
    'locks on coupler and both sides',
    'theft-deterrence',
    {
      'place.kind': 'street',
      'parked.days': '21 d',
      'rig.value': '28000 USD',
      'guard.held': 'coupler-and-both-wheels',
      'guard.noticed': 'tracked',
      'gas.shutIn': 'no',
    },
    /^The trailer is guarded as it should be\. What holds it is enough for where it stands/,
    /wheel lock|list for that place/,
  ],
  [
    'a trailer in the street',
    'theft-deterrence',
    { 'place.kind': 'street' },
    /wheel lock; a second wheel lock on the other side/,
    /Lock coupler and wheel|as well/,
  ],
  [
    'how far it goes, on battery',
    'electric-tow-range',
    { 'trip.distance': '70 mi' },
    /^For 70 miles with a trailer plan as if they were twice as many/,
    /You told me/,
  ],
  [
    'bearings that are due, and a weekend',
    'service-triage',
    {
      'gas.smell': 'no',
      'danger.sign': 'none',
      'trouble.in': 'wheel-or-hub',
      'trouble.degree': 'upkeep',
      'trailer.stands': 'at-home',
    },
    /^You may leave for a short trip, as long as nothing is hot, loud or loose\..*Stop after the first miles/,
  ],
  [
    'brakes that are due, and no word of danger',
    'service-triage',
    { 'trouble.in': 'brakes', 'trouble.degree': 'upkeep' },
    /Book/,
    /You may leave/,
  ],
  [
    'brakes that are due, and an open recall',
    'service-triage',
    {
      'trouble.in': 'brakes',
      'trouble.degree': 'upkeep',
      'danger.sign': 'none',
      'recall.found': 'open',
    },
    /Book/,
    /You may leave/,
  ],
  [
    'a breakaway cable that is off, and brakes of which nobody knows',
    'hitch-setup',
    { 'hitch.breakaway': 'no', 'trailer.brakes': 'unknown' },
    /Clip it to a point of its own\. Where there is none, look for drums or discs, wires or a hose/,
    /before that is known/,
  ],
  [
    'a household outlet',
    'shore-power',
    { 'supply.outlet': 'household-15', 'trailer.inlet': '30' },
    /One large thing at a time; if the plug gets warm/,
  ],
  [
    'a trailer that nothing holds',
    'theft-deterrence',
    {
      'guard.held': 'nothing',
      'guard.noticed': 'nothing',
      'place.kind': 'street',
      'gas.shutIn': 'no',
    },
    /^The trailer can be guarded better\. Nothing holds it/,
    /may stand so/,
  ],
  [
    'tickets that cannot be right',
    'weigh-in',
    {
      'slack.front': '2840 lb',
      'slack.rear': '1960 lb',
      'slack.trailer': '1280 lb',
      'alone.front': '3100 lb',
      'alone.rear': '3060 lb',
    },
    /Go over the scale again before you set out/,
    /do not tow so/,
  ],
  [
    'a generator of two halves and a plug of one',
    'shore-power',
    {
      'supply.outlet': 'generator',
      'generator.power': '5000 W',
      'generator.legs': '120-240',
      'trailer.inlet': '30',
      'generator.altitude': '0 ft',
    },
    /only half of that to one 120-volt plug/,
  ],
  [
    'a generator of two halves, of which the trailer’s plug takes less than one',
    'shore-power',
    {
      'supply.outlet': 'generator',
      'generator.power': '12000 W',
      'generator.legs': '120-240',
      'trailer.inlet': '30',
      'generator.altitude': '0 ft',
    },
    /12,000 watts, and to this trailer’s one 120-volt plug 30 amps/,
    /only half/,
  ],
  [
    'a quote on both sides of a deductible that is known',
    'body-repair',
    {
      'shop.quote': '800–1200 USD',
      'policy.deductible': '1000 USD',
      'services.hurt': 'no',
      'structure.hurt': 'no',
    },
    /^Have the quote made to the dollar first: of 1,000 dollars or less the insurer pays nothing/,
    /Read the deductible first/,
  ],
  [
    'a sheet that allows more than the door label',
    'truck-camper',
    {
      'vehicle.cargoRating': '3000 lb',
      'vehicle.placardPayload': '2800 lb',
      'vehicle.seats': '5',
      'camper.weight': '2500 lb',
      'load.occupants': [{ weight: '150 lb' }],
    },
    /2,650 pounds ride on the truck\. The sheet allows more than this door label/,
    /whatever the sheet says/,
  ],
  [
    'heat that is enough for water in heated tanks, and no word of a stove',
    'cold-weather',
    {
      'outside.temperature': '22 °F',
      'inside.temperature': '55 °F',
      'water.state': 'in-use',
      'trailer.use': 'lived-in',
      'tanks.place': 'heated',
      'frost.hours': '10 h',
      'furnace.hours': '24 h',
    },
    /^While you stay, leave the furnace on day and night.*no flame but the built-in furnace keeps the trailer warm/,
  ],
  [
    'heat that is enough for water in heated tanks',
    'cold-weather',
    {
      'outside.temperature': '22 °F',
      'inside.temperature': '55 °F',
      'water.state': 'in-use',
      'trailer.use': 'lived-in',
      'tanks.place': 'heated',
      'frost.hours': '10 h',
      'furnace.hours': '24 h',
      'heat.portable': 'no',
      'alarm.gasReplaceBy': 'ahead',
      'alarm.monoxideReplaceBy': 'ahead',
    },
    /^That is warm enough for heated tanks\. Stay with the furnace on day and night, as long as it holds that\./,
  ],
  [
    'heat that the furnace cannot hold',
    'cold-weather',
    {
      'outside.temperature': '-15 °F',
      'inside.temperature': '68 °F',
      'water.state': 'in-use',
      'trailer.use': 'lived-in',
      'tanks.place': 'heated',
      'furnace.input': '12,000 Btu/h',
      'body.length': '26 ft',
      'body.insulation': 'thin',
    },
    /The furnace falls short.*The trailer must not stay so/,
    /is enough for water|Stay with the furnace/,
  ],
  [
    'heat for which the gas does not last',
    'cold-weather',
    {
      'outside.temperature': '10 °F',
      'inside.temperature': '65 °F',
      'water.state': 'in-use',
      'trailer.use': 'lived-in',
      'tanks.place': 'heated',
      'furnace.input': '30,000 Btu/h',
      'furnace.duty': '60 %',
      'furnace.hours': '24 h',
      'cylinder.fill': '20 lb',
      'trip.nights': '4',
    },
    /The gas falls short/,
    /is enough for water/,
  ],
  [
    'a coupler that is too small for its trailer',
    'hitch-setup',
    { 'trailer.couplerSize': '1 7/8 in', 'hitch.ballSize': '2 in', 'trailer.gvwr': '3200 lb' },
    /Have a coupler of the right class fitted.*No smaller ball: .*the coupler is what is wrong/,
    /No smaller ball.*Fit a ball.*No smaller/,
  ],
  [
    'a spare that is not there',
    'spares-kit',
    { 'spare.present': 'no', 'trailer.axles': '2', 'trailer.dryWeight': '4000 lb' },
    /There is no spare wheel\. Get one/,
    /spare’s load/,
  ],
  [
    'a scale that shows less than the empty cylinder',
    'gas-supply',
    { 'cylinder.fill': '20 lb', 'cylinder.tare': '17 lb', 'cylinder.scaleWeight': '15.5 lb' },
    /How much is left a scale tells/,
    /up to 20 pounds/,
  ],
];

/** Little was told, and what that means is heard: as a phone call has it. */
describe('what was told is said with what it means', () => {
  for (const [name, id, facts, says, never] of told) {
    test(name, () => {
      const said = spoken(id, facts);
      expect(said).toMatch(says);
      if (never) expect(said).not.toMatch(never);
    });
  }
});

test('a light trailer is towed without sway control as a matter of course', () => {
  const of = (weight: string): FactsGiven => ({
    'trailer.dryWeight': weight,
    'trailer.cargo': [],
    'hitch.swayControl': 'none',
  });
  expect(levelOf('sway', of('2000 lb'), 'sway-control')).toBe('ok');
  expect(levelOf('sway', of('2001 lb'), 'sway-control')).toBe('care');
  const slack = { ...of('1400 lb'), 'hitch.swayControl': 'slack' } satisfies FactsGiven;
  expect(levelOf('sway', slack, 'sway-control')).toBe('care');
});

test('the kind of the trailer’s tires is heard by either of its two names', () => {
  const kind = 'passenger';
  expect(levelOf('sway', { 'trailer.tireKind': kind }, 'tire-kind')).toBe('care');
  expect(levelOf('sway', { 'tire.kind': kind }, 'tire-kind')).toBe('care');
  expect(levelOf('sway', { 'tire.kind': kind, 'tire.place': 'rear' }, 'tire-kind')).toBe('ok');
});

test('a night that was warmer outside than in tells no heat, and none below nothing', () => {
  const { values } = answerNow(topicOf('cold-weather'), {
    facts: {
      'night.gas': '10 lb',
      'night.hours': '12 h',
      'night.inside': '60 °F',
      'night.outside': '70 °F',
      'furnace.input': '30000 Btu/h',
      'furnace.blowerCurrent': '7 A',
      'outside.temperature': '30 °F',
    },
    asOf,
  });
  expect(values['furnace.reckoned']).toMatchObject({ lo: 0, hi: 1 });
  expect(values['blower.ampHours']).toMatchObject({ lo: 0, hi: 84 });
});

test('that the battery is counted as charged between the nights is told', () => {
  const facts = {
    'battery.capacity': '100 Ah',
    'battery.chemistry': 'flooded',
    'furnace.blowerCurrent': '4 A',
    'trip.nights': '3',
  } satisfies FactsGiven;
  const assumed = (more: FactsGiven) =>
    JSON.stringify(
      answerNow(topicOf('cold-weather'), { facts: { ...facts, ...more }, asOf }).assumed,
    );
  expect(assumed({})).toMatch(/full again before each night/);
  expect(assumed({ 'trip.nights': '1' })).not.toMatch(/full again before each night/);
  expect(assumed({ 'battery.recharged': 'no' })).not.toMatch(/full again before each night/);
});

test('between the weights that everybody hears of a motorhome no gap is left', () => {
  const { branches } = answerEverybody(topicOf('towed-car'), { facts: {}, asOf }, 'most');
  const ends = branches.map(({ when }) => String(when['motorhome.weighed']));
  const [, least] = /^at most (\d+) lb$/.exec(ends[0] ?? '') ?? [];
  expect(ends[1]).toMatch(new RegExp(`^${least}–`));
  expect(branches.map(({ outcome }) => outcome)).toEqual([
    'may-be-towed',
    'may-be-towed-with-care',
    'not-towed-so',
  ]);
});

test('nobody is told to fill a tire beyond its sidewall or wheel, nor on without end', () => {
  const facts = { 'tire.pressure': '58 psi', 'tire.labelPressure': '65 psi' } satisfies FactsGiven;
  const low = (more: FactsGiven) =>
    answerNow(topicOf('tires'), { facts: { ...facts, ...more }, asOf }).findings.find(
      ({ id }) => id === 'under-inflated',
    );
  expect(low({ 'tire.maxPressure': '60 psi' })?.do).toMatch(/^Fill it to 60 psi, cold/);
  expect(low({ 'wheel.maxPressure': '60 psi' })?.do).toMatch(/^Fill it to 60 psi, cold/);
  expect(low({})?.do).toMatch(/^Fill it to 65 psi, cold/);
  // The sidewall’s figure is only the most.
  expect(low({ 'tire.maxPressure': '80 psi' })?.do).toMatch(/^Fill it to 65 psi, cold/);
  expect(low({ 'tire.maxPressure': '58 psi' })).toMatchObject({ level: 'care' });
  expect(low({ 'tire.maxPressure': '58 psi' })?.do).toMatch(/^Never fill beyond/);
});

test('the caution that is heard is about what is at hand', () => {
  const heater = [{ input: '9,000 Btu/h', hours: '8 h' }];
  const gas = { 'gas.appliances': heater, 'cylinder.fill': '20 lb', 'trip.nights': '3' };
  expect(spoken('gas-supply', gas)).toMatch(/Portable gas appliances burn in the open air only/);
  const last = topicOf('used-trailer').cautions.at(-1);
  expect(last?.says).toMatch(/^This is advice and no inspection/);
});

test('what to do about a coupling of two sizes is the same for whoever tows and whoever hitches', () => {
  const facts = {
    'trailer.couplerSize': '2 in',
    'hitch.ballSize': '2 5/16 in',
  } satisfies FactsGiven;
  const [fit, hitch] = ['tow-fit', 'hitch-setup'].map(
    (id) =>
      answerNow(topicOf(id), { facts, asOf }).findings.find((each) => each.id === 'ball-size')?.do,
  );
  expect(fit).toMatch(/of one size before it moves: the one that the trailer’s weight takes/);
  expect(hitch).toBe(fit);
});

test('a kit that is too heavy is not lightened by what carries the trailer or heals somebody', () => {
  expect(topicOf('spares-kit').limits.payload?.do).toMatch(/never jack, stands or what somebody/);
});

test('a bonding plug comes out before shore power', () => {
  const { findings } = answerNow(topicOf('shore-power'), {
    facts: { 'supply.outlet': 'generator', 'generator.power': '3000 W' },
    asOf,
  });
  expect(findings.find(({ id }) => id === 'bonding-plug')?.do).toMatch(/out before shore power/);
});
