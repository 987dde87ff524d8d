import { accessoryMeant, effectSaid, offerSaid, standingSaid } from '@tarebook/sweep';
import { expect, test } from 'vitest';
import type { ImportAsked } from './asked';
import { besideOf } from './beside-of';
import { importOf } from './import-of';

const sheet = (from: string, text: string, more: Partial<ImportAsked> = {}): ImportAsked => ({
  ...{ kind: 'import', from, text, files: undefined, columns: {} },
  ...more,
});

const accessories =
  'Part number;Name;Weighs (kg);Ahead of axle (m);Who fits it;Labor\r\nA-1;Box behind;10,5;-2,4;our shop;W1\r\nA-2;Step;heavy;;;\r\n';
const rates = 'Job,Description,Time,Labor rate\nW1,Bolt it on,2 h,$120\n';

test('each table of a catalogue is known by what it is called or by its columns', () => {
  const known = (from: string, text: string) => {
    const { file, count } = importOf(sheet(from, text));
    return `${file} ${count}`;
  };
  expect(known('Our Accessories 2027.csv', accessories)).toBe('accessories.csv 1');
  expect(known('shop.csv', rates)).toBe('rates.csv 1');
  expect(known('order sheet.csv', 'line,option,as,from\nteal,AWN,standard,2025\n')).toBe(
    'offers.csv 1',
  );
  expect(known('options.csv', 'code,label\nAWN,Awning\n')).toBe('options.csv 1');
  expect(known('loads.csv', 'name,list,label,weight\nus,load.cargo,Bags,20 kg\n')).toBe(
    'loads.csv 1',
  );
  expect(known('list.csv', 'Model,Dry Weight,GVWR\nTeal 14,2200,3500\n')).toBe('trailers.csv 1');
  expect(known('rated trailers.csv', 'Model,Dry Weight,GVWR\nTeal 14,2200,3500\n')).toBe(
    'trailers.csv 1',
  );
  expect(() => importOf(sheet('x.csv', 'a,b\n1,2\n'))).toThrow(
    /Nobody can tell what stands in x.csv/,
  );
});

test('a row that cannot be read is told with its line, and so is a work that no rate book has', () => {
  const read = importOf(sheet('accessories.csv', accessories));
  expect(read.refused.map(({ line }) => line)).toEqual([3]);
  expect(read.notes.map(({ line, says }) => `${line}: ${says}`)).toEqual([
    '2: “W1” is no work of rates.csv; what fitting costs is not told.',
  ]);
  const beside = importOf(sheet('accessories.csv', accessories, { files: { 'rates.csv': rates } }));
  expect(beside.notes).toEqual([]);
});

test('to accessories of one’s own no invented price or line is told', () => {
  const {
    accessories: all,
    trailers,
    isOwn,
  } = besideOf({
    'accessories.csv': accessories,
    'rates.csv': rates,
  });
  const box = accessoryMeant(all, 'Box behind');
  const osier = trailers.find(({ name }) => name === 'Osier 22 Bunks');
  if (!box || !osier) throw new Error('Something was not read.');
  expect(isOwn).toEqual({ accessories: true, rates: true, offers: false });
  expect(all.fits).toEqual([]);
  // 23.15 lb × 7.874 ft behind the axle / 15.5 ft from ball to axle
  expect(effectSaid(all, box, osier)).toContain('takes 12 lb off the tongue');
  expect(standingSaid(all, box)).toContain(
    '$240: 2 h at $120 an hour, by the rate book of the house',
  );
  const alone = besideOf({ 'accessories.csv': accessories });
  expect(alone.accessories.rates.rates).toEqual([]);
});

test('offers and loads of one’s own stand in the place of the invented ones', () => {
  const { offers, loads } = besideOf({
    'offers.csv':
      'line,option,as,from,because\nTeal,AWN,standard,2026,all asked for it\nTeal,AWN2,optional,2024,\n',
    'loads.csv': 'name,list,label,weight,ahead\nfishing,trailer.cargo,Boat,40 kg,-2 ft\n',
  });
  expect(offers.lines).toEqual(['teal']);
  expect(offerSaid(offers, 'teal', 'AWN')).toBe(
    'Not on all: on the Teal line the AWN is standard from model year 2026 on, because all asked for it.',
  );
  expect(loads).toEqual([
    { name: 'fishing', list: 'trailer.cargo', label: 'Boat', weight: '40 kg', ahead: '-2 ft' },
  ]);
  expect(besideOf(undefined).loads).toBeUndefined();
});

test('what a column is called is said once and remembered', () => {
  const text = 'Modell,Leergewicht,Zul. Gesamt\nTeal 14,2200,3500\n';
  const first = importOf(
    sheet('trailers.csv', text, { columns: { Modell: 'name', Leergewicht: 'dryWeight' } }),
  );
  expect([first.count, first.unknown]).toEqual([1, ['Zul. Gesamt']]);
  const again = importOf(
    sheet('trailers.csv', text, {
      files: { 'columns.csv': first.columns ?? '' },
      columns: { 'Zul. Gesamt': 'gvwr' },
    }),
  );
  expect([again.count, again.unknown]).toEqual([1, []]);
  expect(again.text).toContain('name,dryWeight,gvwr');
  const later = importOf(
    sheet('trailers.csv', text, { files: { 'columns.csv': again.columns ?? '' } }),
  );
  expect([later.unknown, later.columns]).toEqual([[], undefined]);
});

test('of any table it is said once which column is which, and remembered', () => {
  const text = 'Packge,In,Stuff,Weigt\nfishing,trailer,Boat,40\nfishing,trailer,Net,heavy\n';
  const first = importOf(sheet('loads.csv', text));
  expect([first.count, first.unknown]).toEqual([0, ['Packge', 'In', 'Stuff', 'Weigt']]);
  expect(first.mayBe).toEqual(['name', 'list', 'label', 'weight', 'ahead']);
  expect(first.refused[0]?.says).toContain('“Weigt” may be the weight.');
  const said = importOf(
    sheet('loads.csv', text, { columns: { Packge: 'name', In: 'list', Weigt: 'weight' } }),
  );
  expect([said.count, said.unknown]).toEqual([1, ['Stuff']]);
  expect(said.refused.map(({ line }) => line)).toEqual([3]);
  expect(said.text.split('\n')[0]).toBe('"name","list","Stuff","weight"');
  const later = importOf(
    sheet('loads.csv', text, { files: { 'columns.csv': said.columns ?? '' } }),
  );
  expect([later.count, later.unknown, later.columns]).toEqual([1, ['Stuff'], undefined]);
  const rates = importOf(
    sheet('rates.csv', 'Nr,Std,Satz\nW1,2,120\n', {
      columns: { Nr: 'work', Std: 'hours', Satz: 'perHour' },
    }),
  );
  expect(rates.count).toBe(1);
});

test('what stands in a file nobody can tell is said by hand', () => {
  const text = 'Packge,In,Stuff,Weigt\nfishing,trailer,Boat,40\n';
  expect(() => importOf(sheet('our stuff.csv', text))).toThrow(
    'Nobody can tell what stands in our stuff.csv: it has the columns Packge, In, Stuff, Weigt. Say it below.',
  );
  expect(importOf(sheet('our stuff.csv', text, { as: 'loads.csv' })).unknown).toHaveLength(4);
  const lot = 'Modell,Leer\nTeal 14,2200\n';
  const read = importOf(
    sheet('liste.csv', lot, { as: 'trailers.csv', columns: { Modell: 'name', Leer: 'dryWeight' } }),
  );
  expect([read.file, read.count]).toEqual(['trailers.csv', 1]);
});
