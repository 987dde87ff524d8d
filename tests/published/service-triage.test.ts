import { serviceTriage } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';

const judge = (facts: FactsGiven) => answerNow(serviceTriage, { facts, asOf: '2026-11-01' });
const calm = { 'gas.smell': 'no', 'danger.sign': 'none' };
const wayOf = (facts: FactsGiven) => judge(facts).choices['triage.path']?.among;

/** Each pattern stands in the text, one after the other. */
function inOrder(text: string, patterns: readonly RegExp[]): void {
  let from = 0;
  for (const pattern of patterns) {
    const at = text.slice(from).search(pattern);
    expect(at, `${pattern} after “${text.slice(0, from)}” in “${text}”`).toBeGreaterThanOrEqual(0);
    from += at + 1;
  }
}

/**
 * 49 CFR part 396, appendix A, minimum periodic inspection standards: what must not be found on a
 * vehicle that is to be driven. Written for commercial vehicles, trailers among them; the list of
 * defects is from memory, in our own words.
 */
describe('what the federal inspection standards do not let onto the road is stop', () => {
  test.each([
    ['brakes: no braking action when applied', 'brakes', 'fails'],
    ['brakes: lines or wiring that chafe or break', 'brakes', 'worsens'],
    ['coupling: parts worn, cracked or loose in their mounting', 'coupling', 'worsens'],
    ['coupling: safety devices missing or in two', 'coupling', 'fails'],
    ['lighting: a required lamp that does not burn', 'lights', 'fails'],
    ['suspension: U-bolts or hangers cracked, loose or gone', 'frame-or-suspension', 'fails'],
    ['frame: members cracked, broken, loose or sagging', 'frame-or-suspension', 'worsens'],
    ['tires: flat, a leak that is heard, cords that show', 'tire', 'fails'],
    ['tires: a bulge that grows', 'tire', 'worsens'],
    ['wheels: cracked, or fasteners loose or gone', 'wheel-or-hub', 'fails'],
  ])('%s', (_, part, degree) => {
    const facts = {
      ...calm,
      'trouble.in': part,
      'trouble.degree': degree,
      'trailer.stands': 'on-the-road',
    };
    expect(judge(facts).outcome).toBe('stop-now');
    expect(wayOf(facts)).toEqual(['stop-now']);
  });

  test('and a fastener found loose is stop though nobody has told what it belongs to', () => {
    expect(judge({ 'danger.sign': 'loose' }).outcome).toBe('stop-now');
  });
});

/**
 * 49 CFR 396.7: an unsafe vehicle found on the road may go on only to the nearest place where it can
 * safely be mended, and only if that is less hazardous than to stay. From memory.
 */
test.each(['wheel-or-hub', 'tire', 'brakes', 'coupling', 'frame-or-suspension'])(
  'in between, what holds it on the road goes to the nearest shop and no further: %s',
  (part) => {
    const facts = { ...calm, 'trouble.in': part, 'trouble.degree': 'steady' };
    expect(wayOf({ ...facts, 'trailer.stands': 'on-the-road' })).toEqual(['nearest-shop']);
    expect(judge({ ...facts, 'trailer.stands': 'on-the-road' }).sentence).toMatch(
      /nearest .*no further/,
    );
  },
);

/**
 * U.S. Consumer Product Safety Commission, safety sheets on carbon monoxide: when the alarm sounds,
 * at once outside to fresh air; then the emergency number; nobody back in before the responders say
 * so. From memory.
 */
test.each<[string, FactsGiven]>([
  ['an alarm that sounds', { 'alarm.heard': 'sounds' }],
  ['an alarm that sounds, told as one thing with the smell', { 'gas.smell': 'yes' }],
])('%s: out, then the emergency number, nobody back in', (_, facts) => {
  inOrder(judge(facts).sentence, [
    /^Everybody out/,
    /call the emergency number/,
    /do not go back in/i,
  ]);
});

/**
 * National Fire Protection Association, safety tip sheet on propane: leave at once, no switches, no
 * flames, shut the supply if that is safe, call from outside. From memory.
 */
test('gas that is smelled: out before anything, no switch or flame, the call from away', () => {
  const { sentence } = judge({ 'gas.smell': 'yes', 'trouble.in': 'gas-appliance' });
  inOrder(sentence, [
    /^Everybody out/,
    /no switch|touch no switch/,
    /flame/,
    /cylinder/,
    /well away/,
  ]);
  expect(sentence).not.toMatch(/light|try again|screw/i);
});

/**
 * U.S. Fire Administration, on smoke and carbon monoxide alarms: a single chirp at intervals is a low
 * battery or an alarm past its life; an alarm past the date on its back is replaced. From memory.
 */
test('an alarm that chirps asks for a battery and its date, and is no evacuation', () => {
  const { outcome, findings, choices } = judge({ ...calm, 'alarm.heard': 'chirps' });
  expect(outcome).toBe('need-not-stop-if');
  expect(choices['alarm.means']?.among).toEqual(['the-alarm-itself']);
  expect(findings.find(({ id }) => id === 'alarm')?.says).toMatch(/battery.*date/);
});

/**
 * 29 CFR 1910.177: a tire that ran at 80 percent of its recommended pressure or less comes off before
 * it is filled. From memory.
 */
test.each([
  ['64 psi', 'stop-now'],
  ['64.1 psi', 'have-it-seen-to'],
])('%s where its mates have 80: %s', (softest, outcome) => {
  const facts = { ...calm, 'trouble.in': 'tire', 'trouble.degree': 'upkeep' };
  const found = judge({ ...facts, 'tire.softest': softest, 'tire.mates': '80 psi' });
  expect(found.outcome).toBe(outcome);
});
