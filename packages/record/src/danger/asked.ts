/** Whoever asks how a thing is done, what it is called or where it is to be had begins like this. */
const begins =
  /^(?:(?:hi|hey|hello|yo|so|ok|okay|also|and|but|or|q|question|quick question|quick q|quick one|first|second|please|\d[.)])[ ,.:!-]+)*(?:how (?:do|does|long|much|many|often|big|high|tall|loud|heavy|old|far|tight|can|could|should|would|to|come you)|what(?:['’]?s| is| are| size| kind| type| sort| brand| fuse| ball| do you| does| would| should| detectors?)|which|where|who|when (?:do|does|can|is|are) (?:you|i|we|a)|do (?:you|u|i need|we need|all|i have to|we have to|they)|does (?:a|an|any|anybody|anyone|every)|can (?:i|you|u|we|one|a|somebody|someone)|could (?:i|you|we)|is (?:there|a|an)|are (?:there|all|any|\w+s (?:allowed|better|worth))|should (?:i|we|a)|may (?:i|we)|will (?:you|a|an)|would (?:you|a|an)|any (?:tips|advice|recommend\w*))\b/i;

/** And tells of nothing that happened, or is so, by a word like these. */
const tells =
  /\b(?:when|that|because|cuz|since|after|while|but|now|rn|still|already|today|tonight|this morning|last night|yesterday|keeps?|kept|started|starts|stopped|quit|just|every ?time|each time|anymore|again|went|came|got|gets|was|were|been|had|did|didn['’]?t|won['’]?t|doesn['’]?t|it['’]?s|there['’]?s|there is|feels?|felt|looks like|looked|seems?|safe|normal|wrong|why|fell|broke|lost|my \w+ (?:is|are|has)|our \w+ (?:is|are|has)|it (?:is|has|only|all))\b/i;

/** Whether a sentence asks in general, and tells of nothing of its own. */
export const asksInGeneral = (sentence: string): boolean => {
  const said = sentence.trim();
  return begins.test(said) && !tells.test(said);
};
