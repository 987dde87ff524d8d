import { part } from '../../engine/define/topic';

/** What is asked about how the rig rides and how it is driven, beside what the family of rigs asks. */
export const swayFacts = part({
  facts: {
    'sway.felt': {
      kind: 'choice',
      options: ['never', 'with-trucks', 'by-itself', 'mended', 'now'],
      label: 'Sway felt',
      noun: 'whether it has swayed',
      ask: 'Loaded as now, has the trailer ever swayed: when trucks passed, or by itself, and was that mended?',
      where: 'the person who towed the trailer last',
      means: 'A nudge that is gone at once is no sway; one that comes again by itself is.',
    },
    'trailer.length': {
      kind: 'quantity',
      unit: 'ft',
      least: 6,
      most: 60,
      label: 'Length of the trailer',
      noun: 'the trailer’s length',
      exact: true,
      ask: 'How long is the trailer, coupler to rear bumper?',
      where: 'brochure, or a tape; the number in a model’s name is often the box alone',
    },
    'trailer.rides': {
      kind: 'choice',
      options: ['level', 'nose-low', 'nose-high'],
      label: 'How the trailer stands, hitched',
      noun: 'how the trailer stands',
      ask: 'Hitched and loaded on level ground, does the trailer stand level, nose low or nose high?',
      where: 'a tape from the ground to the frame, in front and behind',
    },
    'hitch.frontFender': {
      kind: 'choice',
      options: ['as-alone', 'half-back', 'hardly-back', 'lower'],
      label: 'Front fender, against the vehicle alone',
      noun: 'how high the front fender stands',
      ask: 'With the trailer on, is the vehicle’s front fender as high as without it; higher, with at least half of its rise taken back by the bars; higher, with less or none taken back; or lower?',
      where:
        'a tape from the ground over the wheel: without the trailer, on the ball without bars, and with the bars; the same people and things aboard each time',
    },
    'hitch.swayControl': {
      kind: 'choice',
      options: ['set', 'slack', 'none'],
      label: 'Sway control',
      noun: 'whether there is sway control',
      ask: 'Is there sway control on the hitch, set as its maker says, or is it slack, or is there none?',
      where: 'a look at the hitch: a bar from the ball to the tongue, or brackets that rub',
    },
    'tires.pressures': {
      kind: 'choice',
      options: ['as-labeled', 'below'],
      label: 'Tire pressures, cold, of trailer and vehicle',
      noun: 'the tire pressures',
      ask: 'Are the tires of trailer and vehicle, cold, at the pressures their labels state?',
      where:
        'a gauge, before the day’s drive; the label of the trailer and the one in the door, or the towing pressure in the manual',
    },
    'trip.gusts': {
      kind: 'quantity',
      unit: 'mph',
      least: 0,
      most: 150,
      label: 'Strongest gusts on the way',
      noun: 'the strongest gusts',
      instead: 'Look the gusts up for the hours and the road',
      ask: 'How strong do gusts get on the way?',
      where: 'the forecast for the route, gusts and not the mean wind',
    },
  },
});
