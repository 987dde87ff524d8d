import { type Asked, compareVerdicts, type Topic } from '@tarebook/rules/engine';

/** What two versions of a rule set say differently of the same case, the verdict first; none where they agree. */
export function saidOtherwise(was: Topic, now: Topic, asked: Asked): readonly string[] {
  const { differences, refused } = compareVerdicts(was, now, asked);
  const isVerdict = ({ name }: { readonly name: string }): boolean => name === 'verdict';
  const inOrder = [
    ...differences.filter(isVerdict),
    ...differences.filter((each) => !isVerdict(each)),
  ];
  const told = inOrder.map(({ label, was: before, now: after }) => {
    const line = `${label} was ${before}, is ${after}.`;
    return `${line.charAt(0).toUpperCase()}${line.slice(1)}`;
  });
  return refused === undefined ? told : [...told, refused];
}
