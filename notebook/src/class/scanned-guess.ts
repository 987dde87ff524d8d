import { allGroups, keepGroup } from '../state/everything';
import { commit, committed, isOpen } from '../state/group';
import { whyNotKept } from '../state/shelf';
import { readGuessCode } from './guess-code';
import { walkedCase } from './record';
import { walker } from './walk-aside';

/** Takes down a guess whose code was scanned on the trainer's device, and says what came of it. */
export async function takeScanned(id: string, code: string, why: string): Promise<string> {
  try {
    const group = (await allGroups()).find((each) => each.id === id);
    if (!group) {
      return 'This guess is of a class that is not on this device; scan it where the class is walked.';
    }
    const aside = walker();
    await Promise.all(group.cases.map(aside.walk));
    aside.end();
    const read = readGuessCode(code, group.cases, group.learners, (at) => {
      const each = group.cases[at];
      return each && walkedCase(each)?.question;
    });
    if (typeof read === 'string') return read;
    const learner = group.learners[read.learner] ?? '';
    const there = { ...group, at: read.case };
    if (committed(there, learner))
      return `${learner} has committed to this case already; the first guess stays.`;
    if (isOpen(there))
      return 'The working of this case is open already, so no guess is taken any more.';
    const reason = {
      ...(read.sure && { sure: read.sure }),
      ...(why && { why: why.slice(0, 300) }),
    };
    const now = commit(there, learner, read.said, Date.now(), reason);
    await keepGroup({ ...now, at: group.at });
    const channel = new BroadcastChannel('tarebook-class');
    channel.postMessage({ kind: 'kept', id });
    channel.close();
    return `${learner}’s guess for case ${read.case + 1} is noted. This window may be closed.`;
  } catch (problem) {
    return whyNotKept(problem);
  }
}
