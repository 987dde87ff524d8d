import type { Reader } from './plain-case';

/**
 * One way in which what nobody knows about choices may be settled. What hangs on an unknown choice
 * is reckoned in every one of them, and then put together.
 */
export type World = {
  /** A fifth-wheel's pin: it has no bars, no receiver and no ball. */
  pin: boolean;
  /** Weight distribution in use. */
  inUse: boolean;
  /** Nobody said that there are none, and nobody forbids them: bars may be put on. */
  barsMayBe: boolean;
  rearTires: number;
  /** By what the stamped capacity of a passenger tire is divided on this vehicle, this trailer. */
  vehicleTires: number;
  trailerTires: number;
};

const yesNo = ['yes', 'no'] as const;
const kinds = ['passenger', 'light-truck'] as const;
const types = ['passenger-car', 'multipurpose', 'truck'] as const;
const trailerKinds = ['special-trailer', 'light-truck', 'passenger'] as const;

export function worldsOf(f: Reader): World[] {
  const worlds: World[] = [];
  for (const coupling of f.options('trailer.coupling', ['ball', 'fifth-wheel'], 'ball')) {
    for (const used of f.options('hitch.distribution', yesNo, 'no')) {
      for (const allowed of f.options('vehicle.distributionAllowed', yesNo, 'yes')) {
        for (const dual of f.options('vehicle.dualRearWheels', yesNo, 'no')) {
          // Silent tires are taken as they are written.
          for (const kind of f.options('vehicle.tireKind', kinds, 'light-truck')) {
            for (const type of f.options('vehicle.type', types, 'passenger-car')) {
              for (const on of f.options('trailer.tireKind', trailerKinds, 'special-trailer')) {
                const pin = coupling === 'fifth-wheel';
                worlds.push({
                  pin,
                  inUse: !pin && used === 'yes' && allowed === 'yes',
                  barsMayBe:
                    !pin &&
                    !f.given('hitch.distribution') &&
                    f.word('vehicle.distributionAllowed') !== 'no',
                  rearTires: dual === 'yes' ? 4 : 2,
                  vehicleTires: kind === 'passenger' && type !== 'passenger-car' ? 1.1 : 1,
                  trailerTires: on === 'passenger' ? 1.1 : 1,
                });
              }
            }
          }
        }
      }
    }
  }
  const different = new Map(worlds.map((each) => [JSON.stringify(each), each]));
  return [...different.values()];
}
