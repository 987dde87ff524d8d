import { expect, test } from 'vitest';
import { readCatalogue } from './catalogue';
import { underHeads } from './heads';
import { readSheet } from './sheet';
import { columnsOfTable } from './tables';

const loadsOf = (text: string, columns = '') =>
  readCatalogue({ 'loads.csv': text, 'columns.csv': columns });

test('loads are read under what people call their columns and lists', () => {
  const { loads, refused } = loadsOf(
    'Load,Goes in,Item,Weight (kg),Ahead of axle\nfishing,trailer,Boat,40,-2\nfishing,people,Driver,80,\nfishing,vehicle,Rods,5.5,\nfishing,roof,Kite,1,\n',
  );
  expect(loads).toEqual([
    {
      name: 'fishing',
      facts: {
        'trailer.cargo': [{ label: 'Boat', weight: '40 kg', ahead: '-2 ft' }],
        'load.occupants': [{ label: 'Driver', weight: '80 kg' }],
        'load.cargo': [{ label: 'Rods', weight: '5.5 kg' }],
      },
    },
  ]);
  expect(refused.map(({ line, says }) => `${line}: ${says}`)).toEqual([
    '5: under “Goes in”, “roof” is none of trailer, vehicle, people, options.',
  ]);
});

test('a table whose columns nobody knows says which it has, which it needs, and which may be meant', () => {
  const { loads, refused } = loadsOf('Packge,In,Thing,Weigt\nfishing,trailer,Boat,40\n');
  expect(loads).toEqual([]);
  expect(refused).toEqual([
    {
      file: 'loads.csv',
      line: 1,
      says: 'no column is the name, the list or the weight. It has the columns “Packge”, “In”, “Thing” and “Weigt”; it needs a name, a list and a weight. “Weigt” may be the weight. Say which column is which (columns.csv keeps that), or call it so in the file.',
    },
  ]);
  const trailers = readCatalogue({ 'trailers.csv': 'Modle,weight,gvwr\nTeal 14,1,2\n' }).refused;
  expect(trailers.map(({ says }) => says)).toEqual([
    'no column is the name. It has the columns “Modle”, “weight” and “gvwr”; it needs a name. “Modle” may be the name. Say which column is which (columns.csv keeps that), or call it so in the file.',
  ]);
});

test('what the columns of loads are called is read in columns.csv', () => {
  const { loads, refused } = loadsOf(
    'Packge,In,Thing,Weigt\nfishing,trailer,Boat,40\n',
    'file,theirs,ours\nloads.csv,Packge,name\nloads.csv,In,list\nloads.csv,Weigt,weight\n',
  );
  expect(refused).toEqual([]);
  expect(loads[0]?.facts).toEqual({ 'trailer.cargo': [{ label: 'Boat', weight: '40 lb' }] });
});

test('under other heads a sheet is line for line as it was', () => {
  const text =
    'Our loads;;\r\n# last year’s\r\n\r\n"Pack\nage";Was;"Gewicht ""kg"""\r\nfishing;Boat;40\r\n;;;;\r\ncamp;Tent;"1;5"\r\n';
  const called = underHeads(text, { 'Pack\nage': 'name', 'Gewicht "kg"': 'weight (kg)' });
  const [was, is] = [readSheet('x', text), readSheet('x', called)];
  expect(is.heads).toEqual(['name', 'Was', 'weight (kg)']);
  const cells = ({ rows }: typeof is) => rows.map((row) => Object.values(row.cells));
  expect(cells(is)).toEqual(cells(was));
  expect(is.refused).toEqual(was.refused);
  expect(is.rows.map(({ line }) => line)).toEqual(was.rows.map(({ line }) => line));
  expect(underHeads(text, {})).toBe(text);
});

test('every column of a table may be said to be meant', () => {
  expect(columnsOfTable('loads.csv')).toEqual(['name', 'list', 'label', 'weight', 'ahead']);
  expect(columnsOfTable('rates.csv')).toContain('perHour');
  expect(columnsOfTable('floor-plans.csv')).toContain('first');
});
