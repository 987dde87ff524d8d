import { type Answer, answerTraced, coldWeather, towFit } from '@tarebook/rules';
import type { FactGiven, FactsGiven, Missing } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';
import { openCase } from '../differential/arbitrary-case';
import { givenOf } from '../differential/given';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';
const judge = (facts: FactsGiven): Answer => answerTraced(towFit, { facts, asOf });

const openRig = openCase()
  .map((plain) => ({ facts: givenOf(plain), answer: judge(givenOf(plain)) }))
  .filter(({ answer }) => answer.outcome === 'cannot-say');

/** The same case with one fact told; undefined where what is told is refused. */
function withFact(facts: FactsGiven, fact: string, value: FactGiven): Answer | undefined {
  try {
    return judge({ ...facts, [fact]: value });
  } catch {
    return undefined;
  }
}

const isSilentWay = (fact: string): boolean => fact === 'trailer.measuredTongueWeight';

describe('what to ask when it cannot be said', () => {
  test('every open limit and finding is decided by some fact that is asked for', () => {
    fc.assert(
      fc.property(openRig, ({ answer }) => {
        const open = [
          ...answer.limits
            .filter(({ state }) => state === 'unknown')
            .map(({ id }) => `limit.${id}`),
          ...answer.findings
            .filter(({ level }) => level === 'unknown')
            .map(({ id }) => `finding.${id}`),
        ];
        const decided = new Set(answer.missing.flatMap(({ decides }) => decides));
        expect(open.filter((of) => !decided.has(of))).toEqual([]);
        for (const { ask, where, says } of answer.missing) {
          expect(ask).toMatch(/\?$/);
          expect(where).not.toBe('');
          expect(says).toMatch(/^Decides .*\.$/);
        }
      }),
      { numRuns: 150, seed },
    );
  });

  test('whoever reads what is asked first waits for nothing of what is asked after it', () => {
    const { missing, sentence } = judge({ 'vehicle.maxTrailerWeight': '5,000 lb' });
    const isMade = (of: Missing | undefined): boolean =>
      of !== undefined && 'value' in (Object.getOwnPropertyDescriptor(of, 'says') ?? {});
    const [first, second] = missing;
    expect(sentence).toContain('find out');
    expect(first?.says).toMatch(/^Decides /);
    expect([isMade(first), isMade(second)]).toEqual([true, false]);
    expect(second?.says).toMatch(/^Decides /);
    expect(isMade(second)).toBe(true);
  });

  test('past the value at which it tips it does not fit', () => {
    let tips = 0;
    fc.assert(
      fc.property(openRig, ({ facts, answer }) => {
        for (const { fact, tips: at, says } of answer.missing) {
          if (!at || typeof at === 'string' || isSilentWay(fact)) continue;
          if (typeof facts[fact] === 'object' && Array.isArray(facts[fact])) continue;
          const [above, below] = [says.includes('above '), says.includes('below ')];
          if (above === below) continue;
          const side = above ? 1 : -1;
          const edge = side > 0 ? at.hi : at.lo;
          const past = edge + side * Math.max(0.01, Math.abs(edge) * 1e-4);
          const told = withFact(facts, fact, { lo: past, hi: past, unit: at.unit || '1' });
          if (!told) continue;
          tips += 1;
          expect(told.outcome, `${fact} at ${past}: ${says}`).toBe('does-not-fit');
        }
      }),
      { numRuns: 150, seed },
    );
    expect(tips).toBeGreaterThan(40);
  });

  describe('the option that would rule it out does', () => {
    /** Which facts have such an option; each is tried. */
    const ruledOut = ({ facts, answer }: { facts: FactsGiven; answer: Answer }) =>
      answer.missing.flatMap(({ fact, tips }) => {
        if (typeof tips !== 'string') return [];
        for (const option of tips.split(', ')) {
          expect(withFact(facts, fact, option)?.outcome, `${fact}: ${option}`).toBe('does-not-fit');
        }
        return [fact];
      });

    const heavy: FactsGiven = {
      'vehicle.maxTrailerWeight': '5,000 lb',
      'vehicle.placardPayload': '1,400 lb',
      'trailer.dryWeight': '3,000 lb',
      'trailer.gvwr': '4,000 lb',
      'trailer.dryTongueWeight': '400 lb',
      'vehicle.maxTongueCarried': '350 lb',
      'vehicle.maxTongueDistributed': '600 lb',
    };
    test.each<readonly [string, FactsGiven]>([
      ['hitch.distribution', heavy],
      ['hitch.distribution', { ...heavy, 'hitch.distribution': 'unknown' }],
    ])('%s', (fact, facts) => {
      expect(ruledOut({ facts, answer: judge(facts) })).toContain(fact);
    });

    test('whatever is told', () => {
      fc.assert(
        fc.property(openRig, (rig) => {
          ruledOut(rig);
        }),
        { numRuns: 400, seed },
      );
    });
  });

  test('the ranking does not depend on the order in which facts are told', () => {
    fc.assert(
      fc.property(openRig, ({ facts, answer }) => {
        const other = judge(Object.fromEntries(Object.entries(facts).toReversed()));
        expect(other.missing).toEqual(answer.missing);
      }),
      { numRuns: 60, seed },
    );
  });

  test('a fact that settles the verdict at every value comes before one that settles none', () => {
    fc.assert(
      fc.property(openRig, ({ answer }) => {
        const place = (test: (each: Missing) => boolean) => answer.missing.map(test);
        const firstIdle = place(({ settles, together }) => settles === 0 && together.length > 0);
        const lastSure = place(({ settles }) => settles === 1).lastIndexOf(true);
        const idle = firstIdle.indexOf(true);
        const all = answer.missing[lastSure];
        if (idle < 0 || !all || answer.missing[idle]?.decides.length !== 1) return;
        expect(lastSure).toBeLessThan(idle);
      }),
      { numRuns: 150, seed },
    );
  });
});

const rig: FactsGiven = {
  'vehicle.maxTrailerWeight': '5,000 lb',
  'vehicle.maxTongueCarried': '900 lb',
  'vehicle.placardPayload': '1,260 lb',
  'trailer.dryWeight': '3,900 lb',
  'trailer.gvwr': '5,000 lb',
  'trailer.dryTongueWeight': '430 lb',
  'trailer.brakes': 'surge',
  'trailer.cargo': [],
  'hitch.distribution': 'no',
  'load.occupants': [{ weight: '585 lb' }],
};

describe('rigs at the counter', () => {
  test('payload unknown: the label in the door first, and it settles everything by itself', () => {
    const [first, more] = judge({ ...rig, 'vehicle.placardPayload': 'unknown' }).missing;
    expect(first).toMatchObject({
      fact: 'vehicle.placardPayload',
      decides: ['limit.payload'],
      tips: { lo: 1058, hi: 1058, unit: 'lb' },
      together: [],
      settles: 1,
    });
    expect(more).toBeUndefined();
  });

  test('payload and tongue unknown: neither decides payload alone, and each says with which', () => {
    const { missing } = judge({
      ...rig,
      'vehicle.placardPayload': 'unknown',
      'trailer.dryTongueWeight': 'unknown',
    });
    const of = (fact: string) => missing.find((each) => each.fact === fact);
    expect(of('vehicle.placardPayload')?.together).toEqual(['trailer.dryTongueWeight']);
    expect(of('trailer.dryTongueWeight')?.together).toEqual(['vehicle.placardPayload']);
    expect(of('vehicle.placardPayload')?.says).toBe(
      'Decides “payload” together with the dry tongue: below 585 lb the answer is “does not fit”, whatever else is found.',
    );
    // The tongue closes a limit of its own besides, so it is asked first.
    expect(missing[0]?.fact).toBe('trailer.dryTongueWeight');
    expect(missing[0]?.says).toBe(
      'Decides “tongue weight”: above 818.2 lb the answer is “does not fit”. Decides “payload” only together with the door label’s payload.',
    );
  });

  test('wheelbase and overhang unknown: an axle needs both', () => {
    const axles: FactsGiven = {
      ...rig,
      'vehicle.curbFront': '2,300 lb',
      'vehicle.curbRear': '1,900 lb',
      'vehicle.gawrRear': '3,000 lb',
      'vehicle.wheelbase': 'unknown',
      'vehicle.overhang': 'unknown',
      'load.occupants': [{ weight: '585 lb', ahead: '60 in' }],
    };
    const { missing } = judge(axles);
    expect(missing.map(({ fact, together }) => [fact, together])).toEqual([
      ['vehicle.wheelbase', ['vehicle.overhang']],
      ['vehicle.overhang', ['vehicle.wheelbase']],
    ]);
  });

  test('an answer with everything to ask still comes at once', () => {
    const unknown = Object.fromEntries(Object.keys(rig).map((fact) => [fact, 'unknown' as const]));
    delete unknown['load.occupants'];
    delete unknown['trailer.cargo'];
    judge(unknown);
    const from = process.cpuUsage();
    for (let i = 0; i < 20; i += 1) judge(unknown);
    const { user, system } = process.cpuUsage(from);
    // Of processor, so that a busy machine does not count.
    expect((user + system) / 20_000).toBeLessThan(100);
  });
});

test('every worked case that cannot be said asks first for what it says it lacks', () => {
  const firsts = markdownBelow(casesFolder, refusedFolder).flatMap(({ name, text }) => {
    const doc = readFiled(text);
    if (!doc.topic || doc.troubles.length > 0 || doc.topic.id !== 'tow-fit') return [];
    const { facts } = doc;
    const answer = answerTraced(doc.topic, { facts, asOf });
    const [first] = answer.missing;
    return answer.outcome === 'cannot-say' && first ? [[name, first.fact]] : [];
  });
  expect(firsts).toEqual(
    expect.arrayContaining([
      ['tow-fit/payload-not-known.md', 'vehicle.placardPayload'],
      ['tow-fit/range-across-the-limit.md', 'trailer.cargo'],
      ['tow-fit/shopping-from-seventy-two-hundred.md', 'trailer.dryTongueWeight'],
      ['tow-fit/only-with-bars.md', 'hitch.distribution'],
      ['tow-fit/no-brakes-and-a-line-nobody-read.md', 'vehicle.maxUnbraked'],
    ]),
  );
});

/** What hurts is asked before what is only too heavy; see the handbook's law of the untold. */
describe('what decides is asked first, the thing itself', () => {
  const first = (found: Answer | ReturnType<typeof judgeCold>) => found.missing[0]?.fact;
  const judgeCold = (facts: FactsGiven) => answerTraced(coldWeather, { facts, asOf });
  const trailer = { 'vehicle.maxTrailerWeight': '5,000 lb', 'trailer.dryWeight': '3,000 lb' };

  test('the brakes, where the manual’s limit without them was told and is exceeded', () => {
    expect(first(judge({ ...trailer, 'vehicle.maxUnbraked': '1,000 lb' }))).toBe('trailer.brakes');
    // Nothing is exceeded with 4,000 lb, and the payload decides as ever.
    const later = judge({ ...trailer, 'vehicle.maxUnbraked': '4,000 lb' });
    expect(first(later)).not.toBe('trailer.brakes');
  });

  test('the rating of an extension that was told', () => {
    const facts = { ...trailer, 'trailer.dryTongueWeight': '330 lb', 'hitch.extension': '18 in' };
    expect(first(judge(facts))).toBe('hitch.extensionRating');
    expect(first(judge({ 'hitch.extension': '18 in' }))).toBe('hitch.extensionRating');
  });

  test('water that may freeze, before furnace and gas', () => {
    const nights = { 'trip.nights': '3', 'cylinder.fill': '20 lb' };
    for (const temperature of ['20 °F', 'at most 40 °F']) {
      expect(first(judgeCold({ ...nights, 'outside.temperature': temperature }))).toBe(
        'water.state',
      );
    }
    expect(first(judgeCold({ ...nights, 'outside.temperature': '45 °F' }))).not.toBe('water.state');
  });
});
