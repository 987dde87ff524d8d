import type { Change } from '../../engine/define/changes';
import { barParts, carBrake, carsManual } from '../../trade/bibliography/towed-car';

const set = (
  fact: string,
  option: string,
  says: string,
  asks: number,
  source: Change['source'],
): Change => ({ kind: 'set', fact, to: { option }, says, asks, source });

/** What a person can do; never a rating, and never the manual’s word. */
export const changes: readonly Change[] = [
  set('towed.cables', 'yes', 'Hook safety cables rated for the car, crossed.', 1, barParts),
  set('towed.lights', 'yes', 'Have the rear lights wired to the motorhome.', 2, barParts),
  set('towed.steeringFree', 'yes', 'Unlock the steering as the manual says.', 1, carsManual),
  set('towed.brake', 'yes', 'Have an auxiliary brake fitted in the car.', 3, carBrake),
  set('towed.breakaway', 'yes', 'Have a breakaway switch fitted and try it.', 2, barParts),
  set('towed.batteryKept', 'yes', 'Have a charge line run to the car.', 2, barParts),
];
