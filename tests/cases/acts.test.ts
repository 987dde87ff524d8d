import { topics } from '@tarebook/rules';
import { answerTraced, say, urgentOf } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { filedLeft, type Left } from './left';

/**
 * What somebody does next who hears only the spoken answer, or reads only the post: where something
 * stops it or calls for care, what to do about that is in it, before what else there is to know.
 */
const left = filedLeft();

/** What begins a sentence that tells somebody to do something. */
const imperative =
  /(?:^|[.:;] )(?:Add|Ask|Book|Bring|Call|Carry|Charge|Check|Count|Cover|Do not|Drain|Drive|Empty|Find|Fit|Get|Give|Have|Keep|Leave|Let|Lift|Lighten|Load|Look|Make|Measure|Move|Never|Open|Order|Pack|Plan|Pull|Put|Read|Replace|Run|See|Set|Shut|Slow|Start|Stay|Stop|Switch|Take|Tell|Tie|Try|Turn|Use|Walk|Weigh|Winterize)\b/;

/** What is to be done about what the verdict turns on, as each medium says it. */
function actsOf({ topic, answer, level }: Left, medium: 'spoken' | 'written'): readonly string[] {
  const found = answer.findings.filter((each) => each.level === level);
  const state = level === 'stop' ? 'do' : 'near';
  const limits = answer.limits.filter((each) => each.state === level);
  const spoken = (words: string) => say({ text: words }, { medium });
  return [
    ...found.flatMap(({ messages }) => (messages.do ? [say(messages.do, { medium })] : [])),
    // What is wrong may be told as what to do.
    ...found
      .map(({ messages }) => say(messages.wrong, { medium }))
      .filter((each) => imperative.test(each)),
    ...limits.flatMap(({ id }) => {
      const words = topic.limits[id]?.[state];
      return words === undefined || words.includes('{') ? [] : [spoken(words)];
    }),
    ...(limits.length > 0 && level === 'care' ? [addNothing] : []),
    ...limits.flatMap(({ id }) =>
      (topic.limits[id]?.[state]?.split(/\{[^}]*\}/) ?? []).slice(0, 1),
    ),
  ];
}

const settled = left.filter(({ level }) => level === 'stop' || level === 'care');

describe('what stops it, or calls for care', () => {
  test('is found in many', () => {
    expect(settled.length).toBeGreaterThan(200);
  });

  test.each(['spoken', 'post'] as const)('%s says what to do about it', (form) => {
    const medium = form === 'spoken' ? 'spoken' : 'written';
    const idle = settled.filter(
      (each) => !actsOf(each, medium).some((act) => act !== '' && each.forms[form].includes(act)),
    );
    expect(idle.map((each) => `${each.name}: ${each.forms[form]}`)).toEqual([]);
  });

  test('is said before a list of things to bring', () => {
    const late = settled.filter(({ level, topic, answer, forms: { spoken } }) => {
      const list = answer.selections.find(({ label }) => spoken.startsWith(`${label}: `));
      // What to do while it sways is a list, and comes first.
      const isMeant = topic.id === 'sway';
      return level === 'stop' && list && !isMeant && !urgentOf(topic, answer.findings);
    });
    expect(late.map(({ name, forms }) => `${name}: ${forms.spoken}`)).toEqual([]);
  });
});

/** Of a weight that is close, one thing is to be done whatever carries it. */
const addNothing = 'Add nothing more, and weigh the loaded rig before the trip.';
const isWeight = (id: string, limit: string): boolean =>
  topics[id] !== undefined &&
  answerTraced(topics[id], { facts: {} }).limits.some(
    (each) => each.id === limit && each.headroom.unit === 'lb',
  );

test('every limit says what to do where it is over, and where it is close', () => {
  const mute = Object.values(topics).flatMap(({ id, limits }) =>
    Object.entries(limits).flatMap(([limit, declared]) =>
      declared.do && (declared.near || isWeight(id, limit)) ? [] : [`${id}: ${limit}`],
    ),
  );
  expect(mute).toEqual([]);
});

test('no two sentences of an answer say the same', () => {
  const words = (text: string) => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  const twice = left.flatMap(({ name, forms: { spoken } }) => {
    const said = spoken.split(/(?<=[.?!])\s+/);
    return said.flatMap((each, place) => {
      const later = said.slice(place + 1);
      const within = later.find((other) => {
        const all = new Set(words(other));
        return words(each).length > 3 && words(each).every((word) => all.has(word));
      });
      return within === undefined ? [] : [`${name}: ${each} / ${within}`];
    });
  });
  expect(twice).toEqual([]);
});

test('a hitch of which nobody looked at latch, chains and cable will do only if they are right', () => {
  const silent = left.filter(
    ({ topic, answer }) =>
      topic.id === 'hitch-setup' &&
      answer.findings.some(
        ({ id, level }) => ['latch', 'chains', 'breakaway'].includes(id) && level === 'if',
      ),
  );
  expect(silent.length).toBeGreaterThan(5);
  for (const { name, answer, forms } of silent) {
    expect(answer.outcome, name).not.toMatch(/^will-do(?:-with-care)?$/);
    if (answer.outcome !== 'will-do-if') continue;
    expect(forms.spoken, name).toMatch(/latch|pinned|chains|cable/);
  }
});
