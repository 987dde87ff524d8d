import type { Asking } from '../../engine/define/shapes';

/** What people ask of a drive with a trailer; what they told says which of it is answered first. */
export const askings = {
  descent: {
    label: 'How do I get down the grade?',
    results: ['brakes.power', 'brakes.heaters', 'grade.held', 'finding.brake-heat'],
    impliedBy: ['trip.descentSpeed'],
    says: [
      {
        when: 'brakes.areSpared',
        says: 'On the way down the drive holds it, and the brakes have next to nothing to do.',
      },
      {
        says: 'Do not ride the brakes: on the way down they take up {brakes.power}, the heat of {brakes.heaters} room heaters.',
      },
    ],
  },
  climb: {
    label: 'Does it hold the grade?',
    yesOrNo: true,
    results: ['power.most', 'grade.power', 'limit.power'],
    impliedBy: ['vehicle.sustainedPower', 'trip.climbSpeed'],
    says: 'The hardest climb takes {power.most} at the wheels.',
  },
  there: {
    label: 'Does it get there?',
    yesOrNo: true,
    results: ['route.energy', 'limit.energy', 'stops.needed'],
    impliedBy: ['route.legs', 'trip.distance'],
    says: [
      {
        when: 'stops.areNone',
        says: 'The way takes {route.energy}, without a stop to charge.',
      },
      {
        when: 'stops.mayBe',
        says: 'Plan a stop to charge: the way takes {route.energy}, and the first charge may or may not be enough.',
      },
      { says: 'The way takes {route.energy}; stops to charge: {stops.needed}.' },
    ],
  },
  tank: {
    label: 'How far does a tank go with the trailer?',
    results: ['tank.toReserve', 'tank.toEmpty', 'fuel.economy', 'fuel.stops'],
    impliedBy: ['vehicle.fuelTank', 'trip.fuel', 'solo.fuelEconomy'],
    says: [
      { says: 'A tank tows {tank.toReserve} with the reserve kept, {tank.toEmpty} to empty.' },
      { says: 'With the trailer reckon with {fuel.economy}, times the gallons in the tank.' },
    ],
  },
  range: {
    label: 'How far does it go with a trailer?',
    usual: true,
    results: ['range.towing', 'range.toEmpty', 'range.solo', 'route.consumption'],
    impliedBy: ['vehicle.usableBattery', 'solo.consumption', 'trial.consumption'],
    says: [
      {
        says: 'A full battery tows {range.towing} with the reserve kept, {range.toEmpty} to empty.',
      },
      {
        when: 'drive.hasEngine',
        says: 'The vehicle needs no charger on the way: its engine refuels, and the tank decides how far you get.',
      },
    ],
  },
  charging: {
    label: 'How long do the stops take?',
    results: ['charge.time', 'charge.energy', 'stops.planned'],
    impliedBy: ['charge.power', 'charge.access'],
    says: 'Plan {charge.time} for charging on the way, with the time to unhitch where a stall asks for it.',
  },
} satisfies Record<string, Asking>;
