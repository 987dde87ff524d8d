import { drawByDraw } from '../../value/lanes';
import { asNumber } from '../../value/truth';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike, plainNumber } from '../grammar/sorts';

/** sunHeight(latitude, day of the year, hour of sun time): sine of the sun's height, at least 0. */
export const sunHeight: Kind<'sunHeight'> = {
  form: {
    by: 'call',
    names: ['sunHeight'],
    read: (call) => {
      call.wants(call.count === 3, 'sunHeight(latitude, day, hour)');
      const [latitude, day, hour] = [call.node(0), call.node(1), call.node(2)];
      return { kind: 'sunHeight', latitude, day, hour };
    },
  },
  reckon: ({ latitude, day, hour }, scope, reckon) =>
    scope.sunHeight(
      asNumber(reckon(latitude, scope)),
      asNumber(reckon(day, scope)),
      asNumber(reckon(hour, scope)),
    ),
  parts: ({ latitude, day, hour }) => [latitude, day, hour],
  mentions: none,
  asks: none,
  uses: ({ latitude, day, hour }, at) => {
    for (const part of [latitude, day, hour]) at.part(part);
  },
};

/** The rule of its units. */
export const sortSunHeight: SortOf<'sunHeight'> = ({ latitude, day, hour }, at) => {
  for (const part of [latitude, day, hour]) alike(at.of(part), plainNumber, 'sunHeight');
  return plainNumber;
};

export const drawSunHeight: Draw<'sunHeight'> = drawByDraw;
