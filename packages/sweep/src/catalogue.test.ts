import { describe, expect, test } from 'vitest';
import { readCatalogue } from './catalogue';
import { catalogueFile } from './catalogue-file';
import { sideOfSheet } from './columns';

const trailersOf = (text: string, columns = '') =>
  readCatalogue({ 'trailers.csv': text, 'columns.csv': columns });

describe('a sheet in other words', () => {
  test('columns by what people call them, with the unit that the head names', () => {
    const { trailers, refused, unknown } = trailersOf(
      'Model;Dry Weight (kg);Trailer GVWR [lb];Hitch Weight, kg;Length;Color\r\nHeron 14;861,5;2.600;95;16,5;blue\r\n;;;;;\r\nBittern;1.200,0 kg;3000;;;\r\n',
    );
    expect(refused).toEqual([
      {
        file: 'trailers.csv',
        line: 2,
        says: '`trailer.gvwr`: “2.600 lb” can be read as thousands or as a decimal; write 2,600 lb, or one digit more behind the point.',
      },
    ]);
    expect(trailers.map(({ name, facts }) => [name, facts])).toEqual([
      ['Bittern', { 'trailer.dryWeight': '1200.0 kg', 'trailer.gvwr': '3000 lb' }],
    ]);
    expect(unknown['trailers.csv']).toEqual(['Color']);
  });

  test('a column nobody knows is called what the dealer calls it, once and for all', () => {
    const text = 'Model,Leer\nHeron,2100\n';
    expect(trailersOf(text).unknown['trailers.csv']).toEqual(['Leer']);
    const { trailers, unknown } = trailersOf(
      text,
      'file,theirs,ours\ntrailers.csv,Leer,dryWeight\n',
    );
    expect(unknown['trailers.csv']).toEqual([]);
    expect(trailers[0]?.facts).toEqual({ 'trailer.dryWeight': '2100 lb' });
  });

  test('the very name of a column counts before what only sounds like it', () => {
    const { trailers } = trailersOf('name,empty,dryWeight\nHeron,1,2100\n');
    expect(trailers[0]?.facts).toEqual({ 'trailer.dryWeight': '2100 lb' });
  });

  test('yes, no, and the ways of saying nothing', () => {
    const { vehicles, refused } = readCatalogue({
      'vehicles.csv':
        'name,towPackage,sevenWay,placardPayload,gcwr\nCorrie,Y,no,n/a,–\nTeasel,x,FALSE,?,8200\n',
    });
    expect(refused).toEqual([]);
    expect(vehicles.map(({ facts }) => facts)).toEqual([
      { 'vehicle.towPackage': 'yes', 'vehicle.sevenWay': 'no' },
      { 'vehicle.towPackage': 'yes', 'vehicle.sevenWay': 'no', 'vehicle.gcwr': '8200 lb' },
    ]);
  });
});

test.each([
  ['my list.csv', ['name', 'dryWeight', 'gvwr', 'axles'], 'trailer'],
  ['my list.csv', ['name', 'placardPayload', 'gcwr'], 'vehicle'],
  ['Vehicles 2026.csv', ['name'], 'vehicle'],
  ['things.csv', ['name', 'color'], undefined],
])('%s with %j is a sheet of the %s', (file, heads, side) => {
  expect(sideOfSheet(file, heads)).toBe(side);
});

test('what is written is read back as it was', () => {
  const { trailers } = trailersOf(
    'name,dryWeight (kg),lot,note\n"Heron, ""small""",900,here,"#1; two\nlines"\nBittern,"1,100",,\n',
  );
  const again = trailersOf(catalogueFile(trailers));
  expect(again.refused).toEqual([]);
  expect(again.trailers).toEqual(trailers);
});

describe('hostile sheets', () => {
  test.each([
    ['a formula for a name', 'name,dryWeight\n"=HYPERLINK(""http://x"")",2100\n', 2, /formula/],
    ['a command', 'name,dryWeight\nHeron,@SUM(A1)\n', 2, /formula/],
    ['a quote never closed', 'name,dryWeight\n"Heron,2100\nBittern,2200\n', 1, /never closed/],
    ['a workbook', 'PK\u0003\u0004\0\0name', 1, /no text/],
    ['a cell as long as a book', `name,dryWeight\n${'x'.repeat(3000)},2100\n`, 2, /longer than/],
    [
      'columns without end',
      `${Array.from({ length: 300 }, (_, i) => `c${i}`).join()}\n1\n`,
      1,
      /over 200 columns/,
    ],
    ['rows without end', `name\n${'a\n'.repeat(10_050)}`, 1, /over 10000 rows/],
    ['no name at all', 'weight,gvwr\n1,2\n', 1, /no column is the name/],
    ['infinity', 'name,dryWeight\nHeron,1e999\n', 2, /1e999/],
  ])(
    '%s is told in one sentence with its line, and nothing of it is kept',
    (_, text, line, says) => {
      const begun = performance.now();
      const { trailers, refused } = trailersOf(text);
      expect(refused[0]?.line).toBeGreaterThanOrEqual(line);
      expect(refused[0]?.says).toMatch(says);
      expect(trailers).toEqual([]);
      expect(performance.now() - begun).toBeLessThan(3000);
    },
  );

  test('names of what every object has are names like any other', () => {
    const { trailers, refused } = trailersOf(
      'name,dryWeight,__proto__,constructor\n__proto__,2100,x,y\nconstructor,2200,,\n',
    );
    expect(refused).toEqual([]);
    expect(trailers.map(({ name }) => name)).toEqual(['__proto__', 'constructor']);
    expect(trailers[0]?.facts).toEqual({ 'trailer.dryWeight': '2100 lb' });
  });

  test('a refused row leaves the others as they are', () => {
    const { trailers, refused } = trailersOf('name,gvwr\nHeron,3000\nBittern,heavy\nCrake,2900\n');
    expect(trailers.map(({ name }) => name)).toEqual(['Heron', 'Crake']);
    expect(refused.map(({ line }) => line)).toEqual([3]);
  });
});

test('a row that sums up others is none of them, and a title may have other separators', () => {
  const { trailers, refused } = readCatalogue({
    'trailers.csv':
      'Our lot,,,,\n\nModel;Dry Weight (kg);GVWR;"Hitch ""wt"""\nHeron 14;861,5;2600 lb;200 lb\n"Bittern ""22""";900,5;2700 lb;210 lb\nTotal;1762;5300 lb;\n',
  });
  expect(trailers.map(({ name }) => name)).toEqual(['Heron 14', 'Bittern "22"']);
  expect(refused.map(({ line, says }) => [line, says])).toEqual([
    [6, '“Total” sums up other rows; nothing stands on the lot.'],
  ]);
});

test('a title above the columns, the trade’s short heads, and a sum below are read as what they are', () => {
  const { trailers, refused } = readCatalogue({
    'trailers.csv':
      'Sallowbridge Trailers – lot list,,,,,\nPrinted 11/28,,,,,\n,,,,,\nStock #,Floor Plan,UVW,GVWR,Hitch Wt,CCC\nS-1,Teal 14,"2,210","3,500",~245,"1,290"\nS-2,Teal 19,"3,640 lbs.",5000,420–440,"1,360"\nTotal,2,,,,\n',
  });
  expect(trailers.map(({ name, facts }) => [name, facts])).toEqual([
    [
      'Teal 14',
      {
        'trailer.dryWeight': '2,210 lb',
        'trailer.gvwr': '3,500 lb',
        'trailer.dryTongueWeight': '~245 lb',
        'trailer.cargoCapacity': '1,290 lb',
      },
    ],
    [
      'Teal 19',
      {
        'trailer.dryWeight': '3,640 lbs.',
        'trailer.gvwr': '5000 lb',
        'trailer.dryTongueWeight': '420–440 lb',
        'trailer.cargoCapacity': '1,360 lb',
      },
    ],
  ]);
  expect(refused.map(({ line, says }) => `${line}: ${says}`)).toEqual([
    '7: of “2” nothing is told that can be reckoned with.',
  ]);
});

test('of two columns that are called the same neither takes the other’s cells', () => {
  const { trailers, refused, unknown } = readCatalogue({
    'trailers.csv':
      'Name,Dry Weight,GVWR,Dry Weight\nTeal 14,2210,3500,2250\nPlover,=B2*1.1,3500,\nWigeon,"3,1OO",4400,\n',
  });
  expect(trailers.map(({ facts }) => facts['trailer.dryWeight'])).toEqual(['2210 lb']);
  expect(unknown['trailers.csv']).toEqual(['Dry Weight (2)']);
  expect(refused.map(({ line }) => line)).toEqual([3, 4]);
});

test('a range takes the unit of its column', () => {
  const { vehicles, refused } = readCatalogue({
    'vehicles.csv':
      'Vehicle,Max Tow (lb),Payload,GVWR\nCorrie,3500,"1,085–1,230",TBD\nOsprey,"1,500 to 2,000",approx. 900,1.9 t\n',
  });
  expect(refused).toEqual([]);
  expect(vehicles.map(({ facts }) => facts['vehicle.placardPayload'])).toEqual([
    '1,085–1,230 lb',
    'approx. 900 lb',
  ]);
  expect(vehicles[1]?.facts['vehicle.maxTrailerWeight']).toBe('1,500 to 2,000 lb');
});
