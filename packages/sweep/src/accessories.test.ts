import { readFileSync } from 'node:fs';
import { towFit } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { type AccessoryFiles, effectOf, readAccessories } from './accessories';
import { accessoryMeant, effectSaid, fitSaid, standingSaid } from './accessory-words';
import { readCatalogue } from './catalogue';

const seed = (file: string): string =>
  readFileSync(new URL(`../../../seeds/${file}`, import.meta.url), 'utf8');
const files: AccessoryFiles = {
  'accessories.csv': seed('accessories.csv'),
  'accessory-fits.csv': seed('accessory-fits.csv'),
  'rates.csv': seed('rates.csv'),
  'floor-plans.csv': seed('floor-plans.csv'),
};
const all = readAccessories(files);
const { trailers } = readCatalogue({ 'trailers.csv': seed('trailers.csv') });
const the = (said: string) => {
  const found = accessoryMeant(all, said);
  if (!found) throw new Error(`There is no ${said}.`);
  return found;
};

test('the invented accessories, where they fit and the rate book are read whole', () => {
  expect(all.refused).toEqual([]);
  expect(all.accessories.length).toBeGreaterThan(15);
  expect(all.rates.source).toBe('invented');
});

test('a trailer with the accessory packed weighs and presses as is said', () => {
  let tried = 0;
  for (const trailer of trailers) {
    for (const accessory of all.accessories) {
      const effect = effectOf(all, accessory, trailer);
      if (!effect || effect.trailer === 0) continue;
      const length = Number(trailer.cells.ballToAxle);
      const ahead = (effect.tongue * length) / accessory.weight;
      // Something is packed in either, as what may still be packed moves the tongue too.
      const cargo = [{ label: 'Packed', weight: '10 lb', ahead: '0 ft' }];
      const facts: FactsGiven = {
        ...trailer.facts,
        'trailer.propane': '0 lb',
        'trailer.cargo': cargo,
      };
      const row = {
        label: accessory.label,
        weight: `${accessory.weight} lb`,
        ahead: `${ahead} ft`,
      };
      const value = (given: FactsGiven, id: 'tongue.loaded' | 'trailer.loaded') => {
        const { lo, hi } = answerNow(towFit, { facts: given, asOf: '2026-11-01' }).values[id];
        return (lo + hi) / 2;
      };
      if (tried % 40 === 0) {
        const packed = { ...facts, 'trailer.options': [row] };
        const tongue = value(packed, 'tongue.loaded') - value(facts, 'tongue.loaded');
        const weight = value(packed, 'trailer.loaded') - value(facts, 'trailer.loaded');
        expect(tongue, `${accessory.label} on ${trailer.name}`).toBeCloseTo(effect.tongue, 3);
        expect(weight).toBeCloseTo(effect.trailer, 3);
      }
      tried += 1;
    }
  }
  expect(tried).toBeGreaterThan(300);
});

test('from which year it fits which line, and why', () => {
  expect(fitSaid(all, the('rear-receiver'), 'osier')).toBe(
    'Receiver on the frame behind: fits the Osier line from model year 2025 on, because the frame reaches to the rear wall since then.',
  );
  expect(fitSaid(all, the('Receiver on the frame behind'), 'sallow')).toBe(
    'Receiver on the frame behind: does not fit the Sallow line; it fits Osier, Millrace, Coppice.',
  );
  expect(fitSaid(all, the('tank-mats'), 'osier')).toContain('in model years 2023 to 2025, because');
  expect(fitSaid(all, the('wheel-chocks'), 'penstock')).toContain('in every model year');
});

test('what it does to tongue and payload, and what fitting costs by whose figures', () => {
  const osier = trailers.find(({ name }) => name === 'Osier 22 Bunks');
  if (!osier) throw new Error('There is no Osier 22.');
  // 48 lb × 9 ft behind the axle / 15.5 ft from ball to axle
  expect(effectSaid(all, the('rear-receiver'), osier)).toBe(
    'On Osier 22 Bunks it takes 48 lb of what the trailer may carry and takes 28 lb off the tongue and gives as much of the payload back. A lighter tongue sways sooner: weigh it before the first trip.',
  );
  expect(effectSaid(all, the('distribution-bars'), osier)).toContain('takes 86 lb of the payload');
  expect(standingSaid(all, the('rear-receiver'))).toContain(
    '$403: 2.5 h at $145 an hour and $40 of parts, by an invented rate book',
  );
  expect(standingSaid(readAccessories(files, true), the('rear-receiver'))).toContain(
    'by the rate book of the house',
  );
  expect(standingSaid(all, the('second-cylinder-tray'))).toContain('is for licensed hands');
});

test('a table as a spreadsheet writes it: other names, units, semicolons, money', () => {
  const read = readAccessories(
    {
      'accessories.csv':
        '\ufeffPart number;Name;Weighs (kg);Ahead of axle (m);Labor;Color\r\nA-1;"Box; small";10,5;1,2;W1;red\r\n;;;;;\r\n',
      'rates.csv': 'Job,Time,Rate\nW1,long,$120\nW1,2 h,$120\nW2,90 min,$120\n',
    },
    true,
  );
  expect(read.accessories[0]?.label).toBe('Box; small');
  expect(read.accessories[0]?.weight).toBeCloseTo(23.148, 2);
  expect(read.accessories[0]?.ahead).toBeCloseTo(3.937, 2);
  expect(read.rates.rates.map(({ work, hours }) => [work, hours])).toEqual([
    ['W1', 2],
    ['W2', 1.5],
  ]);
  expect(read.refused.map(({ file, line }) => `${file}:${line}`)).toEqual(['rates.csv:2']);
});

test.each([
  ['id,label,weight,sits\na,A,heavy,tail\n', 2, /“heavy” is not a number in lb/],
  ['id,label,weight,sits\na,A,-4,tail\n', 2, /“-4” is not a number in lb from 0 to 2000/],
  ['id,label,weight,sits\na,A,4 ft,tail\n', 2, /“4 ft” is not a number in lb/],
  ['id,label,weight,sits\na,A,4,sky\n', 2, /“sky” is none of nose, front/],
  ['id,label,weight,sits\na,A,,tail\n', 2, /it has no weight/],
  ['id,label,weight,sits\na,A,4,tail\na,B,5,tail\n', 3, /stands in the file already/],
  ['id,label,weight,sits\n=cmd|x,A,4,tail\n', 2, /is a formula/],
  ['id,label,weight,sits\na,A,4,tail,9\n', 2, /5 cells under 4 columns/],
  ['what,ever\na,b\n', 1, /no column is the id/],
])('a row that cannot be read is told with its line and left out: %j', (text, line, says) => {
  const { refused, accessories } = readAccessories({ 'accessories.csv': text });
  expect(refused.map((each) => each.line)).toEqual([line]);
  expect(refused[0]?.says).toMatch(says);
  expect(accessories.length).toBeLessThan(2);
});

test('where an accessory fits is refused where it names none, or ends before it begins', () => {
  const rows = 'accessory,line,from,to\nwings,osier,2024,\nrear-receiver,osier,2027,2024\n';
  const { refused } = readAccessories({ ...files, 'accessory-fits.csv': rows });
  expect(refused.map(({ says }) => says)).toEqual([
    '“wings” is no accessory of accessories.csv.',
    'it ends in 2024, before it begins in 2027.',
  ]);
});

test('where it sits and what fitting costs may be left out, and then nothing is said of it', () => {
  const read = readAccessories({
    'accessories.csv':
      'id,label,whose,standsBehind,stocked,fittedBy,touches,weight,work\na,Small box,ours,us,yes,our shop,structure,12,magic\n',
  });
  expect(read.refused).toEqual([]);
  expect(read.notes.map(({ line, says }) => `${line}: ${says}`)).toEqual([
    '2: “magic” is no work of rates.csv; what fitting costs is not told.',
  ]);
  const [box] = read.accessories;
  const [trailer] = trailers;
  if (!box || !trailer) throw new Error('Nothing was read.');
  expect(effectSaid(read, box, trailer)).toContain('cannot be said: nobody tells where it sits.');
  expect(standingSaid(read, box)).toBe(
    'In stock; fitted by our shop; touches structure; us stands behind it.',
  );
});
