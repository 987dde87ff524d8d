import { ruleSet } from '../../engine/define/looked-at';
import { gather } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { display, makersManual } from '../../trade/bibliography/electric-tow-range';
import { askings } from './askings';
import { assumed, assumptions } from './assumed';
import { called } from './called';
import { changes } from './changes';
import { drag } from './drag';
import { everybody } from './everybody';
import { routeFacts } from './facts-route';
import { vehicleFacts } from './facts-vehicle';
import { fuel } from './fuel';
import { how } from './how';
import { known } from './known';
import { legs } from './legs';
import { level } from './level';
import { power } from './power';
import { atmosphere } from './resistance';
import { route } from './route';
import { routeNumbers } from './route-numbers';
import { stops } from './stops';
import { rig, towRatings } from './tow';

/** In the order in which limits are listed, and in which the first of two equals binds. */
const parts = [
  rig,
  vehicleFacts,
  routeFacts,
  drag,
  known,
  atmosphere,
  legs,
  level,
  routeNumbers,
  route,
  fuel,
  stops,
  power,
  towRatings,
  assumed,
] as const;

/** Does this rig get there on its battery, or battery and fuel, and where must it charge? */
export const electricTowRange = ruleSet({
  id: 'electric-tow-range',
  version: '5.0.3',
  title: 'Towing on battery or hybrid',
  question:
    'Does this rig get there on its battery, or its battery and fuel, and where must it charge on the way?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: gather('tables', parts),
  wordTables: gather('wordTables', parts),
  formulas: gather('formulas', parts),
  simulations: gather('simulations', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'gets-there', words: 'gets there', sentence: 'The rig gets there.' },
    if: { id: 'gets-there-if', words: 'gets there if', sentence: 'The rig gets there' },
    care: {
      id: 'gets-there-with-care',
      words: 'gets there with care',
      sentence: 'The rig gets there, with care.',
      plain: 'The rig gets there',
    },
    stop: {
      id: 'does-not-go-like-this',
      words: 'does not go like this',
      sentence: 'The trip does not work like this.',
    },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: {},
  tells: [
    {
      of: 'range.towing',
      says: 'A full battery tows {of} on such roads with the reserve kept, {range.toEmpty} to empty.',
      when: 'tells.battery',
    },
    {
      of: 'tank.toReserve',
      says: 'A tank tows {of} on such roads with the reserve kept, {tank.toEmpty} to empty.',
      when: 'drive.hasEngine',
    },
  ],
  headline: [
    'route.distance',
    'route.energy',
    'route.consumption',
    'route.perGallon',
    'range.towing',
    'range.toEmpty',
    'range.solo',
    'tank.toReserve',
    'tank.toEmpty',
    'fuel.economy',
    'fuel.stops',
    'reach.distance',
    'route.lowest',
    'stops.needed',
    'stops.planned',
    'charge.energy',
    'charge.time',
    'route.time',
    'fuel.used',
    'drive.efficiency',
    'rig.drag',
    'combined.gross',
    'power.most',
    'brakes.power',
    'brakes.heaters',
  ],
  assumptions,
  changes,
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'The tow ratings come first, whatever the battery says. Check the rig against that very vehicle’s labels and manual too.',
      source: makersManual,
      fits: ['finding.right-by-tow-fit', 'limit.tongue', 'limit.payload', 'limit.trailer-weight'],
    },
    {
      says: 'This is an estimate. Watch the display over the first miles; where it falls faster than the plan, slow down and charge earlier.',
      source: display,
      fits: ['finding.estimate', 'limit.energy', 'finding.calibration', 'finding.cold'],
    },
    {
      says: 'Unhitch only on level ground: chock both sides before the ball is free, and never leave the trailer in a lane.',
      source: custom,
      fits: ['finding.unhitch'],
    },
    {
      says: 'Before a long descent slow down and leave room in the battery. Set the trailer’s brakes, and let hot brakes cool before you go on.',
      source: makersManual,
      fits: ['finding.brake-heat', 'finding.full-battery', 'limit.power'],
    },
    {
      says: 'Charge only with sound cables and adapters that the maker allows; anything hot, smelling or smoking: leave it, get away and call for help.',
      source: makersManual,
      fits: ['finding.window', 'finding.plug'],
    },
    {
      says: 'This is advice, not approval; the makers’ instructions and local rules decide.',
      source: custom,
    },
  ],
});
