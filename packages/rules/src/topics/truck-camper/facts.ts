import { part } from '../../engine/define/topic';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 20_000 } as const;
const place = { kind: 'quantity', unit: 'in', least: -200, most: 200 } as const;
const fromBoard = {
  kind: 'quantity',
  unit: 'in',
  least: 0,
  most: 160,
  exact: true,
} as const;
const sheet = 'the camper-loading sheet in the owner’s papers';
const tape = 'a tape measure along the bed';

/** What is asked about the truck as it carries a camper; the rest is asked as for towing. */
export const truckFacts = part({
  facts: {
    'vehicle.cargoRating': {
      ...weight,
      label: 'Cargo weight rating for a camper',
      noun: 'the cargo weight rating',
      exact: true,
      ask: 'What cargo weight rating do the truck’s camper papers state?',
      where: sheet,
      means:
        'What a camper and all cargo may weigh together. An allowance for each seat is already taken off; the door label’s payload has nothing taken off.',
    },
    'vehicle.seats': {
      kind: 'quantity',
      unit: '',
      least: 1,
      most: 9,
      exact: true,
      label: 'Seats with a belt',
      noun: 'the number of seats with a belt',
      counted: true,
      ask: 'How many seating positions does the door label count?',
      where: 'tire-and-loading label in the driver’s door',
    },
    'vehicle.zoneFore': {
      ...place,
      exact: true,
      label: 'Front end of the camper zone, ahead of the rear axle',
      noun: 'the front end of the zone',
      ask: 'How far ahead of the rear axle does the maker’s zone for the center of gravity begin?',
      where: `the drawing on ${sheet}`,
    },
    'vehicle.zoneAft': {
      ...place,
      exact: true,
      label: 'Rear end of the camper zone, ahead of the rear axle',
      noun: 'the rear end of the zone',
      ask: 'How far ahead of the rear axle does the maker’s zone end?',
      where: `the drawing on ${sheet}`,
      means: 'Below zero when the zone reaches behind the axle; few do.',
    },
    'vehicle.zoneForeBehindBoard': {
      ...fromBoard,
      label: 'Front end of the camper zone, behind the headboard',
      noun: 'the front end of the zone on the drawing',
      ask: 'How far behind the inside of the bed’s headboard does the drawing begin the zone?',
      where: `the drawing on ${sheet}`,
    },
    'vehicle.zoneAftBehindBoard': {
      ...fromBoard,
      label: 'Rear end of the camper zone, behind the headboard',
      noun: 'the rear end of the zone on the drawing',
      ask: 'How far behind the headboard does the maker’s zone end?',
      where: `the drawing on ${sheet}`,
    },
    'vehicle.bedLength': {
      kind: 'quantity',
      unit: 'in',
      least: 40,
      most: 120,
      label: 'Length of the bed, inside',
      noun: 'the bed',
      ask: 'How long is the bed inside, tailgate shut?',
      where: tape,
    },
  },
});
