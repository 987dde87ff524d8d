import { part } from '../../engine/define/topic';
import { looked } from '../../trade/bibliography/used-trailer';

const look = (label: string, because: string) => ({
  label,
  amounts: {},
  because,
  source: looked,
});

/** What is looked at, in order of walking round: what may end it first stands first. */
export const round = part({
  selections: {
    round: {
      label: 'In order of walking round',
      amounts: {},
      items: {
        papers: look('Title and number', 'Without them the rest is wasted.'),
        gasOff: look('Cylinders shut', 'Do not look into cupboards with gas on.'),
        label: look('Weight label, left front', 'It decides in weigh-in and tow fit.'),
        frame: look(
          'Frame from the coupler to the bumper, spring hangers',
          'A crack in a rail ends it; one in a hanger is a frame shop’s to look at.',
        ),
        tires: look('Tires: edges, dates, spare', 'One edge worn tells of an axle.'),
        corners: look('Outside corners, pushed', 'What moves has rotted.'),
        roof: look('Roof and seals, ladder held', 'Most water comes in there.'),
        floor: look('Floor, corners, below windows, with foot and meter', 'Soft is wet.'),
        gas: look('Gas tested by a shop', 'Smell clears nothing.'),
        electrics: look('Electrics: battery, then cord', 'First the small current.'),
        brakes: look('Brakes and breakaway', 'It has to roll home.'),
        dates: look('Cylinders’ and alarms’ dates', 'They are sold with it and done.'),
        scale: look('Then the scale', 'A label tells what it may weigh, a scale what it does.'),
      },
      source: looked,
    },
  },
});
