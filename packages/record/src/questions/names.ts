/** A word as a name is written. */
const part = "[A-Z][a-z’'ñéüöä]+(?:-[A-Z][a-z]+)?";
const initial = '[A-Z]\\.';
const title = '(?:Mr|Mrs|Ms|Miss|Dr|Sister|Brother|Pastor|Father|Herr|Frau)\\.?';
const name = `(?:${title} )?(?:${part}|${initial})(?: (?:${part}|${initial})){0,2}`;

/** Words with a capital that begin a sentence or name a thing, a day or a place, and nobody. */
const nobody =
  /^(?:The|This|That|A|An|It|Its|We|My|Our|Your|You|They|He|She|I|Is|Are|Was|Do|Does|Did|Can|Could|Will|Would|What|When|Where|Which|Who|Why|How|Hi|Hello|Hey|Good|Dear|Sirs?|Madam|Thanks?|Thank|Please|Not|No|Yes|And|But|Or|So|If|In|On|At|From|For|With|To|Of|By|About|Also|Just|Only|Any|Some|Call|Text|Osier|Sallow|Sallowbridge|Coppice|Rushlight|Penstock|Millrace|Hurdle|Wattle|Slate|Marrow|Vale|January|February|March|April|May|June|July|August|September|October|November|December|(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)days?|Regards|Best|Cheers|Sincerely|Warmly|Fondly|Greetings?|Respectfully|Great|Love|Lovely|Wants?|Asks?|Counter|Service|Sales|Parts|Front|Rear|Left|Right|Trailer|Truck|Tow|Tongue|Electrician|Mechanic|Contractor|Customer|Lady|Man|Guy|Fun|Still|Same|Nice|Okay|Ok|Well|Over|Right|Back|Out|Up|Down|Everyone|Nobody|Order|Subject|Monday|Here|There|All|Me|Mum|Dad|Teenager|Sister$|Brother$|Pastor$|Vietnamese|Batteries|Sway|Name|Leaving|Going|Heading|Christmas|Easter|Thanksgiving|English)\b/;

const titled = new RegExp(`(?<![\\p{L}])${title} ${name}(?!\\p{L})`, 'gu');
/** “This is Ann”, “signed, Ann”, “ask for Ann” */
const told = new RegExp(
  `(?<=\\b(?:[Mm]y name is|[Nn]ame[’']s|[Nn]ame is|[Nn]ame:|[Tt]his is|[Ii]t is|[Ii]t[’']?s|I am|I[’']m|[Hh]ere is|[Hh]ello,? (?:here|is)|[Hh]i, here|[Aa]sk for|[Ss]igned,?|[Ee]lderly (?:lady|man),|[Cc]aller:?|[Nn]amed|[Nn]ame of|[Oo]n behalf of|c\\/o|[Aa]ttn:?|[Ss]peak (?:to|with)|[Tt]hank you from|[Tt]hanks from|[Ii]nvoice to|[Tt]o me,|[Dd]esk,|[Ff]or him,|[Ff]or her,|[Rr]eply to|[Uu]nder|[Bb]ought by|[Oo]rdered by) )${name}(?!\\p{L})`,
  'gu',
);
/** “Ann Bee here”, “Ann again,”, “Ann calling” */
const opening = new RegExp(
  `(?:^|(?<=^(?:[Hh]i|[Hh]ello|[Hh]ey),? ))${name}(?= (?:here|again|calling)\\b)`,
  'gu',
);
/** “Ann Bee, about her letter”, as a call is noted */
const noted = new RegExp(
  `^(?:${part}|${initial}) ${part}(?=(?:,| -) (?:about|re|regarding|calling|called|phoned|ringing|rang|returning|wrote|who|wants|asks|asking)\\b)`,
  'gu',
);
/** “Call Ann back”, “ring Ann Bee at …” */
const reached = new RegExp(
  `(?<=\\b(?:[Cc]all|[Rr]ing|[Tt]ext|[Pp]hone|[Mm]ail|[Ee]mail) (?:back )?)${name}(?=,? (?:at|on|back|under)\\b)`,
  'gu',
);
/** A line of two: “Ann and Ben Bee” */
const both = [
  new RegExp(`(?<=\\n)${part}(?= (?:and|&) ${name}[.]?\\s*(?:$|\\n))`, 'gu'),
  new RegExp(`(?<=\\n${part} (?:and|&) )${name}(?=[.]?\\s*(?:$|\\n))`, 'gu'),
];
/** “Hello, Ann Bee, 555-0100.” */
const beside = new RegExp(
  `(?<![\\p{L}])${part}(?: (?:${part}|${initial})){0,2}(?=, (?:\\(?\\d{3}\\)?[ .-]\\d|[\\w.+-]{1,64}@))`,
  'gu',
);
/** A line that is a name and nothing else, or what stands behind the last greeting or dash. */
const signed = new RegExp(
  `(?:(?<=\\n)|(?<=(?:[Rr]egards|[Tt]hank you|[Tt]hanks|[Tt]hx|[Gg]reetings?|[Ss]incerely|[Ff]aithfully|[Tt]ruly|[Cc]ordially|[Yy]ours|[Ll]ove|[Ff]ondly|[Ww]armly|[Rr]espectfully|[Cc]heers|[Bb]est|[Bb]est wishes),\\s)|(?<=[—–-] ))${name}(?=[.]?\\s*(?:$|\\n|, (?:\\d|[\\w.+-]+@)))`,
  'gu',
);
/** What stands alone behind the last sentence, in two words at least. */
const last = new RegExp(
  `(?<=[.?!]\\s)(?:${part}|${initial})(?: (?:${part}|${initial})){1,2}(?=[.]?\\s*$)`,
  'gu',
);
/** “hi its ann,” in small letters: only right behind a greeting, and before a mark. */
const small =
  /(?<=^(?:hi|hey|hello|hey y'all|hi this is|hi,)[ ,]*(?:its|it's|this is|im) )[a-z]{3,10}(?: [a-z]{3,12})??(?= from\b|[,.]| (?:again|here)\b)|(?<=^(?:hi|hey|hello),? )[a-z]{3,10}(?: [a-z]{3,12})??(?= (?:again|here)\b)|^[a-z]{3,10}(?= here\b[,.])/g;
const smallNobody =
  /(?:^| )(?:urgent|late|broken|leaking|getting|raining|ours|mine|what|who|its|was|they|there|that|this|have|need|with|all|and|are|for|the|me|mum|mom|dad|pastor|teacher|nurse|same|about|just|been|not|really|going|only|from|right|over|out|your|you|my|new|anybody|anyone|nobody|someone|down|still|get|cold|warm|hot)(?: |$)/;

export type Place = { readonly at: number; readonly words: string };

/** Names of people in a text, by how people give their names. What begins like a thing or a day is none. */
export function namesIn(text: string): readonly Place[] {
  const capital = [titled, told, opening, noted, reached, ...both, beside, signed, last].flatMap(
    (sign) =>
      [...text.matchAll(sign)].flatMap((each): readonly Place[] =>
        nobody.test(each[0]) ? [] : [{ at: each.index, words: each[0] }],
      ),
  );
  const plain = [...text.matchAll(small)].flatMap((each): readonly Place[] =>
    smallNobody.test(each[0]) ? [] : [{ at: each.index, words: each[0] }],
  );
  return [...capital, ...plain];
}
