/**
 * Spellings that a customer in Marrow Vale would trip over, as beginnings of words or whole words
 * (`$` at the end), each with the one that stands instead. Lower case; endings may follow.
 * `catalogue`, `afterwards` and `axe` stand in American dictionaries too, and are left.
 */
export const british: Readonly<Record<string, string>> = {
  acknowledgement: 'acknowledgment',
  ageing: 'aging',
  aluminium: 'aluminum',
  analogue: 'analog',
  analyse: 'analyze',
  analysing: 'analyzing',
  apologis: 'apologiz',
  armour: 'armor',
  artefact: 'artifact',
  authoris: 'authoriz',
  behaviour: 'behavior',
  burnt: 'burned',
  calibre: 'caliber',
  cancelled: 'canceled',
  cancelling: 'canceling',
  capitalis: 'capitaliz',
  categoris: 'categoriz',
  centimetre: 'centimeter',
  centre: 'center',
  centring: 'centering',
  characteris: 'characteriz',
  cheque: 'check',
  colour: 'color',
  counsell: 'counsel',
  cosy: 'cozy',
  customis: 'customiz',
  defence: 'defense',
  dialogue$: 'dialog',
  draught: 'draft',
  dreamt: 'dreamed',
  economis: 'economiz',
  emphasis: 'emphasiz',
  endeavour: 'endeavor',
  energis: 'energiz',
  enrol$: 'enroll',
  equalis: 'equaliz',
  favour: 'favor',
  fibre: 'fiber',
  finalis: 'finaliz',
  flavour: 'flavor',
  fuell: 'fuel',
  fulfil$: 'fulfill',
  galvanis: 'galvaniz',
  generalis: 'generaliz',
  grey: 'gray',
  harbour: 'harbor',
  honour: 'honor',
  humour: 'humor',
  initialis: 'initializ',
  instal$: 'install',
  itemis: 'itemiz',
  jewell: 'jewel',
  judgement: 'judgment',
  kerb: 'curb',
  kilometre: 'kilometer',
  labelled: 'labeled',
  labelling: 'labeling',
  labour: 'labor',
  leant: 'leaned',
  learnt: 'learned',
  levell: 'level',
  licence: 'license',
  litre: 'liter',
  localis: 'localiz',
  manoeuv: 'maneuver',
  maximis: 'maximiz',
  meagre: 'meager',
  metre: 'meter',
  millimetre: 'millimeter',
  minimis: 'minimiz',
  misspelt: 'misspelled',
  mitre: 'miter',
  modelled: 'modeled',
  modelling: 'modeling',
  mould: 'mold',
  neighbour: 'neighbor',
  neutralis: 'neutraliz',
  normalis: 'normaliz',
  odour: 'odor',
  offence: 'offense',
  optimis: 'optimiz',
  organis: 'organiz',
  oxidis: 'oxidiz',
  plough: 'plow',
  practis: 'practic',
  pressuris: 'pressuriz',
  pretence: 'pretense',
  prioritis: 'prioritiz',
  programme$: 'program',
  realis: 'realiz',
  recognis: 'recogniz',
  rumour: 'rumor',
  sceptic: 'skeptic',
  signalled: 'signaled',
  signalling: 'signaling',
  skilful: 'skillful',
  spelt$: 'spelled',
  spoilt: 'spoiled',
  stabilis: 'stabiliz',
  standardis: 'standardiz',
  storey: 'story',
  sulph: 'sulf',
  summaris: 'summariz',
  theatre: 'theater',
  tonne$: 'metric ton',
  tonnes: 'metric tons',
  totalled: 'totaled',
  towards: 'toward',
  travelled: 'traveled',
  traveller: 'traveler',
  travelling: 'traveling',
  tyre: 'tire',
  utilis: 'utiliz',
  vapour: 'vapor',
  vaporis: 'vaporiz',
  vigour: 'vigor',
  whilst: 'while',
  winteris: 'winteriz',
};

/** American words that begin as one of those does. */
const otherwise: ReadonlySet<string> = new Set([
  'emphasis',
  'generalist',
  'generalists',
  'optimism',
  'optimist',
  'optimistic',
  'organism',
  'organisms',
  'realist',
  'realistic',
  'realistically',
]);

const [whole, beginnings] = [true, false].map((isWhole) =>
  Object.keys(british)
    .filter((each) => each.endsWith('$') === isWhole)
    .map((each) => each.replace('$', '')),
);

/** The words of a text; an id in camel case is several (`equaliseAllowed`, `greyTank`). */
const wordsOf = (line: string): readonly string[] =>
  (line.match(/[A-Z]?[a-z]+|[A-Z]+(?![a-z])/g) ?? []).map((each) => each.toLowerCase());

export type Spelled = { readonly line: number; readonly word: string };

/** Every British spelling in a text, with its line. */
export const britishIn = (text: string): readonly Spelled[] =>
  text.split('\n').flatMap((line, i) =>
    wordsOf(line)
      .filter(
        (word) =>
          !otherwise.has(word) &&
          (whole?.includes(word) || beginnings?.some((each) => word.startsWith(each))),
      )
      .map((word) => ({ line: i + 1, word })),
  );
