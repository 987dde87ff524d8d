/** Words of danger in another sense, and what must not stand in their sentence for that to be sure. */
type Sense = {
  readonly said: RegExp;
  readonly never?: RegExp;
  /** Whether the whole sentence is of that sense, and not the words alone. */
  readonly whole?: true;
};

/** What somebody perceives, or what befell them: beside it a sentence keeps all its words. */
const grave =
  /(?<!\p{L})(?:smell\p{L}*|smelt|stink\p{L}*|stank|reek\p{L}*|odou?rs?|whiff|fumes?|eggs?|hiss\p{L}*|leak\p{L}*|smok\p{L}*|spark\p{L}*|melt\p{L}*|scorch\p{L}*|burning|glow\p{L}*|hot|warm|swell\p{L}*|swollen|bulg\p{L}*|crack\p{L}*|shock\p{L}*|zap\p{L}*|tingl\p{L}*|beep\p{L}*|chirp\p{L}*|alarms?|detectors?|monoxide|sick|dizzy|headache\p{L}*|hurt|bleed\p{L}*|loose|wobbl\p{L}*|sway\p{L}*|pops?|popped|slip\p{L}*|blew|blown|yellow|orange|soot|fails?|failed|stuck|fire)(?!\p{L})/iu;

/** It is there, or somebody is in it. */
const present =
  /(?<!\p{L})(?:now|rn|today|tonight|tonite|just|still|again|keeps?|started|since|yesterday|this morning|here|next (?:to|door|site)|beside us|campground|neighbou?r\p{L}*|site)(?!\p{L})/iu;

const owned =
  /(?<!\p{L})(?:i|i[’']?m|i[’']?ve|we|we[’']?re|we[’']?ve|my|mine|our|ours|us|me|his|her|their|he|she|they|this|that|it[’']?s|there)(?!\p{L})/iu;

const either = (...all: readonly RegExp[]): RegExp =>
  new RegExp(all.map(({ source }) => source).join('|'), 'iu');

const senses: readonly Sense[] = [
  // Praise: “that brake video was fire”, “your tip on the hitch pin saved us”.
  {
    said: /(?<!\p{L})(?:videos?|show|episodes?|clips?|channel|content|tips?) (?:is|was|are|were)(?: (?:so|straight|pure|absolute))? fire(?! hazard)(?!\p{L})/giu,
  },
  {
    said: /(?<!\p{L})(?:tips?|videos?|advice|shows?|trick|checklist)(?: (?:on|about|of|for)(?: [\p{L}’'-]+){1,6})?,? saved (?:us|me|our|my)(?!\p{L})/giu,
    never: either(grave, present),
  },
  {
    said: /(?:^\W*|[,;!.] ?|(?<!\p{L})and )keep it up(?=\W*$)/giu,
    never: either(
      grave,
      present,
      /(?<!\p{L})(?:jacks?|blocks?|boards?|lumber|legs?|slide|awning|roof|stands?)(?!\p{L})/iu,
    ),
  },
  // Told as absent, at the end of what it is said of: “no gas smell, no alarm”.
  {
    said: /(?<!\p{L})(?:no|without any|without a) (?:gas |propane |burning |rotten egg )?(?:smells?|odou?rs?|leaks?|alarms?|smoke)(?=\s*(?:[,.;]|$|(?:and|or) no ))/giu,
    never:
      /(?<!\p{L})(?:but|except|yet|though|hiss\p{L}*|sick|dizzy|headache\p{L}*|until|before|now)(?!\p{L})/iu,
  },
  // Asked as knowledge: what a thing is like, how it works, how fast it wears.
  {
    whole: true,
    said: /^\W*(?:and |so |also )?what (?:does|do|would) (?:an? |the )?(?:[\p{L}-]+ ){1,4}(?:smell|sound|look|feel) like(?=\s*[?.!]?\s*$|,? (?:so (?:that )?(?:i|we) can|before (?:the|our|a) trip|in general))/iu,
    never: present,
  },
  {
    whole: true,
    said: /^\W*(?:and |so |also )?how (?:does|do|can) (?:an? |the )?(?:[\p{L}-]+ ){1,4}(?:make|turn|get|work|produce|cool|keep)(?!\p{L})/iu,
    never: either(grave, present, owned),
  },
  {
    whole: true,
    said: /^\W*(?:and |so |also )?(?:do|does) (?:an? |the )?(?:[\p{L}-]+ ){1,4}(?:wear|last|age|weigh|cost|use)(?:s|es)? (?:more|less|faster|quicker|sooner|longer|out (?:faster|quicker|sooner))(?!\p{L})/iu,
    never: either(grave, present, owned),
  },
  {
    whole: true,
    said: /^\W*is it normal for an? new (?:[\p{L}-]+ ){1,3}to smell (?:an? (?:bit|little) )?(?:the first time|at first|when (?:it is )?new)(?!\p{L})/iu,
    never: either(present, owned),
  },
  // Supposed: whether it gets hot enough, what would happen if.
  {
    whole: true,
    said: /(?:^\W*|(?<!\p{L})(?:asks?|wants? to know|wonder(?:s|ing)?|curious) (?:if|whether) )(?:does |do |can |could |will |would )?(?:an? |the )(?:[\p{L}-]+ ){1,4}gets? (?:too )?hot enough to (?:burn|hurt|melt|scald)(?!\p{L})/iu,
    never:
      /(?<!\p{L})(?:now|today|tonight|just|burn(?:ed|t)|blister\p{L}*|melted|smell\p{L}*|my|our|brown|black|plugs?|cords?|outlets?|breakers?|wires?|wiring|hubs?|wheels?|batter\p{L}*|it is|it[’']?s|already)(?!\p{L})/iu,
  },
  {
    whole: true,
    said: /^\W*what (?:would )?happens? if an? (?:[\p{L}-]+ )?(?:chains?|couplers?|hitch pin|pin|ball|tires?|wheels?|brakes?)(?!\p{L})/iu,
    never: either(grave, present, owned),
  },
  // Seen on somebody else's, in passing.
  {
    whole: true,
    said: /^\W*(?:i |we )?(?:once )?saw (?:[\p{L}-]+ ){1,3}(?:behind|under|from|on) (?:a|some|another) (?:guy|man|truck|car|trailer|camper|rig|driver|fellow)(?!\p{L})/iu,
    never:
      /(?<!\p{L})(?:now|today|tonight|just|still|here|next (?:to|door|site)|neighbou?r\p{L}*|site|campground|he|she|they|stopped|my|our)(?!\p{L})/iu,
  },
  // A smoke alarm that tells of the pan. Of monoxide no pan is the cause.
  {
    whole: true,
    said: /(?<!\p{L})smoke (?:alarms?|detectors?) (?:always )?(?:goes|go|going|went|gets set) off (?:when(?:ever)?|every ?time|each time|if|from) (?:(?:i|we|she|he|you|my wife|my husband) )?(?:cook|cooks|fry|fries|sear|sears|make|makes|making|toast|burn|burns|cooking|frying)(?: (?:up|some|the|a|an))*(?: (?:bacon|toast|burgers?|steaks?|pancakes|eggs|dinner|supper|breakfast|food|fish))?\s*(?=[.,;?!]|$)/iu,
    never:
      /(?<!\p{L})(?:monoxide|co|gas|propane|furnace|heater|headache\p{L}*|sick|dizzy|yellow|orange|soot|even when|night)(?!\p{L})/iu,
  },
  // Lines that are blown out for winter; no tire is.
  {
    said: /(?<!\p{L})bl[eo]w(?:ing|n)? (?:(?:them|it|the (?:water )?(?:lines|pipes|system)|(?:my|our|all|all the) (?:water )?(?:lines|pipes)) )?out(?!\p{L})(?=[^.!\n]*(?<!\p{L})(?:antifreeze|anti-freeze|the pink stuff|pink|winteri[sz]\p{L}*|lines|pipes|plumbing|compressed air|compressor)(?!\p{L}))|(?<=(?<!\p{L})(?:antifreeze|winteri[sz]\p{L}*)(?!\p{L})[^.!\n]*)(?<!\p{L})bl[eo]w(?:ing|n)? (?:[\p{L}]+ ){0,3}out(?!\p{L})/giu,
    never:
      /(?<!\p{L})(?:tires?|wheels?|highway|interstate|pilot|flame|burner|furnace|heater lit)(?!\p{L})/iu,
  },
  // The valve that keeps antifreeze out of a water heater; a safety that is bypassed is another matter.
  {
    said: /(?<!\p{L})(?:water heater bypass(?:es)?|bypass(?: valves?| kit)? (?:on|of|for|at) (?:the|my|our) water heater|bypass the water heater)(?!\p{L})/giu,
    never:
      /(?<!\p{L})(?:thermostat|t-stat|switch|fuse|limit|wired?|wires|eco|sensor|breaker|element|reset|hot|steam\p{L}*|leak\p{L}*|relief)(?!\p{L})/iu,
  },
  // What a thing uses, in a figure.
  {
    said: /(?<!\p{L})draws?(?= (?:about |around |roughly |maybe |only |like )?\d+(?:\.\d+)? ?(?:a|amps?|watts?|w)(?!\p{L}))/giu,
  },
  // A tool's own hose.
  {
    said: /(?<!\p{L})(?:burst|split|cracked|popped) its (?:hose|handle|gauge)(?!\p{L})/giu,
    never: /(?<!\p{L})(?:gas|propane|regulator|cylinder|grill|water|pump|brake)(?!\p{L})/iu,
  },
];

/** A figure with a unit of its own is no cold: “one night? It draws 8 amps”. */
const measured =
  /(?<![\p{L}\d.,-])\d{1,2}(?=(?: |-)?(?:amps?|ah|amp[ -]hours?|watts?|psi|gal(?:lons?)?|inch(?:es)?|feet|ft|mph|mpg)(?!\p{L}))/giu;
const spelled = '0';

const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.?!])(?=\s)|(?=\n)/u);

const without = (sentence: string): string =>
  senses.reduce((now, { said, never, whole }) => {
    said.lastIndex = 0;
    if (!said.test(now)) return now;
    said.lastIndex = 0;
    if (never?.test(now.replace(said, ' '))) return now;
    return whole ? '' : now.replace(said, ' ');
  }, sentence);

let last: { readonly text: string; readonly meant: string } | undefined;

/**
 * A text without its words of danger in another sense: praise, what is told as absent, asked as
 * knowledge, supposed or seen in passing. Where anything beside them in the sentence tells of
 * something that is there, they stay; all other sentences are heard as they are.
 */
export function meantOf(text: string): string {
  if (last?.text === text) return last.meant;
  const kept = sentencesOf(text).map(without).join('');
  const meant = kept.replace(measured, spelled);
  last = { text, meant };
  return meant;
}
