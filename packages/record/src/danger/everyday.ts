import { dangersIn } from './find';

/** What goes wrong or is asked every day, and hurts nobody by itself. */
type Matter = {
  /** How it is told. */
  readonly told: RegExp;
  /** The words of it that signs of danger take up. */
  readonly words: RegExp;
  /** What in it sounds like something graver, and is none. */
  readonly plain?: RegExp;
  /** With one of these it is no everyday matter, beside what is graver everywhere. */
  readonly never?: RegExp;
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
  // What a battery holds, shows or gives; where it lies over winter.
  {
    told: /(?<!\p{L})(?:batter(?:y|ies)|lithium|agm)(?!\p{L}).*\d ?(?:%|percent|ah(?!\p{L})|amp[ -]?hours?|volts?(?!\p{L})|v(?!\p{L})|\.\d)|\d ?(?:%|percent|ah(?!\p{L})|amp[ -]?hours?|volts?|v(?!\p{L})|\.\d).*(?<!\p{L})batter(?:y|ies)(?!\p{L})/isu,
    words: /batter|lithium|agm|^(?:flat|dead|low|furnace|overnight)$/iu,
    plain:
      /(?<!\p{L})lead[ -]acid(?!\p{L})|(?<!\p{L})blowers?(?!\p{L})|(?<!\p{L})(?:till?|until|by|in|over|next|this) (?:the )?spring(?!\p{L})|(?<!\p{L})(?:leave|store|keep|park)\p{L}* (?:it|them|the \p{L}+) (?:in (?:the|my|our) \p{L}+ )?in (?:the|my|our|a) (?:garage|shed|barn)(?!\p{L})/giu,
    never:
      /(?<!\p{L})(?:loose|terminals?|corro\p{L}*|case|charger|charging|inverter|converter|cables?|lights?|dim|bright\p{L}*|flicker\p{L}*|pedestal|post|outlet|generator|heaters?|grill|drops?|falls?|tonight|stop\p{L}*|quit|won[’']?t|cells?|bms|modules?|home-?made|tapes?|brown|busbars?|toddler|concrete|gurgl\p{L}*|spit\p{L}*|sizzl\p{L}*|sweat\p{L}*|nois\p{L}*|hum\p{L}*|click\p{L}*|crackl\p{L}*|crack\p{L}*|dent\p{L}*|drip\p{L}*|wet|fuzz\p{L}*|weird|odd|funny|strange|round(?:ed)?)(?!\p{L})|\d{3} ?(?:v|volts?)(?!\p{L})/iu,
  },
  // How old tires are, by their code; how they are otherwise is another matter.
  {
    told: /(?<!\p{L})tires?(?!\p{L}).{0,40}(?<!\p{L})(?:say|says|code|dated?|dot|from|made|stamped)(?!\p{L}).{0,12}\d{4}/isu,
    words: /^(?:tires?|side|tread)$/iu,
    plain: /(?<!\p{L})(?:tires?|on the (?:out)?side(?: ?wall)?)(?!\p{L})/giu,
    never:
      /(?<!\p{L})(?:crack\p{L}*|check(?:ed|ing|s)|split\p{L}*|bulg\p{L}*|bubbl\p{L}*|lumps?|worn|wear\p{L}*|bald|rot\p{L}*|cord|cords|flat|low|vibrat\p{L}*|shak\p{L}*|wobbl\p{L}*|loose|nail|air|slits?|cuts?|gash\p{L}*|torn|tear|edges?|lean\p{L}*|egg|odd|weird|funny|nois\p{L}*|pull\p{L}*|fray\p{L}*|thump\p{L}*|separat\p{L}*|rub\p{L}*|head(?:ed|ing)|leav\p{L}*|go(?:ing|nna)?|drive|driving|tow\p{L}*|trip|miles|today|tomorrow|\p{L}+day)(?!\p{L})/iu,
  },
  // What to take along on a trip.
  {
    told: /(?<!\p{L})(?:what|which) (?:spares?|spare parts|tools)(?: and (?:spares?|tools))?(?! (?:broke|fell|is|are))(?!\p{L}).{0,30}(?<!\p{L})(?:carry|bring|take|pack|have along)(?!\p{L})/isu,
    words: /^(?:spares?|tires?|already|to the|were)$/iu,
    plain: /(?<!\p{L})spare tires?(?!\p{L})/giu,
    never: /(?<!\p{L})(?:loose|crack\p{L}*|split|flat|bent|lost|broke\p{L}*|noise|worn)(?!\p{L})/iu,
  },
  // Thanks and praise, and nothing else.
  {
    told: /^(?=[^?]*$)(?=.*(?:(?<!\p{L})(?:love|loved|enjoy\p{L}*|thanks for|great|awesome) (?:the|your|these|those|all|watching) (?:\p{L}+ )?(?:videos?|show|channel|clips?|episodes?)(?!\p{L})|(?<!\p{L})keep (?:em|[’']em|them) coming(?!\p{L}))).{0,200}$/isu,
    words: /(?!)/u,
  },
  // A grill of one's own, and how it is hooked up; where one is lit is another matter.
  {
    told: new RegExp(
      `(?<!\\p{L})${grill}(?!\\p{L}).*(?<!\\p{L})${hookup}|(?<!\\p{L})${hookup}.*(?<!\\p{L})${grill}(?!\\p{L})`,
      'isu',
    ),
    words: /grill|griddle|barbecue|bbq/iu,
    plain:
      /(?<!\p{L})(?:(?:get|buy|need|use|run|want|find|which|what) (?:a |an |the |another |just a )?(?:(?:longer|new|right|extension) )?hose|plug (?:it|that|one|the grill) in(?:to)?|(?:says?|said) (?:to )?take (?:the|its) regulator off)(?!\p{L})|(?<=(?:connect|port|outlet|fitting) )on the side(?!\p{L})|(?<=^(?:subject: ?)?(?:(?:new|my|our|a|the) )?(?:grill|griddle) )hose(?=\s*$|,? (?:hi|hello|hey|good (?:morning|day|evening)|dear)(?!\p{L}))/gimu,
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
  const told = matters.filter((matter) => matter.told.test(whole) && !matter.never?.test(whole));
  if (told.length === 0) return false;
  const text = [smallBottles, whereabouts, ...told.flatMap(({ plain }) => plain ?? [])].reduce(
    (now, plain) => now.replace(plain, ' '),
    whole,
  );
  return (
    !graver.test(text) &&
    dangersIn(text).every(({ because }) =>
      because.some((words) => told.some((matter) => matter.words.test(words))),
    )
  );
}
