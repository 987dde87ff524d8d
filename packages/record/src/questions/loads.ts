import type { Topic } from '@tarebook/rules/engine';
import { type Amount, amountsIn } from './amounts';
import { isAskedAbout } from './asked-about';
import { asTheyHold } from './corrections';
import { isForEach } from './not-meant';
import { ridersIn } from './people';
import { groupWeight, ownWeights } from './people-rows';
import { togetherIn, weightOf } from './people-weights';
import type { QuestionPart } from './shapes';

/** Something packed, as a text says it: in which list it stands, what it is, and what it weighs. */
type Load = {
  readonly list: 'load.cargo' | 'trailer.cargo';
  readonly label: string;
  readonly weight: string;
  readonly from: number;
  readonly to: number;
};

/** What people pack and weigh. What is bolted on is an option, and what is towed or lifts is no cargo. */
const packed =
  'gear|stuff|luggage|baggage|bags|suitcases|groceries|food|clothes|clothing|supplies|tools?|tool ?box(?:es)?|firewood|wood|lumber|e-?bikes?|bikes?|bicycles?|kayaks?|canoes?|generators?|genny|coolers?|ice chests?|motorcycles?|dirt ?bikes?|atvs?|quads?|golf carts?|scooters?|wheelchairs?|mowers?|grills?|smokers?|chairs|tents?|camping gear|fishing gear|hunting gear|dog food|books|dishes|pots and pans|canned goods|water jugs|jugs of water|crates?|cargo|junk|toys|equipment|parts|tables?|batteries|ramps?';
const words = `(?:(?:camping|fishing|hunting|other|our|my|his|the|and|&|heavy|electric|of|assorted|kids|kid’s|kids’) ){0,4}(?:${packed})(?:(?: and|,| &|,? plus) (?:the |our |my )?(?:${packed})){0,3}`;
const of = '(?: (?:worth )?of| in| for)?';

/** Where it rides; what nobody says is not guessed. */
const places: readonly { readonly list: Load['list']; readonly at: string }[] = [
  {
    list: 'load.cargo',
    at: '(?:back of (?:the|my|our) )?(?:truck ?bed|pickup bed|bed|truck|pickup|car|suv|van|wagon|crossover|trunk|cab|back ?seats?|roof|roof rack|roof box|tow vehicle|vehicle|rig’s bed)(?: of (?:the|my|our) (?:truck|pickup|car|suv|van|wagon))?',
  },
  {
    list: 'trailer.cargo',
    at: '(?:front|back|rear|pass-?through|storage|closets?|garage|cabinets|belly) ?(?:storage |compartment |rack |bumper )?(?:of|in|on) (?:the|my|our) (?:trailer|camper|travel trailer|rv|toy hauler)|trailer|travel trailer|camper|rv|toy hauler',
  },
];
const inPlace = (at: string): string =>
  `(?:packed |loaded |riding |going |goes |rides? |sitting |stored |up |strapped )?(?:in|on|inside|into|aboard) (?:the |my |our |a )?(?:${at})(?!\\p{L}| (?:rating|payload|label|door|manual|shop|lot|capacity|scale|tires?|axles?|hitch))`;

/** What somebody only thinks of is not packed. */
const thought =
  /(?<!\p{L})(?:if|would|could|can|may|should|whether|how much|used to|instead of)(?!\p{L})/iu;
/** What a thing may carry, or weighs by itself, is no load. */
const rated =
  /(?<!\p{L})(?:max|maximum|up to|limit|rated|allowed|holds?|capacity|payload|gvwr|dry|tongue)(?!\p{L})/iu;

/** From the last of these signs ahead of a place in the text. */
const since = (signs: RegExp, text: string, from: number, to: number): string =>
  text.slice(
    Math.max(0, ...[...text.slice(0, from).matchAll(signs)].map(({ index }) => index + 1)),
    to,
  );

const patterns = places.flatMap(({ list, at }) => {
  const place = inPlace(at);
  return [
    // “300 lb of firewood in the bed”
    { list, ahead: '', after: `^${of} (?<label>${words}),? (?:${place})` },
    // “tools in the truck, about 200 lb”, “a generator in the trailer, 95 lb”
    {
      list,
      ahead: `(?<label>${words}) ${place}(?:,| is| are| at| weighs?| weighing| comes to|:| \\()? ?(?:about |around |roughly |approx |maybe |some |another )?$`,
      after: '',
    },
    // “a generator, 95 lb, in the trailer”
    {
      list,
      ahead: `(?<label>${words})(?:,| is| at| weighs?| weighing|:| \\()? ?(?:about |around |roughly |approx |maybe )?$`,
      after: `^[,)]? ${place}`,
    },
    // “in the bed 300 lb of firewood”, “the truck carries 200 lb of tools”
    {
      list,
      ahead: `(?:${place}|(?:the|my|our) (?:${at}) (?:has|carries|is carrying|will have|will carry|gets))(?:,| is| are| there is| there’s| goes| we have| we carry| i have| i carry|:)? ?(?:about |around |roughly |approx |maybe |some |another )?$`,
      after: `^${of} (?<label>${words})(?! (?:rack|tray|mount|trailer))`,
    },
  ].map((each) => ({
    list: each.list,
    ahead: each.ahead === '' ? undefined : new RegExp(each.ahead, 'iu'),
    after: each.after === '' ? undefined : new RegExp(each.after, 'iu'),
  }));
});

const ofPacked = new RegExp(`^ of ${words}`, 'iu');
const packedAhead = new RegExp(
  `(?<!\\p{L})${words} ${inPlace(places[0]?.at ?? '')},?(?: (?:is|are|about|around|roughly))* $`,
  'iu',
);
/** “About 150 of stuff in the bed”, “stuff in the bed 150”: what is said so is a weight, and nothing that is counted. */
const isOfPacked = ({ unit, value, from, to }: Amount, text: string): boolean =>
  unit === undefined &&
  value >= 20 &&
  (ofPacked.test(text.slice(to, to + 60)) ||
    (packedAhead.test(text.slice(Math.max(0, from - 110), from)) &&
      /^ ?(?:[,.;]|$)/.test(text.slice(to))));

function loadAt(told: Amount, text: string): Load | undefined {
  const amount = isOfPacked(told, text) ? { ...told, unit: 'lb' } : told;
  if (amount.unit !== 'lb' && amount.unit !== 'kg') return undefined;
  if (amount.value <= 0 || amount.value > 4_000 || isForEach(text, amount)) return undefined;
  const ahead = text.slice(Math.max(0, amount.from - 110), amount.from);
  const after = text.slice(amount.to, amount.to + 120);
  const fits = patterns.flatMap((pattern) => {
    const [before, behind] = [pattern.ahead?.exec(ahead), pattern.after?.exec(after)];
    if ((pattern.ahead && !before) || (pattern.after && !behind)) return [];
    const from = amount.from - (before ? before[0].length : 0);
    const to = amount.to + (behind ? behind[0].length : 0);
    const label = before?.groups?.label ?? behind?.groups?.label ?? '';
    // A range or a count before it is not one weight.
    if (/[.!?;\n]/.test(text.slice(from, to))) return [];
    return [{ list: pattern.list, label, from, to }];
  });
  const lists = new Set(fits.map(({ list }) => list));
  const [first] = fits;
  if (!first || lists.size > 1) return undefined;
  const isThought = thought.test(since(/[.!?;\n]/g, text, first.from, first.to));
  const isRated = rated.test(since(/[.!?;,\n]/g, text, first.from, first.to));
  if (isThought || isRated || isAskedAbout(text, first.from, first.to)) return undefined;
  const label = first.label.replace(/^(?:(?:our|my|his|the|and|&|of) )+/i, '').trim();
  return {
    ...{ list: first.list, from: first.from, to: first.to },
    label: `${label.charAt(0).toUpperCase()}${label.slice(1)}`,
    weight: `${amount.value} ${amount.unit}`,
  };
}

/**
 * What is packed, with its weight and where it rides. Only what is told with all three in one sentence
 * is a row: a weight put to the wrong list is worse than none.
 */
export function loadsIn(text: string): readonly Load[] {
  const found: Load[] = [];
  for (const amount of asTheyHold(text, amountsIn(text))) {
    const load = loadAt(amount, text);
    if (load && !found.some(({ from, to }) => from < load.to && load.from < to)) found.push(load);
  }
  return found;
}

type Row = NonNullable<QuestionPart['loads']>[number];

const inTrailer = new RegExp(`(?<!\\p{L})${inPlace(places[1]?.at ?? '')}`, 'iu');
const whole = `(?:${words}|cargo)(?! ?(?:capacity|rating|limit|max|trailer|rack))(?!\\p{L})`;
const ofSum = [
  // “stuff 150”, “cargo is about 150 lb”
  `(?<!\\p{L})(?<label>${whole}),?(?: (?:is|are|of|about|around|roughly|maybe|weighs?|at))*[ :=]{1,2}(?<weight>\\d{2,4})(?<unit> ?(?:lbs?|pounds?|kgs?|kilos?))?(?![\\p{L}\\d.,]*\\d)(?! ?(?:ah|amps?|w|watts?|v|volts?|gal|gallons?|in|inch|ft|feet|psi|%)(?!\\p{L}))(?!,? (?:each|apiece))(?!\\p{L})`,
  // “150 of cargo”, “150 lb of gear”
  `(?<![\\p{L}\\d.,$])(?<weight>\\d{2,4})(?:(?<unit> ?(?:lbs?|pounds?|kgs?|kilos?))(?: of| in)?| of| in) (?<label>${whole})`,
  '(?<![\\p{L}\\d.,$])(?<weight>\\d{2,4})(?<unit>(?!))? (?<label>cargo)(?! ?(?:capacity|rating|limit|max|trailer))(?!\\p{L})(?! \\d)',
].map((form) => new RegExp(form, 'giu'));

/** “Stuff 150” beside people who are weighed: whoever sums up a label’s payload tells what rides in the vehicle. */
function cargoOfSum(text: string): readonly Row[] {
  if (inTrailer.test(text)) return [];
  const rows: (Row & { readonly from: number; readonly to: number })[] = [];
  for (const found of ofSum.flatMap((form) => [...text.matchAll(form)])) {
    const { label = '', weight = '', unit = 'lb' } = found.groups ?? {};
    const [from, to] = [found.index, found.index + found[0].length];
    const clause = since(/[.!?;,\n]/g, text, from, to);
    if (Number(weight) <= 0 || rated.test(clause) || thought.test(clause)) continue;
    if (rows.some((each) => each.from < to && from < each.to)) continue;
    const name = label.replace(/^(?:(?:our|my|his|the|and|&|of) )+/i, '').trim();
    rows.push({
      ...{ list: 'load.cargo', label: `${name.charAt(0).toUpperCase()}${name.slice(1)}` },
      weight: `${Number(weight)} ${/k/i.test(unit) ? 'kg' : 'lb'}`,
      ...{ words: found[0], from, to },
    });
  }
  return rows.map(({ from: _, to: __, ...row }) => row);
}

/** Everybody who rides along and has a weight told, as rows: all together, or who has one of his own. */
function riding(text: string): { readonly rows: readonly Row[]; readonly isWeighed: boolean } {
  const list = 'load.occupants';
  const together = togetherIn(text);
  if (together)
    return { rows: [{ list, label: 'Everybody together', ...together }], isWeighed: true };
  const riders = ridersIn(text);
  const group = groupWeight(text, riders);
  const rows = [
    ...ownWeights(text, riders).map(({ isDriver: _, ...row }) => ({ list, ...row })),
    ...(group ? [{ list, ...group }] : []),
  ];
  const isWeighed = rows.length > 0 || riders.some((each) => weightOf(each, riders, text));
  return { rows, isWeighed };
}

/** The loads of a text that have a list in a topic, as a question keeps them; what people weigh together is one. */
export function loadsOf(topic: Topic, text: string): NonNullable<QuestionPart['loads']> {
  const packedIn = loadsIn(text).map(({ list, label, weight, from, to }) => ({
    ...{ list, label, weight },
    words: text.slice(from, to),
  }));
  const { rows, isWeighed } = riding(text);
  const isSum = isWeighed && packedIn.length === 0;
  return [...rows, ...packedIn, ...(isSum ? cargoOfSum(text) : [])].filter(
    ({ list }) => topic.facts[list]?.kind === 'rows',
  );
}
