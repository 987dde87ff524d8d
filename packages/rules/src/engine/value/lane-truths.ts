import { isExact, type Numbers, newNumbers, newTruths, type Program, type Truths } from './lanes';

/** And, or and choices over lanes of yes and no, each lane as reckon would have it. */
export function combine(program: Program, kind: 'both' | 'either', a: Truths, b: Truths): Truths {
  const to = newTruths(program, a.wide || b.wide);
  // “Either” is “both” with yes and no changed about.
  const [all, some] = kind === 'both' ? (['yes', 'no'] as const) : (['no', 'yes'] as const);
  program.steps.push((count) => {
    for (let i = 0; i < count; i += 1) {
      to[all][i] = (a[all][i] ?? 0) & (b[all][i] ?? 0);
      to[some][i] = (a[some][i] ?? 0) | (b[some][i] ?? 0);
    }
  });
  return to;
}

export const opposite = ({ wide, yes, no }: Truths): Truths => ({
  kind: 'truths',
  wide,
  yes: no,
  no: yes,
});

/** @param decided whether all that `when` hangs on is drawn in every lane */
export function chooseNumbers(
  program: Program,
  when: Truths,
  decided: boolean,
  a: Numbers,
  b: Numbers,
): Numbers {
  const exact = decided && !when.wide && isExact(a) && isExact(b);
  const to = newNumbers(program, exact);
  program.steps.push((count) => {
    for (let i = 0; i < count; i += 1) {
      const [yes, no] = [when.yes[i] === 1, when.no[i] === 1];
      const [al, ah] = [a.lo[i] ?? 0, a.hi[i] ?? 0];
      const [bl, bh] = [b.lo[i] ?? 0, b.hi[i] ?? 0];
      to.lo[i] = !no ? al : !yes ? bl : Math.min(al, bl);
      if (!exact) to.hi[i] = !no ? ah : !yes ? bh : Math.max(ah, bh);
    }
  });
  return to;
}

export function chooseTruths(program: Program, when: Truths, a: Truths, b: Truths): Truths {
  const to = newTruths(program, when.wide || a.wide || b.wide);
  program.steps.push((count) => {
    for (let i = 0; i < count; i += 1) {
      const [yes, no] = [when.yes[i] ?? 0, when.no[i] ?? 0];
      to.yes[i] = (yes & (a.yes[i] ?? 0)) | (no & (b.yes[i] ?? 0));
      to.no[i] = (yes & (a.no[i] ?? 0)) | (no & (b.no[i] ?? 0));
    }
  });
  return to;
}
