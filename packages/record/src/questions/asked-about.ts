/**
 * Whoever asks whether a thing is needed, better, allowed or any good does not tell that it is there:
 * “do I need to carry a spare”, “would a coupler lock stop them”. What stands with “my”, “our” or “the”
 * is there all the same.
 */

const who =
  '(?:i|we|you|u|ya|yall|they|he|she|it|one|people|folks|everybody|everyone|somebody|anybody|anyone|(?:a|my|our|the|this|that) \\p{L}+)';
/** What somebody would do with a thing that is not there. */
const wants =
  '(?:need|want|have to|get|use|carry|buy|bring|take|go with|go for|switch to|stay with|add|install|fit|put|inflate to|air up to|recommend|suggest|like|prefer|come with|require|put on|pack|own|run|be using|be carrying|be running|be getting)';
/** Words of any kind that do not begin what belongs to something else. */
const word =
  "(?: (?!(?:with|on|for|at|in|when|while|if|than|then|enough|from|behind|without|because|my|our|his|her|their|the|your|and|but)(?!\\p{L}))[\\p{L}’'-]+)";
const begins = "(?:^|[^\\p{L}’'])";

const asksFor = new RegExp(
  `${begins}(?:do|does|did|don[’']?t|would|wouldn[’']?t|should|shouldn[’']?t|shall|must|will|gotta)(?: (?:${who}|guys))(?: (?:guys|all|really|even|still|just|also|then|ever|always)){0,2} (?:to )?${wants}(?: (?:to|carry|use|have|get|bring|run|be)){0,2}${word}{0,3} $`,
  'iu',
);
/** The same, where the words of the thing begin with what somebody would do with it. */
const asksTo = new RegExp(
  `${begins}(?:do|does|did|would|should|shall|must|will)(?: (?:${who}|guys))(?: (?:guys|all|really|even|still|just|also|ever|always)){0,2} (?:(?:need|have) to )?$`,
  'iu',
);
const doing = new RegExp(`^${wants}(?!\\p{L})`, 'iu');
const mayUse = new RegExp(
  `${begins}(?:can|could|may|must) (?:i|we|you|u|they|one) (?:just |also |still )?(?:use|get|add|install|buy|put on|switch to|go with)${word}{0,2} $`,
  'iu',
);
const weighs = new RegExp(
  `${begins}(?:wondering|wonder|wonders|know|unsure|not sure|asks?|asked|asking|curious|advise|see|decide|deciding|debating|torn|thinking|thinks|considering|tempted|looking|hoping|planning|thoughts|opinions?|better off|what|how|advice|tips)(?: (?:if|whether|about|of|on|between|for|at|to|into|with))+(?: (?:i|we|he|she|they|you|should|would|could|might|to|need|get|use|have|carry|run|go|getting|using|adding|buying|going|having|switching|with|an?|some|any|those|these|new|it|be|better)){0,5}${word}? $`,
  'iu',
);
const whatIf = new RegExp(
  `${begins}what (?:if|happens if|happens when)(?: [\\p{L}’'-]+){0,5} $`,
  'iu',
);
/** “What is worth buying, a coupler lock, a wheel clamp, one of those alarms?” */
const isWorth =
  /(?<!\p{L})(?:what|which)(?: (?:one|ones|of (?:these|those|them)))? (?:is|are|would be|should) (?:worth|best|better|good|you|i|we|smart)[^.!?;:]*,[^.!?;:]*$/iu;
const ifSo = new RegExp(`${begins}(?:if|unless|in case|whether)(?: [\\p{L}’'-]+){0,4} $`, 'iu');
const opens = new RegExp(
  `${begins}(?:would|could|will|does|do|might|is|are|isn[’']?t|aren[’']?t|wouldn[’']?t)(?: (?:an?|some|any|those|these|just|only|having|using|adding|putting|on|getting|it|better|worth|to|have|get|use)){0,5}${word}? $`,
  'iu',
);
const judged =
  /^(?: [\p{L}’'-]+){0,4} (?:help|helps|stop|stops|be|deter|deters|keep|keeps|work|make|makes|prevent|save|saved|scare|enough|do|protect|slow|matter|required|allowed|needed|necessary|worth|better|best|legal|permitted|recommended|good|mandatory|must|smart|overkill|useful|ok|okay|fine|safer?|have (?:saved|helped|stopped|prevented|kept)|a waste)(?!\p{L})/iu;
/** “AGM or lithium?” */
const orOther = /^ (?:[\p{L}-]+ )?(?:or|vs\.?|versus)(?: [\p{L}’'-]+){1,4} ?\?/iu;

/** “What would 2 new lithium ones run me”: what is priced is not there. */
const prices = new RegExp(
  `${begins}(?:what|how much) (?:would|will|do|does|are|is|r)(?: (?:an?|the|some|one|two|three|four|\\d+|new|set|pair|of))* $`,
  'iu',
);
const priced = /^(?: [\p{L}’'-]+){0,3} (?:run|runs|cost|costs|set me back|go for)(?!\p{L})/iu;
/** “Can the little one be had with the fifty amp service” */
const hadWith = new RegExp(
  `${begins}(?:can|could|does|do|will|is|are)(?!\\p{L})[^.?!;]{0,40}(?:had|come|comes|ordered|available|order it|get it|get one|have it) with (?:an? |the |your )?$`,
  'iu',
);

const clause = /[.!?;:\n,()]/g;

/** Whether words of a text name a thing that is only asked about. */
export function isAskedAbout(text: string, from: number, to: number): boolean {
  const ahead = text.slice(Math.max(0, from - 90), from);
  let start = 0;
  for (const { index } of ahead.matchAll(clause)) start = index + 1;
  const said = ahead.slice(start);
  const after = text.slice(to, to + 60);
  if (
    asksFor.test(said) ||
    mayUse.test(said) ||
    weighs.test(said) ||
    isWorth.test(ahead) ||
    whatIf.test(said) ||
    ifSo.test(said) ||
    hadWith.test(said) ||
    (prices.test(said) && priced.test(after))
  )
    return true;
  if (asksTo.test(said) && doing.test(text.slice(from, to))) return true;
  return (opens.test(said) && judged.test(after)) || orOther.test(after);
}
