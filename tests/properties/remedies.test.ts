import { type Answer, answerTraced } from '@tarebook/rules';
import type {
  FactChange,
  FactGiven,
  FactsGiven,
  RowGiven,
  Told,
  Topic,
} from '@tarebook/rules/engine';
import { remedies } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactCase, latticeCase, openCase } from '../differential/arbitrary-case';
import { givenOf } from '../differential/given';
import type { PlainCase } from '../differential/plain-case';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';
const topic: Topic = towFit;
const judged = (facts: FactsGiven): Answer => answerTraced(topic, { facts, asOf });

const outcomes = new Map<string, string>();
/** By the answer itself and not by what looks for remedies; each set of facts once. */
function outcomeOf(facts: FactsGiven): string {
  const key = JSON.stringify(facts);
  const outcome = outcomes.get(key) ?? judged(facts).outcome;
  outcomes.set(key, outcome);
  return outcome;
}

const worth: Readonly<Record<string, number>> = {
  fits: 0,
  'fits-with-care': 1,
  'fits-if': 2,
  'cannot-say': 3,
  'does-not-fit': 4,
};
const worthOf = (outcome: string): number => worth[outcome] ?? Number.NaN;

type Found = ReturnType<typeof remedies>;

type Rig = { readonly facts: FactsGiven; readonly found: Found };

/** Rigs with what their remedies are: exact ones, ones on the edges of ratings, and open ones. */
const rigs: readonly Rig[] = fc
  .sample(fc.oneof(exactCase(), latticeCase(), openCase()), { numRuns: 320, seed })
  .map((plain) => {
    const facts = givenOf(plain);
    return { facts, found: remedies(topic, { facts, asOf }) };
  });

/** Goes over all rigs; how much there was to check is told, lest nothing be tested. */
const overRigs = (check: (facts: FactsGiven, found: Found) => number): number =>
  rigs.reduce((seen, { facts, found }) => seen + check(facts, found), 0);

const isRows = (given: FactsGiven[string] | undefined): given is readonly RowGiven[] =>
  Array.isArray(given);

/** The facts that differ between two sets of them. */
const touched = (a: FactsGiven, b: FactsGiven): readonly string[] =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])].filter(
    (id) => JSON.stringify(a[id]) !== JSON.stringify(b[id]),
  );

const end = (told: Told): number =>
  told !== null && typeof told === 'object' ? told.lo : Number.NaN;

/** One change carried out on facts by this test's own means; undefined where it takes more. */
function applied(
  facts: FactsGiven,
  change: FactChange,
  at: Told = change.to,
): FactsGiven | undefined {
  const { fact, row, column, shown } = change;
  const given = facts[fact];
  if (shown !== undefined) return undefined;
  if (row === undefined) return at === null ? undefined : { ...facts, [fact]: at };
  if (!isRows(given)) return undefined;
  if (column === undefined) return { ...facts, [fact]: given.filter((_, i) => i !== row - 1) };
  if (at === null) return undefined;
  return {
    ...facts,
    [fact]: given.map((each, i) => (i === row - 1 ? { ...each, [column]: at } : each)),
  };
}

const stepOf = ({ fact, column }: FactChange): number => {
  const change = topic.changes?.find(
    (each) =>
      each.fact === fact &&
      (each.kind === 'less' || each.kind === 'shift') &&
      each.column === column,
  );
  return change && 'step' in change ? change.step : Number.NaN;
};

const rank: Readonly<Record<string, number>> = { ok: 0, care: 1, if: 2, unknown: 3, stop: 4 };
const ofAll = (facts: FactsGiven): ReadonlyMap<string, string> => {
  const { limits, findings } = judged(facts);
  return new Map([
    ...limits.map(({ id, state }): [string, string] => [`limit ${id}`, state]),
    ...findings.map(({ id, level }): [string, string] => [id, level]),
  ]);
};
const moves = ({ shown, column }: FactChange): boolean => shown !== undefined || column === 'ahead';

/** What is worse than it was, and a tongue share that is off after load was moved. */
function upsets(facts: FactsGiven, after: FactsGiven, change: FactChange): readonly string[] {
  const before = ofAll(facts);
  return [...ofAll(after)].flatMap(([id, level]) => {
    const now = rank[level] ?? 0;
    const righted = id === 'tongue-share' && change.fact.startsWith('trailer.') && moves(change);
    return now > 0 && (righted || now > (rank[before.get(id) ?? ''] ?? 0)) ? [id] : [];
  });
}

/** Whether some limit or finding is worse than it was: then it is no remedy, whatever the verdict says. */
function worsens(facts: FactsGiven, after: FactsGiven): boolean {
  const before = ofAll(facts);
  return [...ofAll(after)].some(
    ([id, level]) => (rank[level] ?? 0) > (rank[before.get(id) ?? ''] ?? 0),
  );
}

/** Some values between two, a step away from the far one among them. */
function short(from: number, to: number, step: number): readonly number[] {
  const toward = Math.sign(from - to);
  const inner = [0.25, 0.5, 0.75, 0.9].map((part) => from + (to - from) * part);
  return [...inner, to + toward * step].filter(
    (x) => (from - x) * toward > 1e-6 && (x - to) * toward > step - 1e-6,
  );
}

describe('a remedy', () => {
  test('yields the outcome it claims, a better one than before', () => {
    const seen = overRigs((facts, { outcome, remedies: found }) => {
      expect(outcome).toBe(outcomeOf(facts));
      for (const each of found) {
        expect([each.says, outcomeOf(each.facts)]).toEqual([each.says, each.outcome]);
        expect(worthOf(each.outcome)).toBeLessThan(worthOf(outcome));
        expect(each.says).toContain(`Then: ${each.words}.`);
      }
      return found.length;
    });
    expect(seen).toBeGreaterThan(120);
  });

  test('leaves no limit and no finding worse than it was, and moves no load into too light a tongue', () => {
    const seen = overRigs((facts, { remedies: found }) => {
      for (const each of found) {
        expect([each.says, upsets(facts, each.facts, each)]).toEqual([each.says, []]);
      }
      return found.length;
    });
    expect(seen).toBeGreaterThan(120);
  });

  test('does what it says, and nothing else: carried out by its from and to, the facts are those', () => {
    const seen = overRigs((facts, { remedies: found }) => {
      let counted = 0;
      for (const each of found) {
        const once = applied(facts, each);
        const after = once && each.with ? afterBoth(facts, each, each.with) : once;
        if (!after) continue;
        counted += 1;
        expect(outcomeOf(after)).toBe(each.outcome);
        const named = [each.fact, each.with?.fact];
        expect(touched(facts, each.facts).filter((id) => !named.includes(id))).toEqual([]);
      }
      return counted;
    });
    expect(seen).toBeGreaterThan(80);
  });

  test('undone gives the first outcome back', () => {
    overRigs((facts, { outcome, remedies: found }) => {
      for (const each of found) {
        const undone: Record<string, FactGiven> = { ...each.facts };
        for (const id of touched(facts, each.facts)) {
          const was = facts[id];
          if (was === undefined) delete undone[id];
          else undone[id] = was;
        }
        expect(outcomeOf(undone)).toBe(outcome);
        expect(outcomeOf(facts)).toBe(outcome);
      }
      return found.length;
    });
  });

  test('is ranked by what it asks, and among equals by how much changes', () => {
    overRigs((_, { remedies: found }) => {
      found.slice(1).forEach((each, i) => {
        const before = found[i];
        if (!before) return;
        expect(each.asks).toBeGreaterThanOrEqual(before.asks);
        if (each.asks === before.asks) expect(each.size).toBeGreaterThanOrEqual(before.size);
      });
      return found.length;
    });
  });

  test('never touches a rating, nor what the maker allows', () => {
    const rating =
      /Rating|gvwr|gcwr|gawr|Capacity|max[A-Z]|Carried|Payload|Above|Allowed|towPackage|curb|axles/;
    overRigs((facts, { remedies: found }) => {
      for (const each of found) {
        expect(touched(facts, each.facts).filter((id) => rating.test(id))).toEqual([]);
      }
      return found.length;
    });
  });

  test('asks no more than it must: any part of the change, and one step less, is not enough', () => {
    const seen = overRigs((facts, { remedies: found }) => {
      let counted = 0;
      for (const each of found) {
        const solved: FactChange = each.with ?? each;
        const base = each.with ? applied(facts, each) : facts;
        const [from, to] = [end(solved.from), end(solved.to)];
        if (!base || !(Math.abs(from - to) > 0)) continue;
        if (each.with && each.with.fact === each.fact) continue;
        for (const x of short(from, to, stepOf(solved))) {
          const unit = solved.to !== null && typeof solved.to === 'object' ? solved.to.unit : '';
          const part = applied(base, solved, { lo: x, hi: x, unit: unit === '' ? '1' : unit });
          if (!part) continue;
          counted += 1;
          const isEnough =
            worthOf(outcomeOf(part)) <= worthOf(each.outcome) &&
            upsets(facts, part, solved).length === 0;
          expect([each.says, x, !isEnough]).toEqual([each.says, x, true]);
        }
      }
      return counted;
    });
    expect(seen).toBeGreaterThan(30);
  });
});

/** Both changes of a pair; of two rows of one list the lower first, so that the other keeps its place. */
function afterBoth(facts: FactsGiven, a: FactChange, b: FactChange): FactsGiven | undefined {
  const lowerFirst = a.fact === b.fact && (b.row ?? 0) > (a.row ?? 0) ? [b, a] : [a, b];
  return lowerFirst.reduce<FactsGiven | undefined>((all, each) => all && applied(all, each), facts);
}

/** Simple-minded single changes on a coarse grid, tried one after the other. */
function triedByHand(facts: FactsGiven): readonly FactsGiven[] {
  const tried: FactsGiven[] = [];
  const lists = ['load.occupants', 'load.cargo', 'trailer.cargo', 'trailer.options'];
  for (const list of lists) {
    const rows = facts[list];
    if (!isRows(rows)) continue;
    rows.forEach((row, i) => {
      if (list === 'load.occupants' && i === 0) return;
      tried.push({ ...facts, [list]: rows.filter((_, j) => j !== i) });
      if (list === 'load.occupants' || list === 'trailer.options') return;
      const { weight } = row;
      if (typeof weight !== 'object' || !('lo' in weight) || weight.lo !== weight.hi) return;
      for (const part of [0.1, 0.3, 0.5, 0.7, 0.9]) {
        const lo = (weight.lo ?? 0) * part;
        if (lo < 1) continue;
        const less = { ...row, weight: { lo, hi: lo, unit: weight.unit } };
        tried.push({ ...facts, [list]: rows.map((each, j) => (j === i ? less : each)) });
      }
    });
  }
  for (const tank of ['freshWater', 'grayWater', 'blackWater', 'propane']) {
    const id = `trailer.${tank}`;
    const given = facts[id];
    if (typeof given !== 'object' || isRows(given) || !('lo' in given)) continue;
    for (const part of [0, 0.25, 0.5, 0.75]) {
      tried.push({
        ...facts,
        [id]: { value: (given.lo ?? 0) * part, unit: given.unit },
      });
    }
  }
  for (const id of ['vehicle.brakeController', 'vehicle.sevenWay', 'hitch.distribution']) {
    tried.push({ ...facts, [id]: 'yes' });
  }
  return [...tried, { ...facts, 'hitch.distribution': 'no' }];
}

describe('a pair', () => {
  test('is offered only where no single change helps, and none where one does', () => {
    let pairs = 0;
    let without = 0;
    const check = (facts: FactsGiven, { outcome, remedies: found }: Found): number => {
      const paired = found.filter((each) => each.with !== undefined);
      if (paired.length > 0) expect(found).toHaveLength(1);
      if (outcome !== 'does-not-fit' && outcome !== 'fits-with-care') return 0;
      if (found.length > 0 && paired.length === 0) return 0;
      pairs += paired.length;
      without += 1;
      for (const tried of triedByHand(facts).filter((_, i) => i % 2 === 0)) {
        if (worsens(facts, tried)) continue;
        expect(worthOf(outcomeOf(tried))).toBeGreaterThanOrEqual(worthOf(outcome));
      }
      return 1;
    };
    overRigs(check);
    expect(without).toBeGreaterThan(20);
    expect(pairs).toBeGreaterThan(5);
  });

  test('is found where two simple-minded changes together would do', () => {
    const switches = ['vehicle.sevenWay', 'vehicle.brakeController', 'hitch.distribution'];
    const seen = overRigs((facts, { outcome, remedies: found }) => {
      if (found.length > 0 || !['does-not-fit', 'fits-with-care'].includes(outcome)) return 0;
      const pairs = switches.flatMap((id) =>
        triedByHand({ ...facts, [id]: 'yes' }).filter((_, i) => i % 6 === 0),
      );
      for (const tried of pairs) {
        if (worsens(facts, tried)) continue;
        expect(worthOf(outcomeOf(tried))).toBeGreaterThanOrEqual(worthOf(outcome));
      }
      return pairs.length;
    });
    expect(seen).toBeGreaterThan(100);
  });

  test('takes both: either change alone leaves the outcome where it was, or worse', () => {
    overRigs((facts, { outcome, remedies: found }) => {
      for (const each of found) {
        if (!each.with) continue;
        for (const change of [each, each.with]) {
          const alone = applied(facts, change);
          if (!alone || upsets(facts, alone, change).length > 0) continue;
          expect(worthOf(outcomeOf(alone))).toBeGreaterThanOrEqual(worthOf(outcome));
        }
      }
      return 0;
    });
  });
});

describe('what does not help', () => {
  test('does not: carried out as far as it goes, the outcome is no better or something is upset', () => {
    const seen = overRigs((facts, { outcome, noHelp }) => {
      let counted = 0;
      for (const each of noHelp.filter((_, i) => i % 3 === 0)) {
        const after = applied(facts, each);
        if (!after) continue;
        counted += 1;
        const turns = worthOf(outcomeOf(after)) < worthOf(outcome);
        if (turns) expect(upsets(facts, after, each)).not.toEqual([]);
        expect(each.says).toMatch(
          turns
            ? /That will not do: .+; but then it fails on .+\.$/
            : /That does not turn it: .+\.$/,
        );
      }
      return counted;
    });
    expect(seen).toBeGreaterThan(250);
  });
});

test('where nothing is wrong, or it cannot be said yet, nothing is proposed', () => {
  const seen = overRigs((_, { outcome, remedies: found, noHelp }) => {
    if (outcome === 'does-not-fit' || outcome === 'fits-with-care') return 0;
    expect([found, noHelp]).toEqual([[], []]);
    return 1;
  });
  expect(seen).toBeGreaterThan(20);
});

/** Limits that another trailer of the same make and share would meet as the present one does. */
const ofVehicleAndHitch = new Set([
  'trailer-weight',
  'tongue',
  'payload',
  'vehicle-gross',
  'rear-axle',
  'vehicle-tires-rear',
  'combined',
  'receiver',
  'receiver-tongue',
  'ball-mount',
  'ball',
]);

/** A rig whose trailer is too heavy, and has nothing else wrong with it. */
function tooHeavy(plain: PlainCase): PlainCase {
  const kept = Object.entries(plain).filter(
    ([id]) => !/^trailer\.|vehicle\.(tow|maxFrontal|maxUnbraked)|ballSize|distribution/i.test(id),
  );
  const rating = plain['vehicle.maxTrailerWeight'];
  const weight = 1.1 * (typeof rating === 'number' ? rating : 5000);
  return {
    ...Object.fromEntries(kept),
    'vehicle.sevenWay': 'yes',
    'vehicle.brakeController': 'yes',
    'hitch.distribution': 'no',
    'trailer.brakes': 'electric',
    'trailer.dryWeight': weight,
    'trailer.gvwr': 20_000,
    'trailer.measuredTongueWeight': 0.12 * weight,
    'trailer.cargo': [],
  };
}

test('another trailer that takes a rig from stop is the largest one, to the step', () => {
  let compared = 0;
  for (const plain of fc.sample(exactCase(), { numRuns: 60, seed })) {
    const facts = givenOf(tooHeavy(plain));
    const before = judged(facts);
    const { outcome, remedies: found } = remedies(topic, { facts, asOf });
    const another = found.find(({ shown }) => shown === 'trailer.loaded');
    const largest = before.apart.largestTrailer;
    const stops = [...before.limits, ...before.findings].filter((each) =>
      'state' in each ? each.state === 'stop' : each.level === 'stop',
    );
    const all = stops.every(({ id }) => ofVehicleAndHitch.has(id));
    if (!another || outcome !== 'does-not-fit' || !all || !largest) continue;
    if (another.outcome === 'cannot-say') continue;
    compared += 1;
    const to = end(another.to);
    expect(to).toBeLessThanOrEqual(largest.lo + 1e-3);
    expect(to).toBeGreaterThan(largest.lo - 10 - 1e-3);
  }
  expect(compared).toBeGreaterThan(5);
});
