import { dangersIn } from './find';

/** What goes wrong or is asked every day, and hurts nobody by itself. */
type Matter = {
  /** How it is told. */
  readonly told: RegExp;
  /** The words of it that signs of danger take up. */
  readonly words: RegExp;
};

const empty =
  "flat|dead|empty|drained|run down|ran down|runs down|low|drains?|dies|died|won[’']?t (?:hold|take) a charge";
const battery = '(?:batter(?:y|ies)|house bank)';

const grill = '(?:grills?|griddles?|barbecues?|bbq)';
const hookup =
  '(?:hook(?:s|ed)? up|hook|connect\\p{L}*|quick|port|adapter|regulator|convert\\p{L}*|(?:run|runs|use|works?) \\p{L}*(?: \\p{L}+){0,3} (?:off|from)|btu|low pressure|high pressure)';

const matters: readonly Matter[] = [
  // A battery that is empty; one that is hot, swollen, or smells is another matter.
  {
    told: new RegExp(
      `(?<!\\p{L})${battery}[^.?!\\n]{0,60}(?<!\\p{L})(?:${empty})(?!\\p{L})|(?<!\\p{L})(?:${empty})(?: \\p{L}+){0,2} ${battery}`,
      'iu',
    ),
    words: /batter|^(?:flat|dead|low|furnace|overnight)$/iu,
  },
  // A grill of one's own, and how it is hooked up; where one is lit is another matter.
  {
    told: new RegExp(
      `(?<!\\p{L})${grill}(?!\\p{L}).*(?<!\\p{L})${hookup}|(?<!\\p{L})${hookup}.*(?<!\\p{L})${grill}(?!\\p{L})`,
      'isu',
    ),
    words: /grill|griddle|barbecue|bbq/iu,
  },
  // A dent in the skin; one in a rim, a frame or a cylinder is another matter.
  {
    told: /(?<!\p{L})(?:dent(?:s|ed)?|dings?|dinged|scratch(?:es|ed)?)(?!\p{L})/iu,
    words: /dent|ding|scratch|^(?:bumper|side|corner|back|rear|door)$/iu,
  },
];

/** Beside one of these nothing is an everyday matter. */
const graver =
  /(?<!\p{L})(?:smell\p{L}*|smelt|stink\p{L}*|stank|reek\p{L}*|odou?rs?|whiff|fumes?|eggs?|sulfur|rotten|hiss\p{L}*|leak(?!proof)\p{L}*|bubbl\p{L}*|smok\p{L}*|fires?|flam\p{L}*|spark\p{L}*|burn(?!er)\p{L}*|singe\p{L}*|scorch\p{L}*|soot\p{L}*|melt\p{L}*|hot|warm|heat\p{L}*|glow\p{L}*|explo\p{L}*|blew|blow\p{L}*|bang|pop(?:s|ped|ping)?|poof|whoosh|swell\p{L}*|swollen|bulg\p{L}*|puff\p{L}*|boil\p{L}*|acid|vent(?:s|ed|ing)?|shock\p{L}*|zap\p{L}*|tingl\p{L}*|buzz\p{L}*|alarms?|detectors?|beep\p{L}*|chirp\p{L}*|monoxide|co2?|sick|dizzy|headache\p{L}*|throw up|vomit\p{L}*|hurt|injur\p{L}*|bleed\p{L}*|unconscious|inside|indoors|tents?|sleep\p{L}*|asleep|kids?|bab(?:y|ies)|oxygen|cpap|medical|cold|froze\p{L}*|freez\p{L}*|frost\p{L}*|degrees|below zero|snow\p{L}*|wheels?|tires?|rims?|hubs?|axles?|lugs?|bearings?|springs?|brak(?:es?|ing)|breakaway|sway\p{L}*|wander\p{L}*|wobbl\p{L}*|couplers?|hitch\p{L}*|tongue|a-?frames?|frames?|chains?|ball|receiver|drawbar|jacks?|cylinders?|bottles?|propane tanks?|valves?|hoses?|regulator (?:is|was|has)|roll(?:ed|ing) (?:away|off|back)|fell|crawl\p{L}*|under(?:neath)? (?:it|the (?:trailer|camper|rig|awning))|shoulder|highway|interstate|mph|towing|driving|emergency|urgent|help|asap|911|stranded|danger\p{L}*|bypass\p{L}*|wired|wires?|fuses?|jump(?:ed|er|ers|ing)?|lit|rooms?|garage|porch|charcoal|reversed|backwards)(?!\p{L})/iu;

/** “The little green bottles”: what a grill of one's own is run on elsewhere. */
const smallBottles =
  /(?<!\p{L})(?:instead of |rather than |off |from |than )?(?:the |those |these |my |our |a )?(?:(?:little|small|tiny|green|disposable|throwaway|one[ -]pound|1[ -]?lb|1[ -]pound|camping)[ -]?){1,3}(?:propane )?(?:bottles?|cylinders?|canisters?|tanks?)(?!\p{L})/giu;

/** “On the side of the trailer” is where a connection is, and nothing that lies there. */
const whereabouts =
  /(?<!\p{L})(?:on|at|from) (?:the|my|our) (?:out)?side of (?:the|my|our) (?:trailer|camper|travel trailer|rig|rv|coach)(?!\p{L})/giu;

/**
 * Whether a text tells of nothing but an everyday matter: an empty battery, a dent in the skin, a grill to
 * be hooked up. A word of anything graver, or a sign of danger that is of something else, and it does not.
 */
export function isEveryday(whole: string): boolean {
  const text = whole.replace(smallBottles, ' ').replace(whereabouts, ' ');
  const told = matters.filter((matter) => matter.told.test(text));
  if (told.length === 0 || graver.test(text)) return false;
  return dangersIn(text).every(({ because }) =>
    because.some((words) => told.some((matter) => matter.words.test(words))),
  );
}
