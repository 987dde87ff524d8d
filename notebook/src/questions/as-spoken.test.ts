import { personalIn } from '@tarebook/record';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asSpoken, easyWords, mostWords } from './as-spoken';
import { subjectOf } from './spoken-bare';

const seed = { seed: Number(process.env.TAREBOOK_SEED ?? 20_261_129) };
const count = (text: string): number => text.split(' ').length;

test.each([
  [
    'Mon 4:35 - Ray Pruitt. Backed into a post, dent in rear corner abt 8 inches, no water yet. Should he go thru insurance, deductable is 500, and will we fix it',
    'Backed into a post, dent in rear corner abt 8 inches, no water yet. Should he go thru insurance, deductable is 500, and will we fix it?',
  ],
  [
    'Mon 5:02 - lady, no name. battery panel shows 12.1 volts this morning, was 12.7 last night. Ran furnace all night. Is the battery bad?',
    'Battery panel shows 12.1 volts this morning, was 12.7 last night. Ran furnace all night. Is the battery bad?',
  ],
  [
    'Tue 9:20 am - Mr. Alvarez 555-0177, call back after 3. Axle tag says 5,200 lb each, scale showed 10,150 on the axles. Is that too close or is he ok to go Friday',
    'Axle tag says 5,200 lb each, scale showed 10,150 on the axles. Is that too close or is he ok to go Friday?',
  ],
  [
    'Thurs 10:40, Bob Trent from the hardware store. Tongue jack wont go up, fuse ok. Can he crank it by hand?',
    'Tongue jack wont go up, fuse ok. Can he crank it by hand?',
  ],
  [
    'Tue 10:05 - woman from Fern Street. Breakers trip when she runs microwave and AC together. normal?',
    'Breakers trip when she runs microwave and AC together. Normal?',
  ],
  [
    'Wed 2:15pm - Mrs. Kowalski (555-0199) wants to know if her 30 gal fresh tank will last four days. Call her at home after 5',
    'Somebody wants to know if her 30 gal fresh tank will last four days.',
  ],
  [
    '@djt_hauls: Can i pull it with a half ton?? mine is rated 7700',
    'Can I pull it with a half ton? Mine is rated 7700.',
  ],
  ['Mon 4:35 - My hub is hot. Can I go?', 'My hub is hot. Can I go?'],
  [
    'Fri 8:50a - Dan (no last name) 555-0110. left hub too hot to touch. can he limp home',
    'Left hub too hot to touch. Can he limp home?',
  ],
  ['Can I plug it in? Priya', 'Can I plug it in?'],
  ['Can I plug it in? My hose is short. Bev and Stan', 'Can I plug it in? My hose is short.'],
  ['Is it the hub? Maybe', 'Is it the hub?'],
])('nobody hears who asked, or when: %s', (told, heard) => {
  expect(asSpoken(told)).toBe(heard);
  expect(personalIn(heard)).toEqual([]);
});

test.each([
  [
    'Hello, We plan to dry camp two nights in October with one 100 amp-hour lead acid battery. Furnace blower draws 7 amps and I guess it would run about half of the time overnight, 10 hours. Will the battery make it through the night?',
    { told: ['100 amp-hour', 'lead acid', '7 amps', 'half of the time', '10 hours'] },
    ['100 amp-hour', '7 amps', 'half of the time', '10 hours', 'Will the battery make it'],
  ],
  [
    'hey all at sallowbridge, can I tow your 24 footer with my half ton? truck says max tow 7600, trailer gvwr is 6800 and dry is 5350. dealer in the next town said no problemo',
    { told: ['7600', '6800', '5350'] },
    ['Can I tow', '7600', '6800', '5350'],
  ],
  [
    'Hi, our trailer has the low pressure quick connect on the side and we bought a little table top grill that has its own regulator for the 1 lb bottles. Can I just get a hose and plug it in to the side port? My brother in law says take the regulator off. Thanks! Priya',
    { told: ['low pressure quick connect'], because: ['hose', 'grill', 'regulator'] },
    ['grill', 'plug it in to the side port?'],
  ],
  [
    'We are putting the camper up for winter this weekend, do we have to blow out the lines AND put in the pink antifreeze or is one enough. And what about the water heater, do i fill that too? its 6 gal.',
    {},
    [
      'Do we have to blow out',
      'is one enough?',
      'what about the water heater, do I fill that too?',
    ],
  ],
  [
    'Howdy folks, long time listener. Just bought a used 26 foot bunkhouse, gvwr 7,400, and I pull with a crossover that is rated 5,000 lbs. The seller swore up and down it would be fine because it is mostly empty. Can I pull it home 40 miles on back roads?',
    { told: ['gvwr 7,400', 'rated 5,000 lbs'], answer: 'It is 7,400 lb, more than the 5,000 lb.' },
    ['gvwr 7,400', 'crossover that is rated 5,000 lbs', 'Can I pull it home'],
  ],
  [
    'I have read that payload is all that matters. My door label says 1,390 lb. My wife and I weigh 360 together, the hitch is 75, and the loaded tongue was 655 on your scale last Saturday. We would like to bring two bikes (70 lb) and firewood. How much firewood can we still put in?',
    { told: ['1,390 lb', '360', '655'], answer: 'It comes to 655 lb.' },
    ['1,390 lb', 'My wife and I weigh 360', '655', 'How much firewood'],
  ],
  [
    'we are buying a 2020 Osier from a neighbor of ours, no paperwork. How do i find out what it can carry? Empty sticker is gone but the yellow one by the door says 1,214 lbs cargo',
    { told: ['1,214 lbs'], because: ['sticker'] },
    ['We are buying a 2020 Osier', 'what it can carry?', '1,214'],
  ],
  [
    'i have a 2015 half ton with the tow package and want to pull a trailer that weighs 6200 loaded with my wife and two kids and a dog door sticker says 1520 is that ok or am i over',
    { told: ['6200', '1520'] },
    ['ull a trailer that weighs 6200', '1520', 'is that ok or am I over?'],
  ],
])('what the answer hangs on is heard, and what it asks: %s', (told, more, parts) => {
  const heard = asSpoken(told, more);
  for (const each of parts) expect(heard).toContain(each);
  expect(count(heard)).toBeLessThanOrEqual(mostWords);
  expect(heard).not.toMatch(/hello|howdy|thanks|Priya|no problem|swore|\bi\b/u);
});

test('what stands over a message is not glued on, and is said where nothing else tells what is meant', () => {
  const tongue = 'tongue weight\nMy loaded trailer weighed 6150 lbs. Is 560 on the tongue enough?';
  expect(asSpoken(tongue.replace('\n', ' '), { subject: subjectOf(tongue) })).toBe(
    'My loaded trailer weighed 6150 lbs. Is 560 on the tongue enough?',
  );
  const heater = 'water heater\nHow do I drain it?';
  expect(asSpoken(heater.replace('\n', ' '), { subject: subjectOf(heater) })).toBe(
    'Water heater: How do I drain it?',
  );
  expect(subjectOf('Hello there\nHow do I drain it?')).toBe('');
});

test('a second question brings what it points back at', () => {
  const before = ['My trailer weighed 6150 lbs. It sways when semis pass me. Is 560 enough?'];
  expect(asSpoken('Should I move the bikes to the back bumper?', { before })).toBe(
    'My trailer weighed 6150 lbs. It sways when semis pass me. Should I move the bikes to the back bumper?',
  );
  expect(
    asSpoken('and what options can you get on it', {
      before: ['does the new 22 come with the kitchen?'],
    }),
  ).toBe('Does the new 22 come with the kitchen? And what options can you get on it?');
  expect(
    asSpoken('And where do I read the date of a tire?', { before, because: ['tire'] }),
  ).not.toMatch(/^And/);
});

test('however a message runs on, its question is heard, in few words', () => {
  const words = fc.constantFrom(
    'trailer',
    'and',
    'with',
    'the',
    'weighs',
    '6200',
    'Is',
    'it',
    'ok?',
    'Yes.',
    'but,',
  );
  fc.assert(
    fc.property(fc.array(words, { minLength: 1, maxLength: 120 }), (said) => {
      const heard = asSpoken(said.join(' '));
      expect(heard).not.toBe('');
      expect(count(heard)).toBeLessThanOrEqual(mostWords + 1);
    }),
    { ...seed, numRuns: 300 },
  );
  expect(asSpoken('What psi?')).toBe('What psi?');
  expect(count(asSpoken('word '.repeat(60)))).toBe(easyWords + 1);
  // Whoever is named beside family, or said something, is somebody.
  expect(asSpoken('My husband Frank bought it. Frank says it is old. Is it?')).toBe(
    'My husband bought it. Somebody says it is old. Is it?',
  );
  expect(asSpoken('Sticker says 1480. Is that all?')).toBe('Sticker says 1480. Is that all?');
  expect(easyWords).toBeLessThan(mostWords);
});
