import { wordsOf } from '../terms';
import { type Urgency, urgencies } from './shapes';

/** Words of which one from each row stands within so many words: that is urgent, or seems so. */
type Sign = {
  readonly kind: Urgency;
  readonly rows: readonly (readonly string[])[];
  readonly within: number;
};

const smells = [
  'hiss',
  'hisses',
  'hissing',
  'smell',
  'smells',
  'smelled',
  'smelling',
  'odor',
  'stink',
  'stinks',
  'reeks',
  'whiff',
];
const gases = ['gas', 'propane', 'lp', 'egg', 'eggs', 'ammonia', 'sulfur'];
const alarms = ['alarm', 'alarms', 'detector', 'detectors'];
const wheels = ['wheel', 'wheels', 'lug', 'lugs', 'stud', 'studs'];
const hotThings = [
  'hub',
  'hubs',
  'wheel',
  'wheels',
  'tire',
  'plug',
  'cord',
  'adapter',
  'outlet',
  'bearing',
  'bearings',
  'battery',
  'breaker',
  'wire',
  'pedestal',
];

/** Degrees Fahrenheit at which water freezes, as they are written without their unit. */
const frosty = Array.from({ length: 33 }, (_, degrees) => `${degrees}`);

/** What people write when something can hurt somebody today. A false alarm costs a look, a miss more. */
const signs: readonly Sign[] = [
  { kind: 'gas', rows: [smells, gases], within: 8 },
  { kind: 'gas', rows: [['rotten'], ['egg', 'eggs']], within: 3 },
  {
    kind: 'gas',
    rows: [
      ['leak', 'leaking', 'leaks', 'hiss', 'hissing'],
      ['gas', 'propane', 'lp'],
    ],
    within: 6,
  },
  {
    kind: 'gas',
    rows: [
      ['stove', 'burner', 'burners', 'oven', 'grill', 'griddle'],
      ['heat', 'warm', 'overnight', 'sleep'],
    ],
    within: 10,
  },
  // Soot and a yellow flame: it burns badly, and carbon monoxide comes of it.
  {
    kind: 'gas',
    rows: [
      ['yellow', 'orange', 'sooty', 'soot'],
      ['flame', 'flames', 'furnace'],
    ],
    within: 8,
  },
  { kind: 'alarm', rows: [alarms], within: 1 },
  { kind: 'alarm', rows: [['headache', 'dizzy', 'nausea', 'nauseous', 'monoxide']], within: 1 },
  {
    kind: 'smoke',
    rows: [['smoke', 'smoking', 'fire', 'flames', 'burning', 'sparks', 'sparking']],
    within: 1,
  },
  {
    kind: 'heat',
    rows: [['melted', 'melting', 'scorched', 'burnt', 'burned', 'overheating']],
    within: 1,
  },
  { kind: 'heat', rows: [['hot', 'warm', 'hotter', 'heats'], hotThings], within: 8 },
  { kind: 'heat', rows: [hotThings, ['touch'], ['hot']], within: 12 },
  {
    kind: 'shock',
    rows: [
      [
        'shock',
        'shocked',
        'shocks',
        'tingle',
        'tingles',
        'tingling',
        'zap',
        'zapped',
        'zaps',
        'electrocuted',
        'buzz',
        'buzzes',
        'buzzing',
        'bite',
        'bites',
      ],
    ],
    within: 1,
  },
  {
    kind: 'frost',
    rows: [
      [
        'freeze',
        'freezes',
        'freezing',
        'frozen',
        'frost',
        'degrees',
        'teens',
        'minus',
        'below',
        'f',
      ],
      ['tonight', 'tonite', 'night', 'overnight', 'tomorrow', 'tmrw', 'forecast'],
    ],
    within: 16,
  },
  // “It got to 24 last night”
  { kind: 'frost', rows: [frosty, ['night', 'tonight', 'tonite', 'overnight']], within: 3 },
  {
    kind: 'wheel',
    rows: [
      wheels,
      [
        'loose',
        'wobble',
        'wobbles',
        'wobbling',
        'lost',
        'off',
        'gone',
        'missing',
        'broke',
        'broken',
        'came',
      ],
    ],
    within: 6,
  },
  {
    kind: 'wheel',
    rows: [
      ['blowout', 'blew', 'bulge'],
      ['tire', 'tires', 'blowout', 'bulge'],
    ],
    within: 4,
  },
  {
    kind: 'brakes',
    rows: [
      ['brake', 'brakes', 'braking', 'breakaway'],
      [
        'no',
        'not',
        'dont',
        'wont',
        'anything',
        'nothing',
        'failed',
        'fail',
        'gone',
        'grabbing',
        'grab',
        'lock',
        'locked',
        'drag',
        'dragging',
        'stop',
        'work',
        'weak',
        'out',
      ],
    ],
    within: 10,
  },
  { kind: 'brakes', rows: [['wont', 'cant', 'hard'], ['stop'], ['trailer', 'rig']], within: 8 },
  {
    kind: 'coupling',
    rows: [
      ['coupler', 'coupling', 'hitch', 'ball', 'tongue', 'kingpin'],
      ['bent', 'cracked', 'broke', 'broken', 'snapped', 'popped', 'tore', 'torn', 'jumped'],
    ],
    within: 6,
  },
  {
    kind: 'sway',
    rows: [
      ['swaying', 'fishtailing', 'whipping', 'wagging'],
      ['now', 'moment', 'currently'],
    ],
    within: 8,
  },
  {
    kind: 'sway',
    rows: [['sway', 'sways', 'fishtails', 'wags'], ['right'], ['now']],
    within: 8,
  },
];

/** Whether one word of each row stands within a stretch of the text. */
function stands({ rows, within }: Sign, words: readonly string[]): boolean {
  return words.some((_, from) => {
    const stretch = words.slice(from, from + within);
    return rows.every((row) => row.some((word) => stretch.includes(word)));
  });
}

/** Things that have fire in their name: who asks of one of them has none. */
const named = ['table', 'tables', 'pit', 'pits', 'ring', 'bowl', 'place', 'extinguisher', 'wood'];

const isNameOnly = (word: string, next: string | undefined): boolean =>
  word === 'fire' && next !== undefined && named.includes(next);

/** What is urgent about a message, the gravest first; null where nothing seems to be. */
export function urgentIn(text: string): Urgency | null {
  // “15f tonite”: a number and its letter are two words.
  const apart = text.toLowerCase().replace(/(\d)(?=[a-z])/g, '$1 ');
  const words = wordsOf(apart).filter((word, i, all) => !isNameOnly(word, all[i + 1]));
  return (
    urgencies.find((kind) => signs.some((sign) => sign.kind === kind && stands(sign, words))) ??
    null
  );
}
