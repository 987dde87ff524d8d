import type { Riders } from './people-weights';

/** Somebody who rides along with a weight of his own, as a row of the list. */
export type OwnWeight = {
  readonly label: string;
  readonly weight: string;
  readonly words: string;
  readonly isDriver: boolean;
};

const unit = '(?: ?(?<unit>lbs?|pounds?|kgs?|kilos?))?';
const notOther =
  '(?![\\p{L}\\d.,]*\\d)(?! ?(?:years?|yrs?|months?|old|miles?|mi|mph|ft|feet|in\\b|psi|amps?|over|under|short|left)(?!\\p{L}))(?! ?%)';
const self = "i|i[’']?m|me|myself|driver";
const others =
  'wife|husband|hubby|partner|spouse|girlfriend|boyfriend|mom|mother|dad|father|mother in law|father in law|grandma|grandpa|son|daughter|passenger';
const own = new RegExp(
  `(?<![\\p{L}\\d])(?<who>${self}|${others})(?:,? (?:am|is|at|weighs?|about|around|roughly))*[ :=]{1,2}(?<weight>\\d{2,3})${unit}${notOther}(?!\\p{L})`,
  'giu',
);
/** “Me and the wife 390”: the weight is of both. */
const joined = new RegExp(
  `(?<!\\p{L})(?:${self}|${others}|us|we|kids?|children|boys?|girls?|dogs?)(?:,| and| n| plus| with| ?[&+/])+ (?:the |my |our |a )*$`,
  'iu',
);
/** Only beside what the label leaves is a bare figure behind a person a weight. */
const ofPayload =
  /(?<!\p{L})(?:payload|pyld|sticker|door (?:label|jamb|tag)|tongue|tounge)(?!\p{L})/iu;

const least = 80;
const most = 400;
const poundsOfKilogram = 2.2046;

/**
 * Everybody who is told with a weight of his own, “I am 210, wife 150”. Where whoever drives is neither
 * among them nor counted elsewhere, nobody is: a list without its driver is too light.
 */
export function ownWeights(text: string, riders: readonly Riders[]): readonly OwnWeight[] {
  if (!ofPayload.test(text)) return [];
  const told = [...text.matchAll(own)].flatMap((found): readonly OwnWeight[] => {
    const { who = '', weight = '', unit: said = 'lb' } = found.groups ?? {};
    const isKilograms = /^k/i.test(said);
    const pounds = Number(weight) * (isKilograms ? poundsOfKilogram : 1);
    if (pounds < least || pounds > most || joined.test(text.slice(0, found.index))) return [];
    const isDriver = new RegExp(`^(?:${self})$`, 'iu').test(who);
    const label = isDriver
      ? 'Driver'
      : `${who.charAt(0).toUpperCase()}${who.slice(1).toLowerCase()}`;
    return [{ label, weight: `${weight} ${isKilograms ? 'kg' : 'lb'}`, words: found[0], isDriver }];
  });
  const adults = riders.find(({ who }) => who === 'adult')?.count ?? 0;
  const isDriven = told.some(({ isDriver }) => isDriver) || adults > told.length;
  return isDriven ? told : [];
}

const group = new RegExp(
  `(?<![\\p{L}\\d])(?<!\\d ?)(?<who>kids|children|boys|girls|grandkids|dogs)(?:,? (?:are|weigh|about|around|roughly|together|total))*[ :=]{1,2}(?<weight>\\d{2,3})${unit}${notOther}(?!\\p{L})(?!,? (?:each|apiece|and \\d))`,
  'iu',
);
/** So much at the least weighs more than one child; less is an age or a count. */
const leastOfGroup = 30;

/** “Kids 120”: together, of however many, where nobody counts them. */
export function groupWeight(
  text: string,
  riders: readonly Riders[],
): Omit<OwnWeight, 'isDriver'> | undefined {
  if (!ofPayload.test(text)) return undefined;
  const found = group.exec(text);
  const { who = '', weight = '', unit: said = 'lb' } = found?.groups ?? {};
  const kind = /^dogs$/i.test(who) ? 'dog' : 'child';
  if (!found || Number(weight) < leastOfGroup || riders.some((each) => each.who === kind))
    return undefined;
  if (joined.test(text.slice(0, found.index))) return undefined;
  const label = `${who.charAt(0).toUpperCase()}${who.slice(1).toLowerCase()}`;
  return { label, weight: `${weight} ${/^k/i.test(said) ? 'kg' : 'lb'}`, words: found[0] };
}
