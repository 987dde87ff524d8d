import { answerNow, towFit } from '@tarebook/rules';
import { expect, test } from 'vitest';

const asOf = '2026-11-01';

/** A pin has no ball and no receiver: their ratings were told, and nothing asks for them. */
test('what was told does not call for is not said to want a rating', () => {
  const { restsOn, limits } = answerNow(towFit, {
    facts: {
      'trailer.coupling': 'fifth-wheel',
      'vehicle.maxTrailerWeight': '9,000 lb',
      'trailer.dryWeight': '6,000 lb',
      'hitch.ballRating': '8,000 lb',
      'hitch.receiverRating': '8,000 lb',
    },
    asOf,
  });
  const [wanting = '', uncalled = ''] = restsOn.split(/Not asked, /).slice(1);
  expect(wanting).toMatch(/^for want of a rating: /);
  expect(wanting).toMatch(/rear axle/);
  expect(wanting).not.toMatch(/\bball\b(?! mount)|receiver(?!’s)/);
  expect(uncalled).toMatch(/^as nothing told calls for it: .*receiver.*ball/);
  const uncalledFor = limits.flatMap((each) => (each.uncalledFor ? [each.id] : []));
  expect(uncalledFor).toEqual(['tongue', 'receiver', 'extension', 'ball']);
});
