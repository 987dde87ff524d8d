/**
 * What people say of a weight without saying which of several it is. “Trailer, thirty-nine hundred” may
 * be the empty trailer or the most it may weigh, and taking the one for the other is the trade’s
 * commonest mistake: unless a word beside the number says which, it is asked.
 */
export type Unsaid = {
  readonly words: readonly string[];
  /** The facts it may be, each with the words that say so. */
  readonly kinds: Readonly<Record<string, readonly string[]>>;
  /** Words anywhere in the text that say which, where none beside the number does. */
  readonly around?: Readonly<Record<string, readonly string[]>>;
  /** What it is where nothing says which: only where its rules then say what is still to be measured. */
  readonly otherwise?: string;
};

const empty = ['dry', 'empty', 'unloaded', 'uvw', 'by the brochure', 'brochure'];
const most = ['gvwr', 'max', 'maximum', 'gross', 'loaded max', 'at most', 'on the plate'];
const weighed = ['loaded', 'weighed', 'measured', 'on the scale', 'scale', 'actual'];
const scaled = ['weighed', 'on the scale', 'at the scale', 'by the scale'];

export const unsaidKinds: readonly Unsaid[] = [
  {
    words: [
      ...['trailer', 'trlr', 'camper', 'travel trailer', 'TT', 'rig', 'fifth wheel', '5th wheel'],
      ...['trailer weight', 'camper weight', 'trailer weighs', 'trailer that weighs'],
    ],
    // What was weighed is neither, and no topic is told it by this name.
    kinds: { 'trailer.dryWeight': empty, 'trailer.gvwr': most, 'trailer.weighed': scaled },
  },
  {
    words: [
      'tongue weight',
      'tongue wt',
      'tongue',
      'TW',
      'on the tongue',
      ...['pin', 'pin weight', 'pin wt', 'pin is', 'pin weighs'],
    ],
    kinds: { 'trailer.dryTongueWeight': empty, 'trailer.measuredTongueWeight': weighed },
    // A tongue weight that stands beside those of the brochure is the brochure's.
    around: {
      'trailer.dryTongueWeight': ['dry', 'brochure', 'unloaded', 'uvw', 'spec sheet'],
      'trailer.measuredTongueWeight': ['scale', 'gauge', 'weighed', 'measured'],
    },
  },
  {
    words: [
      ...['receiver', 'receiver height', 'receiver is', 'receiver at', 'receiver sits'],
      ...['receiver measures', 'receiver on my truck', 'receiver on the truck'],
    ],
    // By the empty height the rules tell the drop at the most, and to measure it loaded.
    otherwise: 'hitch.receiverHeightEmpty',
    kinds: {
      'hitch.receiverHeightEmpty': ['empty', 'unloaded'],
      'hitch.receiverHeightLoaded': ['loaded', 'packed', 'loaded up'],
    },
    around: {
      'hitch.receiverHeightEmpty': ['empty', 'nobody in', 'nobody is in', 'unloaded'],
      'hitch.receiverHeightLoaded': ['loaded', 'everything loaded', 'packed for the trip'],
    },
  },
  {
    words: ['gvwr', 'GVWR is', 'gross'],
    kinds: {
      'trailer.gvwr': ['trailer', 'trlr', 'camper'],
      'vehicle.gvwr': ['truck', 'motorhome', 'coach', 'van', 'suv'],
    },
    around: {
      'vehicle.gvwr': [
        'truck has gvwr',
        'truck gvwr',
        "truck's gvwr",
        'motorhome gvwr',
        'my truck has',
      ],
      'trailer.gvwr': [
        'trailer',
        'trlr',
        'TT',
        'camper',
        'dry',
        'uvw',
        'rig',
        'tongue',
        'payload',
        'hitch',
      ],
    },
  },
  {
    words: ['sticker', 'sticker says', 'label', 'label says'],
    kinds: {
      'vehicle.placardPayload': ['on the door', 'door', 'yellow', 'payload', 'truck'],
      'trailer.cargoCapacity': ['trailer', 'camper', 'cargo'],
    },
    // Beside who rides along it is the vehicle's, unless the trailer's is named.
    around: {
      'vehicle.placardPayload': [
        ...['wife', 'husband', 'kids', 'dog', 'us two', 'two of us', 'people', 'passengers'],
        ...['am i over', 'are we over', 'payload', 'in the bed'],
      ],
      'trailer.cargoCapacity': [
        ...['trailer sticker', 'trailer label', 'camper sticker', 'camper label', 'cargo capacity'],
        ...['sticker on the trailer', 'label on the trailer', 'sticker in the trailer'],
        ...['sticker on the camper', 'label on the camper'],
      ],
    },
  },
  {
    words: ['on the hitch', 'at the hitch'],
    kinds: {
      'vehicle.maxTongueCarried': ['rated', 'rating', 'limit', ...most],
      'trailer.dryTongueWeight': empty,
      'trailer.measuredTongueWeight': weighed,
    },
    around: {
      'vehicle.maxTongueCarried': ['manual says', 'book says', "owner's manual", 'hitch is rated'],
      'trailer.dryTongueWeight': ['dry', 'brochure', 'unloaded', 'uvw'],
      'trailer.measuredTongueWeight': ['scale', 'gauge', 'weighed', 'measured'],
    },
  },
];

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
const anyOf = (words: readonly string[]): string => words.map(escaped).join('|');

/** Which of the kinds a word directly behind the number, or directly before its noun, says. */
export function kindBeside(
  { kinds }: Unsaid,
  text: string,
  from: number,
  to: number,
): string | undefined {
  const [ahead, after] = [text.slice(Math.max(0, from - 24), from), text.slice(to, to + 24)];
  const said = Object.entries(kinds).filter(
    ([, words]) =>
      new RegExp(
        `(?<![\\p{L}\\d])(?:${anyOf(words)})(?: (?:on|of|for) (?:the|my|our|that))?[ -]$`,
        'iu',
      ).test(ahead) ||
      new RegExp(`^(?: ?lbs?| ?pounds?| ?#)? ?[(]?(?:${anyOf(words)})(?![\\p{L}\\d])`, 'iu').test(
        after,
      ),
  );
  return said.length === 1 ? said[0]?.[0] : undefined;
}

/** Which of the kinds the whole text says; undefined where it says none, or more than one. */
export function kindAround({ around = {} }: Unsaid, text: string): string | undefined {
  const said = Object.entries(around).filter(([, words]) =>
    new RegExp(`(?<![\\p{L}\\d])(?:${anyOf(words)})(?![\\p{L}\\d])`, 'iu').test(text),
  );
  return said.length === 1 ? said[0]?.[0] : undefined;
}

/** Which of those that are possible it is: what was said, the only one, or what it is otherwise. */
export function kindOf(
  { otherwise }: Unsaid,
  possible: readonly string[],
  said: string | undefined,
): string | undefined {
  const [first, another] = possible;
  if (said !== undefined || another === undefined) return said ?? first;
  return otherwise !== undefined && possible.includes(otherwise) ? otherwise : undefined;
}
