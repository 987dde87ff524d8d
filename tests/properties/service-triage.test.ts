import { serviceTriage } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(serviceTriage, { facts, asOf: '2026-11-01' });

const parts = serviceTriage.facts['trouble.in'].options;
const degrees = serviceTriage.facts['trouble.degree'].options;
const places = serviceTriage.facts['trailer.stands'].options;
const signs = serviceTriage.facts['danger.sign'].options;
const found = serviceTriage.facts['recall.found'].options;

const calm = { 'gas.smell': 'no', 'danger.sign': 'none' };
const trouble = (part: string, degree: string, place: string): FactsGiven => ({
  ...calm,
  'trouble.in': part,
  'trouble.degree': degree,
  'trailer.stands': place,
});
const every = parts.flatMap((part) =>
  degrees.flatMap((degree) => places.map((place) => [part, degree, place] as const)),
);

/** Mildest first. */
const ways = ['do-it-yourself', 'book-with-dealer', 'nearest-shop', 'stop-now', 'out-then-call'];
const wayOf = (facts: FactsGiven): string => {
  const { among } = judge(facts).choices['triage.path'] ?? { among: [] };
  expect(among).toHaveLength(1);
  return among[0] ?? '';
};
const worse = (facts: FactsGiven): number => ways.indexOf(wayOf(facts));

/**
 * What must be stop, told apart from the table: what holds the trailer on the road fails or grows
 * worse; it sways; a part that may open, fall or go dark does so on the road; gas or 120 volts burn
 * badly; it stands with a slide-out or jack that will not come in.
 */
function dangerous(part: string, degree: string, place: string): boolean {
  const bad = degree === 'fails' || degree === 'worsens';
  const rolling = ['wheel-or-hub', 'tire', 'brakes', 'coupling', 'frame-or-suspension'];
  if (rolling.includes(part)) return bad;
  if (part === 'sway') return degree !== 'upkeep';
  if (part === 'gas-appliance' || part === 'shore-power') return degree === 'worsens';
  const opens = ['lights', 'doors-or-awning', 'slide-or-jacks'];
  if (place === 'on-the-road')
    return (opens.includes(part) && bad) || (part === 'twelve-volt' && degree === 'fails');
  return part === 'slide-or-jacks' && place === 'at-camp' && degree === 'fails';
}

test('every combination of part, degree and place comes to one of the four ways', () => {
  const four = new Set(every.map((told) => wayOf(trouble(...told))));
  expect([...four].toSorted()).toEqual(ways.slice(0, 4).toSorted());
});

test('no dangerous combination is anything milder than stop, and no other is a stop', () => {
  for (const told of every) {
    const { outcome } = judge(trouble(...told));
    if (dangerous(...told)) expect(outcome, told.join(', ')).toBe('stop-now');
    else expect(outcome, told.join(', ')).not.toBe('stop-now');
  }
});

test('what gas, 120 volts, brakes, hubs or frame need is never left to the owner’s own hands', () => {
  const others = ['gas-appliance', 'shore-power', 'brakes', 'wheel-or-hub', 'frame-or-suspension'];
  for (const [part, degree, place] of every) {
    if (others.includes(part)) expect(wayOf(trouble(part, degree, place))).not.toBe(ways[0]);
  }
});

test('on the road it is never milder than at home, and failing never milder than steady', () => {
  for (const [part, degree] of every) {
    const [road, camp, home] = places.map((place) => worse(trouble(part, degree, place)));
    expect(road).toBeGreaterThanOrEqual(camp ?? 0);
    // Standing, some things wait for a shop on the way; at home there is time to book.
    if (!['lights', 'twelve-volt'].includes(part)) expect(camp).toBeGreaterThanOrEqual(home ?? 0);
  }
  for (const part of parts) {
    for (const place of places) {
      const [fails, worsens, steady, upkeep] = degrees.map((degree) =>
        worse(trouble(part, degree, place)),
      );
      expect(Math.max(fails ?? 0, worsens ?? 0)).toBeGreaterThanOrEqual(steady ?? 9);
      expect(steady).toBeGreaterThanOrEqual(upkeep ?? 9);
    }
  }
});

describe('whatever else is in order', () => {
  const stops: readonly [string, FactsGiven, string][] = [
    ['gas or an alarm', { 'gas.smell': 'yes' }, 'out-then-call'],
    ...signs
      .filter((sign) => sign !== 'none')
      .map((sign): [string, FactsGiven, string] => [sign, { 'danger.sign': sign }, 'stop-now']),
    ['a recall that says not to drive', { 'recall.found': 'do-not-drive' }, 'stop-now'],
    ['an alarm that sounds', { 'alarm.heard': 'sounds' }, 'out-then-call'],
    ['all hubs hot', { 'hub.hottest': '255 °F', 'hub.coolest': '250 °F' }, 'stop-now'],
    ['a hub far over its mates', { 'hub.hottest': '230 °F', 'hub.coolest': '150 °F' }, 'stop-now'],
    ['a tire run flat', { 'tire.softest': '60 psi', 'tire.mates': '80 psi' }, 'stop-now'],
  ];

  test.each(stops)('%s is stop, in every combination', (_, sign, way) => {
    for (const told of every) {
      const facts = { ...trouble(...told), ...sign };
      expect(judge(facts).outcome).toBe('stop-now');
      expect(wayOf(facts)).toBe(way);
    }
  });

  test('a danger nobody asked about, or nobody knows of, is never all right and never mere care', () => {
    for (const told of every) {
      for (const fact of ['gas.smell', 'danger.sign']) {
        const { [fact]: _silent, ...unasked } = trouble(...told);
        const { outcome } = judge(unasked);
        expect(['need-not-stop-if', 'cannot-say', 'stop-now'], told.join(', ')).toContain(outcome);
      }
    }
    expect(judge({ 'trouble.in': 'gas-appliance', 'trouble.degree': 'fails' }).outcome).toBe(
      'cannot-say',
    );
    for (const told of every) {
      for (const fact of ['gas.smell', 'danger.sign']) {
        const { outcome } = judge({ ...trouble(...told), [fact]: 'unknown' });
        expect(['cannot-say', 'stop-now']).toContain(outcome);
      }
    }
  });

  test('a part, degree or place nobody told: never milder than what it may be', () => {
    for (const told of every) {
      for (const fact of ['trouble.in', 'trouble.degree', 'trailer.stands']) {
        const index = ['trouble.in', 'trouble.degree', 'trailer.stands'].indexOf(fact);
        const may = every.some(
          (other) =>
            other.every((word, i) => i === index || word === told[i]) && dangerous(...other),
        );
        const { outcome } = judge({ ...trouble(...told), [fact]: 'unknown' });
        if (may) expect(['cannot-say', 'stop-now']).toContain(outcome);
      }
    }
  });
});

test('paper only ever sends it to the dealer: never milder for a recall or a warranty', () => {
  for (const told of every) {
    const facts = trouble(...told);
    for (const recall of found) {
      for (const length of ['1 yr', '5 yr']) {
        const more = { 'recall.found': recall, 'trailer.owned': '2 yr', 'warranty.length': length };
        expect(worse({ ...facts, ...more })).toBeGreaterThanOrEqual(worse(facts));
      }
    }
  }
});

test('said aloud it tells which way to go, not only that somebody should look', () => {
  for (const told of every) {
    const { outcome, sentence, findings } = judge(trouble(...told));
    const found = findings.find(({ id }) => id === 'trouble');
    const said = outcome === 'need-not-stop-if' ? found?.proviso : found?.says;
    if (outcome !== 'see-to-it-yourself') expect(sentence).toContain(said);
  }
});

test('each sign of danger has a sentence of its own, said first, and nothing milder after it', () => {
  const firsts = signs
    .filter((sign) => sign !== 'none')
    .map((sign) => {
      const facts = { ...trouble('tire', 'steady', 'on-the-road'), 'danger.sign': sign };
      const { sentence, findings } = judge({ ...facts, 'hub.hottest': '260 °F' });
      const wrong = findings.find(({ id }) => id === 'danger')?.wrong ?? '';
      expect(sentence.startsWith(wrong)).toBe(true);
      expect(sentence).not.toMatch(/nearest|book|hub/i);
      return wrong;
    });
  expect(new Set(firsts).size).toBe(firsts.length);
  for (const first of firsts) expect(first.split(/[.:,]/)[0]?.length).toBeLessThan(60);
});

test('upkeep is never a reason that it must not roll', () => {
  for (const part of parts) {
    for (const place of places) {
      const { outcome, sentence } = judge(trouble(part, 'upkeep', place));
      expect(['see-to-it-yourself', 'have-it-seen-to']).toContain(outcome);
      expect(sentence).not.toMatch(/not roll|no further|tow it no/i);
    }
  }
});

const order = [
  'see-to-it-yourself',
  'have-it-seen-to',
  'need-not-stop-if',
  'cannot-say',
  'stop-now',
];
const steady = trouble('furniture', 'upkeep', 'at-home');
const degree = fc.integer({ min: 40, max: 400 });

test('the farther one hub stands off, the worse; which of the two was told first does not matter', () => {
  fc.assert(
    fc.property(degree, degree, fc.integer({ min: 0, max: 200 }), (a, b, more) => {
      const [hot, cool] = [Math.max(a, b), Math.min(a, b)];
      const at = (one: number, other: number) =>
        judge({ ...steady, 'hub.hottest': `${one} °F`, 'hub.coolest': `${other} °F` });
      const level = (one: number, other: number) => order.indexOf(at(one, other).outcome);
      expect(level(hot + more, cool)).toBeGreaterThanOrEqual(level(hot, cool));
      expect(level(cool, hot)).toBe(level(hot, cool));
      const apart = hot - cool;
      const isStop = apart >= 75 || hot >= 250;
      const isCare = apart >= 40 || hot >= 180;
      const wanted = isStop ? 'stop-now' : isCare ? 'have-it-seen-to' : order[0];
      expect(at(hot, cool).outcome).toBe(wanted);
    }),
    { numRuns: 100, seed },
  );
});

const asRows = (readings: readonly number[]): FactsGiven => ({
  ...steady,
  'hub.readings': readings.map((each) => ({ temperature: `${each} °F` })),
});

test('hubs told one by one say the same in any order, and two of them the same as two numbers', () => {
  const some = fc.array(degree, { minLength: 2, maxLength: 6 });
  fc.assert(
    fc.property(some, (readings) => {
      const { outcome } = judge(asRows(readings));
      expect(judge(asRows(readings.toReversed())).outcome).toBe(outcome);
      const [a = 0, b = 0] = readings;
      const two = { ...steady, 'hub.hottest': `${a} °F`, 'hub.coolest': `${b} °F` };
      expect(judge(asRows([a, b])).outcome).toBe(judge(two).outcome);
    }),
    { numRuns: 100, seed },
  );
});

test('one hub far over its mates is stop among any number of them; one far under them is a brake', () => {
  const mates = fc.array(fc.integer({ min: 100, max: 130 }), { minLength: 3, maxLength: 5 });
  fc.assert(
    fc.property(mates, fc.integer({ min: 0, max: 5 }), (alike, at) => {
      const hot = alike.toSpliced(at, 0, 205);
      expect(judge(asRows(hot)).outcome).toBe('stop-now');
      const cold = alike.map((each) => each + 40).toSpliced(at, 0, 60);
      expect(judge(asRows(cold)).outcome).toBe('have-it-seen-to');
    }),
    { numRuns: 100, seed },
  );
});

test('Fahrenheit or Celsius, psi or kilopascal: the verdict is the same', () => {
  fc.assert(
    fc.property(degree, degree, fc.integer({ min: 20, max: 80 }), (a, b, soft) => {
      const us = {
        ...steady,
        'hub.hottest': `${a} °F`,
        'hub.coolest': `${b} °F`,
        'tire.softest': `${soft} psi`,
        'tire.mates': '80 psi',
      };
      const celsius = (f: number) => ({ lo: (f - 32) / 1.8, hi: (f - 32) / 1.8, unit: '°C' });
      const metric = { ...us, 'hub.hottest': celsius(a), 'hub.coolest': celsius(b) };
      expect(judge(metric).outcome).toBe(judge(us).outcome);
    }),
    { numRuns: 100, seed },
  );
});

test('a hub whose mates nobody measured is never all right', () => {
  const { outcome } = judge({ ...steady, 'hub.hottest': '150 °F', 'hub.printedLimit': '250 °F' });
  expect(outcome).toBe('cannot-say');
});
