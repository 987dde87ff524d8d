import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { factsIn } from './facts';

function told(id: string, text: string) {
  const topic = topics[id];
  if (!topic) throw new Error(id);
  return factsIn(topic, text);
}

/** A topic, what somebody writes in whichever order, and what is told by it. */
const said: readonly (readonly [string, string, Readonly<Record<string, string>>])[] = [
  // Papers that allow something, in an order of the writer’s own.
  [
    'tow-fit',
    'Our car may, by its handbook, have 3,200 pounds behind it, and 320 at most on the ball. Its papers forbid spring bars: they are not to be used.',
    {
      'vehicle.maxTrailerWeight': '3200 lb',
      'vehicle.maxTongueCarried': '320 lb',
      'vehicle.distributionAllowed': 'no',
    },
  ],
  [
    'tow-fit',
    'Book: 8800 with WD, 4500 w/o; trailer plate 7100',
    {
      'vehicle.maxTrailerWeight': '8800 lb',
      'vehicle.maxTrailerCarried': '4500 lb',
      'trailer.gvwr': '7100 lb',
    },
  ],
  // Both ends of what was read twice.
  [
    'tow-fit',
    'the tongue scale reads somewhere between 610 and 650, gvwr on the trailer 5900',
    { 'trailer.measuredTongueWeight': '610 to 650 lb', 'trailer.gvwr': '5900 lb' },
  ],
  [
    'used-trailer',
    'similar dry ones go for 9 to 11 thousand',
    { 'price.dry': '9000 to 11000 USD' },
  ],
  [
    'towed-car',
    'dolly weighs 600 empty, and it may carry 4,100. It has its own brakes. The hatchback is about 2950 with everything',
    {
      'carrier.weight': '600 lb',
      'carrier.rating': '4100 lb',
      'carrier.brakes': 'yes',
      'towed.weight': '2950 lb',
    },
  ],
  [
    'hitch-setup',
    'fender lip 35 1/2 unhitched, 37 with the bars hanging, 36 1/4 with them set. Bars are stamped 800',
    {
      'vehicle.fenderUnhitched': '35.5 in',
      'vehicle.fenderSlack': '37 in',
      'vehicle.fenderTight': '36.25 in',
      'hitch.barsMost': '800 lb',
    },
  ],
  [
    'hitch-setup',
    'inside of the receiver is 22 1/2 up empty, 20 3/4 with the trailer on. coupler wants to be at 19',
    {
      'hitch.receiverHeightEmpty': '22.5 in',
      'hitch.receiverHeightLoaded': '20.75 in',
      'trailer.couplerHeight': '19 in',
    },
  ],
  [
    'weigh-in',
    'Hooked up, bars tight, it prints 3140 for the front axle, 3290 for the rear, 5210 for the trailer. Unhooked, same people and fuel: 3210 front and 2580 rear.',
    {
      'tight.front': '3140 lb',
      'tight.rear': '3290 lb',
      'tight.trailer': '5210 lb',
      'alone.front': '3210 lb',
      'alone.rear': '2580 lb',
      'alone.sameLoad': 'yes',
    },
  ],
  [
    'truck-camper',
    'the arrow on its side lands 5 inches ahead of the rear axle, camper tag 2,310, the loading sheet gives 2,700 cargo',
    { 'camper.center': '5 in', 'camper.weight': '2310 lb', 'vehicle.cargoRating': '2700 lb' },
  ],
  [
    'spares-kit',
    'bottle jack stands 9 at its lowest, with a flat only 7 in are left under the axle. The spare is dated 2218',
    {
      'lift.kind': 'bottle-jack',
      'lift.lowest': '9 in',
      'lift.gapFlat': '7 in',
      'spare.codeWeek': '22',
      'spare.codeYear': '18',
      'spare.present': 'yes',
    },
  ],
  [
    'tires',
    'rear tires of his truck are LTs, 121/118 on the sidewall, single wheels',
    {
      'tire.kind': 'light-truck',
      'tire.loadIndex': '121',
      'tire.loadIndexDual': '118',
      'vehicle.dualRearWheels': 'no',
    },
  ],
  // What was looked at, in whichever words.
  [
    'used-trailer',
    'The frame has rust but only skin deep. Somebody painted right over the weight label. Two magnets of the brakes are dead. Bottles are past their date. Gas nobody has tested.',
    {
      'frame.state': 'surface-rust',
      'label.state': 'painted-over',
      'brakes.tested': 'faults',
      'cylinders.dates': 'past',
      'gas.tested': 'untested',
    },
  ],
  [
    'sway',
    'The friction bar was slack. It has not come back since, no more sway.',
    { 'hitch.swayControl': 'slack', 'sway.felt': 'mended' },
  ],
];

test.each(said)('%s: %s', (id, text, facts) => {
  expect(told(id, text).facts).toMatchObject(facts);
});

/** What stands as figures of a fact do, and is none. */
const unsaid: readonly (readonly [string, string, string])[] = [
  // What somebody asks, allows or wishes for is not so.
  ['towed-car', 'Would four-down save us anything if the manual permits it?', 'towed.fourDown'],
  ['truck-camper', 'And should I go to dual wheels?', 'vehicle.dualRearWheels'],
  ['tow-fit', 'the book says 5,000 without bars and 8,000 with', 'hitch.distribution'],
  ['tires', 'the label says 50 psi cold', 'tire.readCold'],
  // What is counted beside it.
  ['gas-supply', 'I leave all 3 burners on over night', 'trip.nights'],
  ['shore-power', 'AC of 13500 btu, can the generator start it', 'generator.starting'],
  ['tires', 'one of those 15 inch load range E tires', 'tire.pressure'],
  ['truck-camper', 'the zone starts 31 in behind the headboard', 'vehicle.headboardAhead'],
  ['spares-kit', 'we wish to carry the right spares', 'spare.present'],
  // One figure is wanted, and two are told.
  ['tow-fit', 'payload on the door is 1200 to 1400', 'vehicle.placardPayload'],
];

test.each(unsaid)('%s: “%s” tells no %s', (id, text, fact) => {
  expect(told(id, text).facts).not.toHaveProperty([fact]);
});

test('two facts that a clause says alike are asked, and neither is taken', () => {
  const { facts, open } = told('tow-fit', 'receiver and mount are both stamped 5,000');
  expect(facts).not.toHaveProperty(['hitch.receiverRating']);
  expect(facts).not.toHaveProperty(['hitch.mountRating']);
  expect(open.map(({ amount }) => amount.value)).toContain(5000);
});
