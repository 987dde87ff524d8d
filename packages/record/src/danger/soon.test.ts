import { expect, test } from 'vitest';
import { urgentIn } from '../questions/urgent';
import { isSoon } from './soon';

/** The trade’s everyday questions, which have a word of danger and tell of none. */
const calm: readonly string[] = [
  'What hitch height do I want for a coupler at 21 inches? Receiver sits at 24 and a half.',
  'EV with 270 miles of range, tow rating 3,500. What do I get with a small trailer behind it?',
  'Battery truck, rated range 320 miles, how much of it is left with the trailer on?',
  'Which hose do I need to run a small grill off the quick connect on the side?',
  'Does the outside kitchen grill hook up to the low pressure port?',
  'My patio grill has no spark, do you sell igniters for those?',
  'I misplaced the trailer handbook, could you mail me a new one?',
  'New shoes on the brakes. How many stops does it take to burnish them, and from what speed?',
  'Which things do I look over on the hitch: latch, pins, chains, that cable?',
  'Scraped the corner on a gatepost, no hole, dry inside. What might it come to?',
  'I would like to hang a TV on the bunk wall with a swing arm. Does the wall take it?',
  'Would a coupler lock stop them from stealing my trailer out of storage?',
  'Would it help to disconnect the battery for winter storage?',
  'Rounded nose, plug-in hybrid, 31 mpg without a trailer once the battery is down. What with one?',
  'Spare is dated 3115, the bottle jack stands 9.5 inches at its lowest. Which jack do I buy?',
  'Am I better off with tandem axles at 28 feet?',
  'Bumper rack of 48 lb and two bikes of 60 lb each. Does the hitch at the back take it?',
];

test.each(calm)('is not urgent: %s', (text) => {
  expect(urgentIn(text)).toBeNull();
});

/** The same things, and somebody is in it or goes on with it. */
const urgent: readonly string[] = [
  'The drop hitch is bent and the ball leans, we are towing home tonight, 24 inches receiver',
  'EV with 270 miles of range, and the trailer has been swaying all over since the bridge, keep going?',
  'The hose to the grill hisses and it smells of gas, kids are next to it right now',
  'gas smell by the stove is killing me, headache since this morning',
  'The cord of the air conditioner is too hot to hold and turning brown at the plug',
  'Awning arm fell off on the highway, it is dragging',
  'The jack sank and the trailer is leaning, my husband is under it',
  'one lug nut is gone and the wheel wobbles, 40 miles to go',
  'Husband got his hand between the tongue and the jack post, two fingers purple. Which jack is it?',
  'my brother is riding in the camper lying in the bunk cause the truck is full, 3 hr home',
];

test.each(urgent)('stays urgent: %s', (text) => {
  expect(urgentIn(text)).not.toBeNull();
});

test('now, going on and setting out are told in many words', () => {
  const told = [
    'leaving in ten',
    'tmrw at dawn',
    'they are living in it',
    'taking it home friday nite',
  ];
  for (const text of told) expect(isSoon(text)).toBe(true);
  const general = ['Which ball height is right?', 'Do you open on Sundays?', 'Open Friday?'];
  for (const text of general) expect(isSoon(text)).toBe(false);
});
