import { expect, test } from 'vitest';
import { urgentIn, whyUrgent } from '../questions/urgent';
import { meantOf } from './meant';

/** Words of danger in another sense. */
test.each([
  // Praise.
  'that brake video was fire, keep it up',
  'Your tip on checking the hitch pin saved us, thanks! what size pin for a 2 inch receiver',
  // Told as absent.
  'Caller says no gas smell, no alarm, just wants the yearly propane check booked for April.',
  // Asked as knowledge.
  'What does a gas leak smell like, so I can teach my kids what to watch for before the trip?',
  'How does an absorption fridge make cold out of a flame?',
  'do truck tires wear faster when you tow heavy',
  'Is it normal for a new furnace to smell a bit the first time it runs? Reading the manual before we pick ours up.',
  // Supposed.
  'Asks if the furnace exhaust gets hot enough to burn a child’s hand, they camp with a toddler.',
  // Seen in passing on somebody else's.
  'What happens if a safety chain drags on the road? saw sparks behind a guy on 95',
  // The pan.
  'the smoke alarm goes off whenever we cook bacon. is there a better place to put it?',
  // Lines blown out for winter.
  'Do I need to blow out and use antifreeze both, or will one do it? Bypass on the water heater is already closed.',
  'For winterizing we blow the lines out with a compressor, is 40 psi right?',
  // A tool, and long past.
  'what tire gauge do you guys like? my old one burst its hose',
  'Last winter it froze and a fitting cracked, we replaced it in spring. How do I drain it right this time?',
  // A figure of something else beside a night.
  'Will one 100ah lithium last one night? Furnace draws 8 amps.',
  // A mail whose subject names the hose.
  'Subject: grill hose\nHi, our trailer has the low pressure quick connect on the side and we bought a little grill that has its own regulator for the 1 lb bottles. Can I just get a hose and plug it in to the side port?',
  'grill hose Hi, our trailer has the low pressure quick connect on the side and we bought a little grill that has its own regulator for the 1 lb bottles. Can I just get a hose and plug it in to the side port?',
])('is not urgent: %s', (text) => {
  expect(urgentIn(text)).toBeNull();
  expect(whyUrgent(text)).toEqual([]);
});

/** The same words, and something is there. */
test.each([
  'the brake video was fire, but our trailer brake is on fire',
  'your tip on the chains saved us today, the coupler popped off on the highway',
  'keep it up, thanks! by the way one hub is smoking',
  'there is a jack under the axle and two boards keep it up',
  'no gas smell, but there is a hiss at the regulator',
  'no alarm, no smoke, but my wife and I both have a headache since the furnace came on',
  'no gas smell now after we aired it out, the stove knob was on all night',
  'What does a gas leak smell like? It stinks of onions under our sink.',
  'What does propane smell like, we just came home and it reeks in there',
  'what does a bad bearing sound like? ours growls and the hub is too hot to touch',
  'How does the furnace work with a yellow flame and soot on the vent?',
  'do trailer tires wear faster on the inside? one has cords showing, we leave tomorrow',
  'Is it normal for a new furnace to smell like gas when it starts? we are in it now',
  'asks if the plug gets hot enough to melt, it is brown already',
  'does the exhaust get hot enough to burn? my son burned his hand on it',
  'what happens if a tire has a bulge and I drive on it tomorrow',
  'saw smoke from a trailer next site, what do we do',
  'saw sparks behind our trailer from the chain',
  'the smoke alarm goes off when we cook, and the CO alarm too. we all have headaches',
  'the smoke alarm goes off in the night for no reason, four beeps',
  'gas alarm goes off when we cook bacon',
  'blow out on the trailer on I-70, one tire is gone and the other is hot',
  'a tire blew out, and I still have antifreeze in the lines',
  'the stove goes whoosh and the pilot blows out, we have antifreeze in the lines',
  'the gas hose on the grill burst its fitting and it hisses',
  'Last winter it froze and a fitting cracked, we replaced it, and tonight it will be 12 and the tanks are full',
  'Subject: grill hose\nThe hose on our grill is cracked and it hisses at the quick connect',
  'it will be 12 tonight, furnace draws 8 amps and the tanks are full of water',
])('stays urgent: %s', (text) => {
  expect(urgentIn(text)).not.toBeNull();
});

test('all other words of a text are left as they are', () => {
  const text = 'Hub is hot. No brakes! What do we do?\nWe are on the shoulder.';
  expect(meantOf(text)).toBe(text);
});
