import { part } from '../../engine/define/topic';
import { custom, house } from '../bibliography/common';

const side = (label: string, ask: string, least: number, most: number) =>
  ({ kind: 'quantity', label, unit: 'ft', least, most, ask, where: 'brochure or tape' }) as const;

/** What is told of the trailer's shell and furnace, or of a night of one's own. */
export const shell = part({
  facts: {
    'body.length': side('Length of the body, inside', 'How long is the living space?', 6, 50),
    'body.width': {
      ...side('Width of the body', 'How wide is it?', 4, 16),
      silent: { value: 8, says: 'It is 8 ft wide.', source: house, quiet: true },
    },
    'body.height': {
      ...side('Height inside', 'How high is it inside?', 4, 12),
      silent: { value: 7, says: 'It is 7 ft high inside.', source: house, quiet: true },
    },
    'body.insulation': {
      kind: 'choice',
      label: 'Make of walls, floor and roof',
      options: ['thin', 'usual', 'four-season'],
      ask: 'Is the trailer thin-walled, a usual one, or one built for four seasons?',
      where: 'brochure; for a slide-out or pop-up take thin',
    },
    'windows.area': {
      kind: 'quantity',
      label: 'Windows and vents, all together',
      unit: 'ft²',
      least: 0,
      most: 300,
      ask: 'How many square feet of windows has the trailer?',
      where: 'a tape; width times height of each',
    },
    'windows.glazing': {
      kind: 'choice',
      label: 'Panes',
      options: ['single-pane', 'double-pane'],
      ask: 'Have the windows one pane or two?',
      where: 'look at the edge of the glass',
    },
    'inside.temperature': {
      kind: 'quantity',
      label: 'Temperature wanted inside',
      noun: 'the temperature inside',
      unit: '°F',
      least: 32,
      most: 85,
      ask: 'How warm is the inside to be at night?',
      where: 'thermostat',
      silent: { value: 65, says: 'It is kept at 65 °F inside.', source: custom, quiet: true },
    },
    'furnace.ratedOutput': {
      kind: 'quantity',
      label: 'Furnace output',
      unit: 'Btu/h',
      least: 1000,
      most: 120_000,
      exact: true,
      ask: 'What output does the furnace’s plate state?',
      where: 'data plate of the furnace, beside the input',
    },
    'night.gas': {
      kind: 'quantity',
      label: 'Gas burned in a night of your own',
      unit: 'lb',
      least: 0.2,
      most: 100,
      ask: 'What did the cylinder weigh before such a night, and what after?',
      where: 'a scale, evening and morning, nothing else burning',
    },
    'night.hours': {
      kind: 'quantity',
      label: 'Hours of that night',
      unit: 'h',
      least: 2,
      most: 24,
      ask: 'How many hours lay between the two weighings?',
      where: 'told by the owner',
    },
    'night.inside': {
      kind: 'quantity',
      label: 'Inside, that night',
      unit: '°F',
      least: 32,
      most: 85,
      ask: 'How warm was the inside that night?',
      where: 'thermostat',
    },
    'night.outside': {
      kind: 'quantity',
      label: 'Outside, that night, on average',
      unit: '°F',
      least: -60,
      most: 70,
      ask: 'How cold was it outside that night, on average?',
      where: 'a thermometer, or the weather record of the place',
    },
  },
});
