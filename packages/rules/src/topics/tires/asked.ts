import type { Asking } from '../../engine/define/shapes';

/** What people ask of tires; the first that is told of is answered first. */
export const askings: Readonly<Record<string, Asking>> = {
  upgrade: {
    label: 'Will a load range more fit?',
    results: ['upgrade.result', 'upgrade.reserve', 'upgrade.room'],
    impliedBy: ['upgrade.capacity', 'upgrade.maxPressure', 'upgrade.rimListed', 'upgrade.diameter'],
  },
  speed: {
    label: 'How fast may they run?',
    results: ['speed.allowed', 'limit.speed'],
    impliedBy: ['trip.speed', 'tire.speedSymbol', 'tire.slowestOther'],
    says: 'These tires allow {speed.allowed}.',
  },
  load: {
    label: 'Do the tires carry it?',
    yesOrNo: true,
    usual: true,
    results: ['tire.load', 'tire.capacity', 'limit.tire-load', 'tire.reserve'],
    impliedBy: [
      'tire.loadIndex',
      'tire.loadIndexDual',
      'trailer.tireCapacity',
      'vehicle.tireCapacityFront',
      'vehicle.tireCapacityRear',
      'scale.onAxles',
      'scale.wheels',
      'tire.kind',
    ],
    says: [
      {
        when: 'wheel.isLimit',
        says: 'The wheel is the limit: {wheel.rating}, whatever more its tire may carry.',
      },
      {
        when: 'tire.countsForLess',
        says: 'The fullest tire carries {tire.load}, and it may carry {tire.capacity}: a passenger tire’s own figure, divided by {passenger.divisor}.',
      },
      { says: 'The fullest tire carries {tire.load}, and it may carry {tire.capacity}.' },
      { says: 'One tire may carry {tire.capacity}.' },
    ],
  },
  pressure: {
    label: 'What pressure?',
    results: ['finding.under-inflated', 'pressure.own', 'limit.pressure-load'],
    impliedBy: ['tire.pressure', 'tire.labelPressure', 'tire.maxPressure', 'tire.table'],
    says: [
      {
        when: 'pressure.wheelIsBelow',
        says: 'The label asks for {tire.labelPressure}, and this wheel allows {wheel.maxPressure}. Never fill beyond the wheel: these are not the wheels that the label means, so do not load them.',
      },
      {
        when: 'pressure.labelIsOver',
        says: 'The label asks for {tire.labelPressure}, and this sidewall allows {tire.maxPressure}. Never fill beyond the sidewall: these are not the tires that the label means.',
      },
      {
        when: 'pressure.labelMayBeOver',
        says: 'The label may ask for more than this sidewall allows: {tire.labelPressure} against {tire.maxPressure}. Read both again, and never fill beyond the sidewall.',
      },
      {
        when: 'pressure.isOnlySidewall',
        says: 'The sidewall’s {tire.maxPressure} are the most, read cold. What belongs in the tire stands on the label of the vehicle or trailer.',
      },
      {
        when: 'pressure.isAsLabeled',
        says: 'Leave it so: the label asks for {tire.labelPressure}, and {tire.pressure} are in it. The sidewall’s figure is only the most.',
      },
      {
        when: 'pressure.meetsLabel',
        says: 'The label asks for {tire.labelPressure}, and {tire.pressure} are in it. More than sidewall or wheel allow never belongs in it.',
      },
    ],
  },
  age: {
    label: 'How old are they, and how old may they be?',
    results: ['tire.age', 'finding.age'],
    impliedBy: ['tire.codeYear', 'tire.codeWeek', 'tire.codeDigits'],
    says: 'The tire is {tire.age} old.',
  },
};
