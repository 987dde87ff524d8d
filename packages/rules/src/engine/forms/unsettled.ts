import type { FindingAnswer } from '../answer/shapes';
import type { Sayable } from '../words/value';
import { askedFirst, isAnsweredOwn, isAnything, isFixed, isYesOrNo } from './asking';
import { askedNext, isOpenFor, lackedBy, nextFact, openUntil } from './asks';
import { cautionsFitting } from './caution';
import { limitAt, stuck } from './deciding';
import {
  following,
  ifShort,
  ifStillShort,
  may,
  must,
  type Part,
  unlessSaid,
  warning,
} from './length';
import { isRest } from './lists';
import { isAnythingTold, isTold, type Matter } from './matter';
import { all, besideDo, besideSaid, dangersSaid, isListed, isRuleWanted, limitOf } from './parts';
import { defaultSaid, fromToldSaid, reasonSaid, ruleSaid } from './rule';
import {
  caresTold,
  dangersTold,
  dangersUnknown,
  findingsTold,
  isDefaultFit,
  levelOf,
  partsOf,
  tippingAt,
  verdictSaid,
} from './verdict';

const isStraddling = (each: Sayable): boolean =>
  'code' in each && (each.code === 'straddling' || each.code === 'may-fall-short');

/** A danger that decides, and says what to do until it is known. */
const isOpenDanger = ({ level, messages }: FindingAnswer): boolean =>
  level === 'unknown' && messages.do !== undefined;

/** That nobody has told, or looked; and not what was found. */
const isUnlooked = ({ level, code }: FindingAnswer): boolean =>
  level === 'unknown' || level === 'if' || code === 'perhaps';

/** Whether a finding tells the very decision that was asked for. */
const isDecisionOf = ({ topic }: Matter, asking: string | undefined, id: string): boolean => {
  const decision = topic.findings[id]?.decision;
  const results = asking === undefined ? [] : (topic.askings?.[asking]?.results ?? []);
  return decision !== undefined && results.includes(decision);
};

/** Whether it only says that something is open which nobody asked for: another decision, or what is no danger and of which nothing was told. */
const isOfAnother = (
  matter: Matter,
  asking: string | undefined,
  { id, code }: FindingAnswer,
): boolean => {
  const results = asking === undefined ? [] : (matter.topic.askings?.[asking]?.results ?? []);
  const finding = matter.topic.findings[id];
  const isDecision = finding?.decision !== undefined;
  return (
    (code === 'open' || code === 'decision-open') &&
    (isDecision || !(finding?.first || finding?.askedBy?.some((fact) => isTold(matter, fact)))) &&
    results.length > 0 &&
    !results.includes('verdict') &&
    !results.includes(`finding.${id}`) &&
    !isDecisionOf(matter, asking, id)
  );
};

/** That something is not known, where what is to be found out next is said: it is nothing to do. */
const idle = (each: FindingAnswer | undefined, said: Sayable): Part =>
  each?.level === 'unknown' ? ifStillShort(said) : ifShort(said);

/**
 * Where a verdict is open, hangs on something or has nothing against it: what was asked, the verdict,
 * the limit, what is wrong and what to do, and the one caution that fits; more only where that is too
 * little to be an answer.
 *
 * @param isShort without an example, and without what was told named once more
 */
export function unsettled(
  matter: Matter,
  asking: string | undefined,
  isShort = false,
): readonly Part[] {
  const [caution, ...others] = cautionsFitting(matter);
  const level = levelOf(matter);
  const answered = askedFirst(matter, asking);
  // Whoever told nothing has misread nothing.
  const misread = isAnythingTold(matter) ? stuck(matter) : undefined;
  const isAsking = level === 'unknown' && misread === undefined;
  const wanted = isAsking ? nextFact(matter, asking) : undefined;
  // What somebody does not know, and what is dangerous of it, comes before all that is known.
  const isDoubt = dangersUnknown(matter).length > 0;
  // A danger that comes first and says itself what to look at is not asked for once more.
  const [gravest] = answered.length === 0 ? dangersTold(matter) : [];
  const isSaidAlready =
    !isDoubt && gravest?.messages.do !== undefined && isOpenFor(matter, gravest.id, wanted);
  const next = isSaidAlready ? [] : askedNext(matter, wanted);
  // What is open only for want of what is asked next is not told beside it.
  const isBeside = ({ id, level: at, code }: FindingAnswer): boolean =>
    next.length === 0 ||
    (code !== 'perhaps' && !(at === 'unknown' && isOpenFor(matter, id, wanted)));
  // A verdict that hangs on provisos has said them.
  const isProviso = (each: FindingAnswer): boolean => level === 'if' && each.level === 'if';
  const findings = findingsTold(matter);
  const [care, ...cares] = caresTold(matter);
  const near = level === 'if' ? limitAt(matter, 'care') : undefined;
  const [first, ...more] = findings.filter(
    (each) => isBeside(each) && !isProviso(each) && each !== care,
  );
  // How to be sure of the first of them is still to be said.
  const sure = findings.find(isProviso)?.messages.do;
  // Two that nobody knows of are both said; what was asked, and what to do about a care, waits for them.
  const isTwice = isAnythingTold(matter) && dangersTold(matter).filter(isOpenDanger).length > 1;
  const dangers = dangersSaid(matter, isTwice ? 2 : 1, {
    isBrief: answered.length > 0 || care !== undefined,
  });
  const isOpen = isRuleWanted(matter);
  // Where a verdict stands that answers something else, the rule says what was asked.
  const lacked = lackedBy(matter, asking);
  // That anything may come of what was asked says less than the rule.
  const isVague = findings.some(
    (each) => isAnything(each) && isDecisionOf(matter, asking, each.id),
  );
  const isRuled = (isOpen || isVague || lacked !== undefined) && answered.length === 0;
  const asked = isRuled ? ruleSaid(matter, asking) : answered;
  // What was told is heard in the answer, also where it is too little for one.
  const told = fromToldSaid(matter, asking, isShort);
  const fromTold = isRuled && (told.isWorked || !misread) ? told.said : [];
  // Whoever told nothing and hears a list hears by what rule it is chosen.
  const isListOnly = isOpen && answered.length > 0 && !isAnythingTold(matter);
  const isFirst = answered.length === 0;
  // What goes on where a list ends belongs to it.
  const declared = asking === undefined ? undefined : matter.topic.askings?.[asking];
  const isOnward =
    asked[0] !== undefined && isListed(asked[0]) && declared !== undefined && isFixed(declared);
  // What is only a proviso waits where the answer itself is open; a danger does not.
  const isOpenOnly = first?.code === 'decision-open' || first?.code === 'perhaps';
  const isGrave = first?.level === 'unknown' && !isOpenOnly;
  // Beside the rule it is no news that another thing is open.
  const isElse =
    first !== undefined &&
    ((isOpen && isOfAnother(matter, asking, first)) || (isRuled && isAnything(first)));
  const [wrong, todo] = first && !isElse ? partsOf(first) : [];
  // What is to be found out next is said last, so that it is remembered; what else is open waits.
  const isLate = next.length > 0 && !(isGrave && todo);
  // The figure at which it tips is worth more than a rule.
  const tipping = dangers.length > 0 ? [] : tippingAt(matter, wanted, asking);
  // That something was heard is worth less than where it tips, or what is dangerous.
  const isBesides = tipping.length > 0 || dangersTold(matter).length > 1;
  // Beside what was told, and no more than named, the rule is the answer.
  const isBare = fromTold.length > 0 && !care && dangers.length === 0 && tipping.length === 0;
  // With nothing else to say, what is open says of what it speaks.
  const saysNothing = [asked, fromTold, dangers, tipping].every((each) => each.length === 0);
  const [bare] = saysNothing && !misread ? findings : [];
  const hinges = (each: Sayable): Part =>
    tipping.length > 0
      ? may(each, 0.02)
      : wanted === undefined && !misread
        ? must(each)
        : ifShort(each);
  // A question of yes or no hears its answer first.
  const isPlain = level === 'ok' || (level === 'if' && findings.filter(isProviso).length === 1);
  const yes = isPlain && isYesOrNo(matter, asking) ? all(verdictSaid(matter), must) : [];
  // What is not known yet is said as that, where no figure at which it tips says so.
  const isOpenYet = isYesOrNo(matter, asking) && isFirst && tipping.length === 0;
  const notYet = isOpenYet && !misread && wanted !== undefined ? openUntil(matter, wanted) : [];
  // A danger that calls for care is said as one.
  const isCareDanger = dangersTold(matter).some((each) => each.level === 'care');
  // What nobody has looked at yet waits for the rule that was asked for; what was found does not.
  const isRuleFirst =
    isFirst &&
    !isDoubt &&
    !misread &&
    isOpen &&
    asked.length > 0 &&
    !told.isWorked &&
    dangers.length > 0 &&
    dangersTold(matter).every(isUnlooked);
  const isAdvised =
    care !== undefined && level === 'unknown' && isDecisionOf(matter, asking, care.id);
  const careful = [
    ...(care && level === 'unknown'
      ? partsOf(care).map((each, place) =>
          unlessSaid(isCareDanger || (isTwice && place > 0) ? may(each, 0.02) : must(each)),
        )
      : []),
    // A verdict that hangs on provisos says them all as well.
    ...(care && level !== 'unknown'
      ? [unlessSaid(isCareDanger ? may(care.messages.wrong, 0.02) : must(care.messages.wrong))]
      : []),
    ...(care?.messages.do && level !== 'unknown' ? [may(care.messages.do, 0.02)] : []),
    ...cares.flatMap((each) =>
      each.messages.do
        ? besideDo(each.messages.wrong, each.messages.do, 0.25)
        : [unlessSaid(may(each.messages.wrong, 0.25))],
    ),
  ];
  // Behind the rule and what was told, what to do about what nobody looked at says the danger too.
  const unlooked =
    isRuleFirst && fromTold.length > 0
      ? dangersTold(matter)
          .slice(0, 1)
          .map(({ messages }) => must(messages.do ?? messages.wrong))
      : dangers;
  const toldParts = all(fromTold, (each) => {
    return care || isDoubt || (isBesides && !isRuleFirst && !told.isWorked)
      ? may(each, 0.3)
      : must(each);
  });
  return [
    ...(isDoubt ? dangers : []),
    ...yes,
    ...all(lacked === undefined ? [] : openUntil(matter, lacked), must),
    ...(dangers.length > 0 ? [] : all(notYet, (each) => may(each, 0.015))),
    ...all(misread?.wrong ?? [], must),
    ...all(misread?.todo ? [misread.todo] : [], must),
    // A rule is no answer of this rig’s own: what is dangerous on it comes first.
    ...(isFirst && !isDoubt && !isRuleFirst ? dangers : []),
    ...(isFirst ? careful : []),
    ...(bare ? [must(bare.messages.wrong)] : []),
    // What was asked comes before what was told and is only named once more.
    ...(told.isWorked ? toldParts : []),
    ...all(asked.slice(0, 1), (each) =>
      !isRuleFirst &&
      !(isBare && !told.isWorked) &&
      (misread ||
        isDoubt ||
        (isTwice && isFirst) ||
        isAdvised ||
        (isFirst && (care || dangers.length > 0 || tipping.length > 0 || fromTold.length > 0)))
        ? // Between two dangers and what is asked next, what was asked is said where there is room.
          may(each, misread ? 1 : 0.2)
        : must(each),
    ),
    ...(told.isWorked ? [] : toldParts),
    // Advice on the very thing that was asked comes before what nobody has looked at yet.
    ...(isAdvised && !isFirst && !isDoubt && dangersTold(matter).every(isUnlooked) ? careful : []),
    ...((isFirst && !isRuleFirst) || isDoubt ? [] : unlooked),
    ...(isFirst ? [] : careful),
    ...all(isListOnly ? ruleSaid(matter, asking) : [], (each) => may(each, 0.3)),
    ...all(asked.slice(1), (each) =>
      isRest(each)
        ? following(may(each, asked[0] && isListed(asked[0]) ? 0.02 : 2.01), asked.find(isListed))
        : isOnward
          ? must(each)
          : may(each, isListOnly ? 2 : isListed(each) ? 1.4 : 1),
    ),
    ...all(isOpen && !isShort ? reasonSaid(matter, asking) : [], (each) =>
      following(may(each, 1.5), answered.length === 0 ? asked[0] : undefined),
    ),
    ...(yes.length > 0 ? [] : all(verdictSaid(matter), hinges)),
    ...(near ? besideDo(near.wrong[0], near.todo, 0.81) : []),
    // One that may hold or not is what it hangs on.
    ...all(limitOf(matter), (each) => may(each, isStraddling(each) ? 0.79 : 2)),
    ...(wrong ? [isLate ? idle(first, wrong) : may(wrong, 0.8)] : []),
    ...(sure ? [may(sure, 0.82)] : []),
    // What to do comes before what else there is to know.
    ...(todo ? [following(may(todo, 0.9), wrong)] : []),
    ...more
      .filter((each) => !(isOpen && isOfAnother(matter, asking, each)))
      .slice(0, 2)
      .flatMap((each) =>
        next.length > 0 && each.level === 'unknown'
          ? all(partsOf(each).slice(0, 1), (said) => idle(each, said))
          : besideSaid(each),
      ),
    ...(caution ? [warning(may(caution, 0.85))] : []),
    ...(first?.messages.because ? [ifShort(first.messages.because)] : []),
    ...others.slice(0, 5).map((each) => warning(ifShort(each))),
    // Whoever has an answer needs no way out; who waits for one hears what is safest until then.
    ...all(
      (isOpen || isAsking) && isDefaultFit(matter) ? defaultSaid(matter, asking) : [],
      (each) =>
        isOpen && isAnsweredOwn(matter, asking)
          ? ifShort(each)
          : may(each, next.length > 0 || !isOpen ? 0.84 : 0.3),
    ),
    // After a danger with what to do about it only what there is room for, before further dangers.
    ...all(next, (each) => (dangers.length > 0 ? may(each, 0.05) : must(each))),
  ];
}
