import { weighIn } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(weighIn, { facts, asOf: '2026-11-01' });

const rigs = fc.record({
  front: fc.integer({ min: 2000, max: 5000 }),
  rear: fc.integer({ min: 2000, max: 5000 }),
  tongue: fc.integer({ min: 200, max: 1500 }),
  trailer: fc.integer({ min: 3000, max: 9000 }),
  restored: fc.integer({ min: 0, max: 100 }),
  step: fc.constantFrom(5, 10, 20, 50),
});
const [w, b, l] = [140, 50, 220];
type Rig = typeof rigs extends fc.Arbitrary<infer R> ? R : never;

/** What a perfect scale would show, pass by pass. */
function truth({ front, rear, tongue, trailer, restored }: Rig) {
  const r = restored / 100;
  const [ontoFront, ontoTrailer] = [(r * tongue * b) / w, (r * tongue * b) / (l + b)];
  const slack = [front - (tongue * b) / w, rear + tongue * (1 + b / w), trailer - tongue] as const;
  return {
    alone: [front, rear] as const,
    slack,
    tight: [
      slack[0] + ontoFront,
      slack[1] - ontoFront - ontoTrailer,
      slack[2] + ontoTrailer,
    ] as const,
  };
}

const places = ['front', 'rear', 'trailer'] as const;
function tickets(rig: Rig, passes: readonly ('alone' | 'slack' | 'tight')[]): FactsGiven {
  const weights = truth(rig);
  const print = (value: number) => `${Math.round(value / rig.step) * rig.step} lb`;
  return {
    'scale.step': `${rig.step} lb`,
    'vehicle.wheelbase': `${w} in`,
    'vehicle.overhang': `${b} in`,
    'trailer.ballToAxle': `${l} in`,
    ...Object.fromEntries(
      passes.flatMap((pass) =>
        weights[pass].map((value, i) => [`${pass}.${places[i]}`, print(value)]),
      ),
    ),
  };
}

const holds = ({ lo, hi }: { lo: number; hi: number }, value: number): void => {
  expect(lo).toBeLessThanOrEqual(value + 1e-6);
  expect(hi).toBeGreaterThanOrEqual(value - 1e-6);
};

test('what is true lies within what is told, by three passes or by two', () => {
  fc.assert(
    fc.property(rigs, (rig) => {
      for (const passes of [
        ['alone', 'slack', 'tight'],
        ['alone', 'tight'],
        ['alone', 'slack'],
      ] as const) {
        const { values } = judge(tickets(rig, passes));
        holds(values['tongue.weighed'], rig.tongue);
        holds(values['trailer.weighed'], rig.trailer);
        holds(values['vehicle.weighed'], rig.front + rig.rear + rig.tongue);
        if (passes[1] === 'slack' && passes.length === 2) continue;
        holds(values['bars.restoredWeighed'], rig.restored / 100);
      }
    }),
    { numRuns: 100, seed },
  );
});

test('true tickets are never refused', () => {
  fc.assert(
    fc.property(rigs, (rig) => {
      const answer = judge(tickets(rig, ['alone', 'slack', 'tight']));
      const refused = answer.findings.filter(
        ({ id, level }) => id.startsWith('ticket-') && level !== 'ok',
      );
      expect(refused).toEqual([]);
    }),
    { numRuns: 100, seed },
  );
});

test('tight bars hide from the vehicle what they put on the trailer’s axles, and two passes find it again', () => {
  fc.assert(
    fc.property(rigs, (rig) => {
      const { tight, alone, slack } = truth(rig);
      const exactly = (value: number) => ({ lo: value, hi: value, unit: 'lb' });
      const { values } = judge({
        ...tickets(rig, ['alone']),
        'scale.step': '0 lb',
        'alone.front': exactly(alone[0]),
        'alone.rear': exactly(alone[1]),
        'tight.front': exactly(tight[0]),
        'tight.rear': exactly(tight[1]),
        'tight.trailer': exactly(tight[2]),
      });
      const middle = ({ lo, hi }: { lo: number; hi: number }) => (lo + hi) / 2;
      const hidden = middle(values['tongue.weighed']) - middle(values['tongue.apparent']);
      expect(hidden).toBeCloseTo(tight[2] - slack[2], 4);
      expect(middle(values['tongue.weighed'])).toBeCloseTo(rig.tongue, 4);
    }),
    { numRuns: 100, seed },
  );
});

test('a finer scale never tells less', () => {
  fc.assert(
    fc.property(rigs, (rig) => {
      const told = tickets(rig, ['alone', 'slack', 'tight']);
      const width = (step: number) => {
        const { lo, hi } = judge({ ...told, 'scale.step': `${step} lb` }).values['tongue.weighed'];
        return hi - lo;
      };
      expect(width(rig.step / 2)).toBeLessThan(width(rig.step));
    }),
    { numRuns: 50, seed },
  );
});

test('a rig no heavier than its vehicle alone is refused, and nothing is read off its tickets', () => {
  const reading = fc.integer({ min: 0, max: 4000 });
  fc.assert(
    fc.property(reading, reading, reading, reading, reading, (f2, r2, t2, f3, r3) => {
      const answer = judge({
        'slack.front': `${f2} lb`,
        'slack.rear': `${r2} lb`,
        'slack.trailer': `${t2} lb`,
        'alone.front': `${f3} lb`,
        'alone.rear': `${r3} lb`,
      });
      const level = answer.findings.find(({ id }) => id === 'ticket-parts')?.level;
      expect(level).toBe(f2 + r2 + t2 <= f3 + r3 ? 'stop' : 'ok');
      if (level !== 'stop') return;
      expect(answer.outcome).toBe('does-not-weigh-in');
      const least = [
        ['tongue.weighed', -Infinity],
        ['trailer.weighed', 0],
        ['axle.rearWeighed', 0],
      ] as const;
      for (const [name, lo] of least) {
        // Neither an axle nor a trailer weighs less than nothing; otherwise nothing is known of it.
        expect(answer.values[name], name).toMatchObject({ lo, hi: Infinity });
      }
    }),
    { numRuns: 200, seed },
  );
});

test('without the pass alone it never weighs in', () => {
  fc.assert(
    fc.property(rigs, (rig) => {
      const answer = judge(tickets(rig, ['slack', 'tight']));
      expect(answer.outcome).not.toMatch(/^weighs-in/);
    }),
    { numRuns: 50, seed },
  );
});
