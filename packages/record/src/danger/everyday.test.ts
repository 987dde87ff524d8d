import { expect, test } from 'vitest';
import { urgentIn, whyUrgent } from '../questions/urgent';

/** What goes wrong or is asked every day, and hurts nobody by itself. */
test.each([
  'My battery is dead again this morning. Furnace ran overnight.',
  'The battery is flat after one night of furnace, is that normal?',
  'We have one house battery and it is flat by morning, is that normal?',
  'why is my trailer battery always flat after the drive when it is plugged into the truck',
  'Is it safe to use my home grill off the trailer’s propane?',
  'Does my grill need its own regulator when it hangs on the trailer’s gas?',
  'Our grill barely works off the outside port. Do I need a different adapter?',
  'We would like to run our grill off the quick connect on the side of the trailer instead of the little green bottles. Do I need to take the regulator off the grill?',
  'Little dent in the back bumper, how much to pull it out?',
  'There is a dent in the side of my trailer from hail. Can you pop it out?',
  'Someone put a dent in the rear corner. Is it bad, can it wait?',
  'battery panel shows 12.1 volts this morning, was 12.7 last night. Ran furnace all night. Is the battery bad?',
  'One 100 amp-hour lead acid battery, the furnace blower draws 7 amps about half of the time overnight. Will the battery make it through the night?',
  'lithium battery app says 38%, is that ok to leave it in the trailer in the garage till spring? gets down to 10F in there',
  'tires on mine say 2018 on the side (code 3118) but tread looks brand new. still good right',
  'What spares should I carry for a long trip, were going 2400 miles to the coast and back. got a spare tire already',
  'love the videos, the one with the awning made my grandpa laugh out loud. Keep em coming',
  'our trailer has the low pressure quick connect on the side and we bought a little grill that has its own regulator for the 1 lb bottles. Can I just get a hose and plug it in to the side port? My brother says take the regulator off.',
])('is not urgent: %s', (text) => {
  expect(urgentIn(text)).toBeNull();
  expect(whyUrgent(text)).toEqual([]);
});

/** The same things, and something that hurts. */
test.each([
  ['the battery is swollen and smells of eggs', 'gas'],
  ['the battery is flat and gets hot on the charger', 'heat'],
  ['battery dead overnight, and the CO alarm is going off', 'alarm'],
  ['the battery is dead and it is 12 degrees tonight, no furnace, the kids are cold', 'frost'],
  ['our grill hisses and smells of gas', 'gas'],
  ['grease fire in the grill, flames are up the siding', 'smoke'],
  ['the grill on the side of the trailer hisses since I took the little green bottle off', 'gas'],
  ['a green bottle of the grill smells of gas by the quick connect, regulator and all', 'gas'],
  ['dad lit the grill in the screen room because of the rain', undefined],
  ['my grill from home hisses a bit when it is hooked up, normal?', 'gas'],
  ['dent in the propane cylinder, can I still use it', 'gas'],
  ['dented wheel rim and it loses air', 'wheel'],
  ['hit a deer, dent in the a-frame near the coupler, towing home', 'coupling'],
  ['lead acid battery, 100 amp-hours, smells of eggs on the charger', undefined],
  ['the battery acid leaks on the floor, 12.4 volts', undefined],
  ['lithium battery at 38% is swollen and hot, ok till spring?', undefined],
  ['tires from 2018 (code 3118), one has a bulge on the side', 'wheel'],
  ['what spares should i carry, one wheel is loose', 'wheel'],
  ['agm 100 ah battery gurgling and spitting, normal?', undefined],
  ['tires code 3118, inner edge has a slit', undefined],
  ['tires dated 2210 leaning outward, ok?', undefined],
  ['love the videos, keep em coming. btw it smells of gas by our stove', 'gas'],
  ['can i get a hose and plug in the grill, it hisses at the quick connect', 'gas'],
  ['The battery is flat. One hub squeals and is too hot to touch.', undefined],
])('stays urgent: %s', (text, kind) => {
  const urgent = urgentIn(text);
  if (kind === undefined) expect(urgent).not.toBeNull();
  else expect(urgent).toBe(kind);
  expect(whyUrgent(text).length).toBeGreaterThan(0);
});

/** These stay urgent whatever else is learned: each tells outright of what hurts. */
test.each([
  'Smell of gas by the stove, what do we do?',
  'there is a propane smell in the cupboard under the sink',
  'Smoke is coming out of the converter',
  'the fire table set the awning on fire',
  'The carbon monoxide alarm is going off',
  'smoke detector keeps going',
  'no brakes at all, we are on the grade',
  'brakes failed, we are in the runaway lane',
  'I got shocked touching the door',
  'it is swaying badly right now, 9,000 lb behind a half-ton',
  'overloaded by 500 lb and the trailer sways all over the road',
  'a wheel came off on the way in',
  'We love your show! Which ball do I need? Oh and it smells of propane in the back.',
])('a danger that is told outright is never lost: %s', (text) => {
  expect(urgentIn(text)).not.toBeNull();
});

test.each([
  'we are ON FIRE this season, any spots left in September',
  'No smell of gas or anything, how do I light the oven?',
  'Can’t smell gas, can smell bacon. How long is the line for the June rally?',
])('words of danger that tell of none: %s', (text) => {
  expect(urgentIn(text)).toBeNull();
});

test('why it is urgent is told in the very words, at most three', () => {
  expect(whyUrgent('Smell of gas by the stove, what do we do?')).toContain('smell … gas');
  const many =
    'one hub is hot, it reeks of propane inside, the brakes do not hold, the alarm goes off and the plug melted';
  expect(whyUrgent(many).length).toBeLessThanOrEqual(3);
});
