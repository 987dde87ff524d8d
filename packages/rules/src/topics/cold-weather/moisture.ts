import { part } from '../../engine/define/topic';
import {
  celsius,
  conduction,
  dewFormula,
  glassValues,
} from '../../trade/bibliography/cold-weather';
import { house } from '../../trade/bibliography/common';

/**
 * Condensation: the inner pane is colder than the room, by the pane's share of the whole resistance;
 * below the dew point it runs with water.
 */
export const moisture = part({
  facts: {
    'inside.humidity': {
      kind: 'quantity',
      label: 'Relative humidity inside',
      unit: '%',
      least: 5,
      most: 100,
      ask: 'What does the hygrometer show inside?',
      where: 'a cheap hygrometer, away from door and stove',
    },
  },
  parameters: {
    'celsius.degree': {
      label: 'One degree Celsius',
      unit: 'C°',
      values: [{ from: '2020-01-01', value: 1 }],
      source: celsius,
    },
    'dew.root': {
      label: 'Power of the humidity',
      unit: '',
      values: [{ from: '2020-01-01', value: 0.125 }],
      source: dewFormula,
    },
    'dew.base': {
      label: 'Constant of the dew point, °C',
      unit: '',
      values: [{ from: '2020-01-01', value: 112 }],
      source: dewFormula,
    },
    'dew.slope': {
      label: 'Slope of the dew point inside the root',
      unit: '',
      values: [{ from: '2020-01-01', value: 0.9 }],
      source: dewFormula,
    },
    'dew.rise': {
      label: 'Slope of the dew point outside the root',
      unit: '',
      values: [{ from: '2020-01-01', value: 0.1 }],
      source: dewFormula,
    },
    'dew.slack': {
      label: 'Degrees the pane must stay above the dew point',
      unit: 'F°',
      values: [{ from: '2020-01-01', value: 0 }],
      range: [0, 5],
      source: house,
    },
    'film.inside': {
      label: 'Still air at a wall',
      unit: 'Btu/h/ft²/°F',
      values: [{ from: '2020-01-01', value: 1.46 }],
      source: glassValues,
    },
  },
  formulas: {
    'inside.celsius': {
      label: 'Inside, in degrees Celsius',
      unit: '',
      is: '(inside.temperature - frost.point) / celsius.degree',
      source: celsius,
    },
    'dew.point': {
      label: 'Dew point inside',
      unit: '°F',
      is: 'needs((power(inside.humidity, dew.root) * (dew.base + dew.slope * inside.celsius) + dew.rise * inside.celsius - dew.base) * celsius.degree + frost.point, inside.humidity)',
      source: dewFormula,
    },
    'window.surface': {
      label: 'Inner face of the panes',
      unit: '°F',
      is: 'needs(inside.temperature - heat.degrees * pick(glass, windows.glazing) / film.inside, inside.humidity)',
      source: conduction,
    },
    'dew.room': {
      label: 'Panes above the dew point',
      unit: 'F°',
      is: 'window.surface - dew.point',
      source: conduction,
    },
  },
  findings: {
    condensation: {
      settles: true,
      label: 'Condensation',
      askedBy: ['inside.humidity'],
      care: {
        when: 'dew.room < dew.slack',
        wrong: 'The panes run with water.',
        because:
          'They are at {window.surface}, and the air inside gives off its water at {dew.point}; so will cold corners and bedding.',
        do: 'That is no leak. A roof vent a hand open even in the cold, lids on pots, wet clothes out, a dehumidifier on shore power. Keep it warm: a colder room runs more.',
      },
      otherwise: 'The panes stay dry at that humidity.',
      open: {
        wrong: 'The panes may run with water.',
        do: 'A roof vent a little open, even in the cold.',
      },
      source: conduction,
    },
  },
});
