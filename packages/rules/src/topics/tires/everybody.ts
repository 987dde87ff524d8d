import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask of their tires and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  load: {
    rule: 'A tire carries its share of the loaded axle, and on the heavier side more; that must stay below the load on its sidewall, divided by {passenger.divisor} for a passenger tire on a trailer or a truck.',
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
      says: 'On a scale {scale.onAxles} on {tire.count} tires come to {tire.load} on the fullest.',
      given: {
        'tire.place': 'trailer',
        'trailer.axles': '2',
        'scale.onAxles': '6,200 lb',
        'tire.kind': 'special-trailer',
      },
    },
    otherwise: 'Whoever does not know weighs the loaded trailer, side by side, before a long trip.',
  },
  pressure: {
    rule: 'One that ran at {pressure.lookShare} of its pressure or less comes off and is looked into before anybody fills it; any other is filled cold to what the certification label says, never above the sidewall.',
    because:
      'The load on the sidewall holds only at the pressure beside it, and a soft tire breaks inside where nobody sees it.',
    look: ['tire.labelPressure'],
    given: { 'tire.maxPressure': '= pressure.own' },
    otherwise:
      'Whoever finds no label fills a special-trailer tire cold to the pressure on its sidewall, if the wheel is made for as much.',
  },
  age: {
    rule: 'The last four digits after DOT are week and year. A trailer’s tire is watched from {age.trailerCare} on and replaced at {age.trailerReplace}; a vehicle’s from {age.care}, and replaced at {age.replace}.',
    because: 'Rubber ages standing in the sun, whatever the tread looks like.',
    look: ['tire.codeYear'],
    given: { 'tire.codeWeek': '= tire.codeWeek' },
    otherwise: 'Whoever cannot find the code, also on the inner side, counts them as old.',
  },
  speed: {
    rule: 'The slowest-rated tire of the rig sets the speed, the spare too. A special-trailer tire without a speed letter: {speed.unmarked}.',
    because: 'Faster than it is made for, a tire runs hot and loses its tread.',
    look: ['tire.speedSymbol'],
    given: { 'trip.speed': '= trip.speed' },
    otherwise: 'Whoever cannot find the letter stays at {speed.unmarked} or below.',
  },
  upgrade: {
    rule: 'A load range more asks three things first: that its maker lists it for this rim, that the wheel holds its pressure and its load, and that there is room around it.',
    because:
      'A strong tire on a weak wheel is as weak as the wheel, and the axle’s rating stays what it is.',
    look: ['wheel.maxPressure'],
    given: { 'upgrade.maxPressure': '= upgrade.maxPressure', 'wheel.rating': '= wheel.rating' },
    otherwise: 'Whoever cannot read the wheel’s stamp keeps the load range on the label.',
  },
};
