import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask of their tires and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  load: {
    rule: 'Divide the loaded axle by its tires; the heavier side carries more. Each must stay below the load on the sidewall. For a passenger tire on a trailer or truck divide that by {passenger.divisor}.',
    because: 'A tire that carries too much runs hot and comes apart at speed.',
    look: ['trailer.tireCapacity'],
    given: {
      'scale.onAxles': '= trailer.gvwr',
      'trailer.axles': '2',
      'tire.kind': 'special-trailer',
    },
    givenSays: 'for two axles loaded to the trailer’s own maximum, on special-trailer tires',
    clauses: { 'trailer.tireCapacity': 'the sidewall says {value}' },
    worked: {
      says: 'Say a scale shows {scale.onAxles} on {tire.count} tires: the fullest then carries {tire.load}.',
      given: {
        'tire.place': 'trailer',
        'trailer.axles': '2',
        'scale.onAxles': '6,200 lb',
        'tire.kind': 'special-trailer',
      },
    },
    otherwise: 'If you do not know, weigh the loaded trailer, side by side, before a long trip.',
  },
  pressure: {
    rule: 'A tire that ran at {pressure.lookShare} of its pressure or less comes off before anybody fills it. Fill any other cold to what the certification label says, never above the sidewall.',
    because:
      'The load on the sidewall holds only at the pressure beside it. A soft tire breaks inside where it does not show.',
    look: ['tire.labelPressure'],
    given: { 'tire.maxPressure': '= pressure.own' },
    otherwise:
      'If you find no label, fill a special-trailer tire cold to the pressure on its sidewall. The wheel must be made for as much.',
  },
  age: {
    rule: 'The last four digits after DOT are week and year. Watch a trailer’s tire from {age.trailerCare} on and replace it at {age.trailerReplace}. Watch a vehicle’s tire from {age.care}, and replace it at {age.replace}.',
    because: 'Rubber ages standing in the sun, whatever the tread looks like.',
    look: ['tire.codeYear'],
    given: { 'tire.codeWeek': '= tire.codeWeek' },
    otherwise: 'If you cannot find the code, also on the inner side, count the tires as old.',
  },
  speed: {
    rule: 'The slowest-rated tire of the rig sets the speed, the spare too. A special-trailer tire without a speed letter: {speed.unmarked}.',
    because: 'Faster than it is made for, a tire runs hot and loses its tread.',
    look: ['tire.speedSymbol'],
    given: { 'trip.speed': '= trip.speed' },
    otherwise: 'If you cannot find the letter, stay at {speed.unmarked} or below.',
  },
  upgrade: {
    rule: 'Check three things before you take a higher load range. The tire’s maker lists it for this rim. The wheel holds its pressure and load. There is room around the tire.',
    because:
      'A strong tire on a weak wheel is as weak as the wheel, and the axle’s rating stays what it is.',
    look: ['wheel.maxPressure'],
    given: { 'upgrade.maxPressure': '= upgrade.maxPressure', 'wheel.rating': '= wheel.rating' },
    otherwise: 'If you cannot read the wheel’s stamp, keep the load range on the label.',
  },
};
