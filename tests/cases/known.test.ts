import { topics } from '@tarebook/rules';
import { answerNow, formsOf, knownOf } from '@tarebook/rules/engine';
import { gasSupply } from '@tarebook/rules/gas-supply';
import { towFit } from '@tarebook/rules/tow-fit';
import { describe, expect, test } from 'vitest';
import { readFiled } from './filed';

import { casesFolder, markdownBelow, refusedFolder } from './files';

const asOf = '2026-11-01';

describe('what can be said though the verdict cannot', () => {
  test('is what the two figures that were told come to, on the ticket as on the phone', () => {
    const facts = { 'vehicle.maxTrailerWeight': '5000 lb', 'trailer.dryWeight': '4300 lb' };
    const known = knownOf(towFit, { facts, asOf });
    expect(known).toBe(
      'A trailer of 4,300 lb empty comes to about 4,816 lb on the road. The rating of 5,000 lb must hold that.',
    );
    const { forms } = formsOf(towFit, { facts, asOf });
    expect(forms.ticket).toBe(`Cannot say\n${known}`);
    expect(forms.spoken).toMatch(
      /^For that, [^.]+ must be known first\. A trailer of 4,300 pounds empty comes to about 4,816 pounds/,
    );
  });

  test('is in the units of whoever asks', () => {
    const facts = { 'vehicle.maxTrailerWeight': '2268 kg', 'trailer.dryWeight': '1950 kg' };
    expect(knownOf(towFit, { facts, asOf, units: 'metric' })).toMatch(
      /^A trailer of 1,950 kg empty comes to about 2,18\d kg on the road\./,
    );
  });

  test('is the rule where nothing can be made of what was told', () => {
    const facts = { 'supply.point': 'after-regulator' };
    const rules = Object.values(gasSupply.everybody ?? {}).map(({ rule }) => rule);
    expect(rules).toContain(knownOf(gasSupply, { facts, asOf }));
  });

  test.each(Object.values(topics).map((topic) => ({ id: topic.id, topic })))(
    '$id: is no rule where nothing was told, though a list that holds for all is said',
    ({ topic }) => {
      const known = knownOf(topic, { facts: {}, asOf });
      const { ticket } = formsOf(topic, { facts: {}, asOf }).forms;
      expect(ticket).toContain(known);
      expect(Object.values(topic.everybody ?? {}).map(({ rule }) => rule)).not.toContain(known);
    },
  );

  test('is nothing where the verdict stands, and no figure that the ticket lacks where it does not', () => {
    let open = 0;
    for (const { name, text } of markdownBelow(casesFolder, refusedFolder)) {
      const { front, facts, troubles } = readFiled(text);
      const topic = Object.values(topics).find(({ id }) => id === front.topic);
      if (!topic || troubles.length > 0) continue;
      const asked = { facts, asOf: front.asOf ?? asOf };
      const known = knownOf(topic, asked, { asking: front.asking });
      if (answerNow(topic, asked).outcome !== topic.outcomes.unknown.id) {
        expect(known, name).toBe('');
      } else if (known !== '') {
        open += 1;
        expect(formsOf(topic, asked, { asking: front.asking }).forms.ticket, name).toContain(known);
      }
    }
    expect(open).toBeGreaterThan(40);
  });
});
