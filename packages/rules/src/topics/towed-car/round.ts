import { part } from '../../engine/define/topic';
import { barParts, carsManual } from '../../trade/bibliography/towed-car';

const look = (label: string, because: string, source: typeof barParts | typeof carsManual) => ({
  label,
  amounts: {},
  because,
  source,
});

/** What is looked at before it moves, in order of walking round. */
export const round = part({
  selections: {
    round: {
      label: 'Before it moves, walking round',
      amounts: {},
      items: {
        pins: look('Pins and latches of the bar', 'What is not latched comes out.', barParts),
        cables: look('Cables crossed and hooked', 'They hold it if the bar lets go.', barParts),
        breakaway: look(
          'Breakaway cable on the motorhome',
          'It brakes what comes loose.',
          barParts,
        ),
        gear: look('Gearbox and key as the manual says', 'Each car has its own steps.', carsManual),
        steering: look('Steering free, parking brake off', 'Locked wheels slide.', carsManual),
        brake: look('Car brake set and tried', 'It is felt at walking pace.', barParts),
        lights: look('Lights at the very rear', 'One at the pedal, one behind.', barParts),
        tires: look('Tires of the car', 'The driver does not feel them from the front.', barParts),
      },
      source: barParts,
    },
  },
});
