import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { topics } from '@tarebook/rules';
import { describe, expect, test } from 'vitest';
import { BadInput } from './files';
import { rigAsJson, rigAsText, rigOf } from './rig';
import { replayedRigAsText, replayRig, savedRig } from './rig-saved';

const file = fileURLToPath(
  new URL('../../../cases/rig/leaving-and-coming-home.md', import.meta.url),
);
const text = readFileSync(file, 'utf8');
const plain = { everybody: false, forms: false };
const judged = (only?: string) => rigOf(file, text, {}, topics, only);

describe('a whole rig on the command line', () => {
  test('the worst comes first, with its moment, and what it is at the others', () => {
    const said = rigAsText(judged(), plain, topics).split('\n');
    expect(said[2]).toBe('DOES NOT FIT · Tow fit, home (leaving: fits with care)');
    expect(said[3]).toBe('  The trailer does not fit. The tow rating is exceeded by 70 lb.');
    expect(said.join('\n')).toContain('Nothing told decides in: Hitch setup');
  });

  test('one topic of it, and of one in which nothing is decided what it would want', () => {
    const one = rigAsText(judged('tow-fit'), plain, topics);
    expect(one).toContain('DOES NOT FIT · Tow fit');
    expect(one).not.toContain('Sway');
    expect(rigAsText(judged('gas-supply'), plain, topics)).toContain('it would want');
  });

  test('forms are those of one topic; without one the sentence says how to name it', () => {
    const forms = { everybody: false, forms: true };
    expect(rigAsText(judged('tow-fit'), forms, topics)).toContain('Spoken');
    expect(() => rigAsText(judged(), forms, topics)).toThrow('--topic tow-fit');
    const json = JSON.parse(JSON.stringify(rigAsJson(judged('tow-fit'), forms, topics)));
    expect(json.answers).toHaveLength(1);
    expect(json.answers[0].forms.spoken).toContain('exceeded by 70 pounds');
  });

  test('a topic that is none is told with the nearest', () => {
    expect(() => judged('tow-fti')).toThrow(BadInput);
    expect(() => judged('tow-fti')).toThrow('Did you mean tow-fit?');
  });

  test('saved as JSON it runs again to the last digit, and a changed figure is told', async () => {
    const saved = JSON.stringify(rigAsJson(judged('tow-fit'), plain, topics));
    const again = await replayRig('saved.json', savedRig(saved) ?? [], topics);
    expect(again.map(({ same, moment }) => [same, moment])).toEqual([[true, 'home']]);
    expect(replayedRigAsText(again)).toContain('SAME RESULT');
    const other = saved.replaceAll('"lo":5070.48', '"lo":5070.49');
    expect(other).not.toBe(saved);
    const [changed] = await replayRig('saved.json', savedRig(other) ?? [], topics);
    expect(changed?.same).toBe(false);
    expect(savedRig('{"topic":"tow-fit"}')).toBeUndefined();
    expect(savedRig('[1')).toBeUndefined();
  });

  test('where nothing is decided, what was told is about something, and that says what it wants', () => {
    const one = '---\ntitle: R\ntopic: rig\n---\n\n| Fact | Value |\n| --- | --- |\n';
    const told = [one, '| `vehicle.maxTongueCarried` | 350 lb |\n'].join('');
    const said = rigAsText(rigOf('-', told, {}, topics), plain, topics);
    expect(said).toContain('Nothing told decides anything yet.');
    expect(said).toMatch(/To say more, these would want\n {2}– Tow fit: /);
    const nothing = '---\ntitle: R\ntopic: rig\n---\n\nNothing.\n';
    expect(rigAsText(rigOf('-', nothing, {}, topics), plain, topics)).not.toContain('To say more');
  });
});
