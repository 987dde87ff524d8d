import { describe, expect, test } from 'vitest';
import { shelf } from '../define/small-topic.fixture';
import { checkFormulaUnit } from './dimensions';
import { FormulaError } from './grammar/problem';
import { parseFormula } from './parse';

const check = (text: string, unit: string) =>
  checkFormulaUnit(parseFormula(text), unit, shelf, new Map());

describe('a formula whose units work out is taken', () => {
  test.each([
    ['box.weight + box.lid', 'lb'],
    ['box.weight * 2', 'lb'],
    ['box.weight + box.lid', 'kg'],
    ['box.weight / shelf.rating', '1'],
    ['box.weight / shelf.rating', '%'],
    ['box.weight * shelf.span', 'lb·ft'],
    ['sum(boxes.weight * boxes.place) / shelf.span', 'lb'],
    ['box.weight * (1 - shelf.share)', 'lb'],
    ['count(boxes) * 2', ''],
    ['lookup(sag, shelf.span)', 'lb'],
    ['max(0, box.weight)', 'lb'],
    ['min(unlimited, box.weight)', 'lb'],
    ["choose(shelf.kind == 'oak', box.weight, 0)", 'lb'],
    ["shelf.braced == 'yes'", 'yes-no'],
    ['!shelf.braced && box.weight > 0 || known(shelf.rating)', 'yes-no'],
    ['needs(box.weight, shelf.span)', 'lb'],
    ['largestKnown(box.weight, shelf.rating)', 'lb'],
    ['-box.weight', 'lb'],
  ])('%s in %s', (text, unit) => {
    expect(() => check(text, unit)).not.toThrow();
  });
});

describe('units that clash are refused', () => {
  test.each([
    ['box.weight + shelf.span', 'lb', /weight.*length/],
    ['box.weight - 1', 'lb', /weight.*plain number/],
    ['box.weight', 'in', /weight.*length|length.*weight/],
    ['box.weight * shelf.span', 'lb', /moment/],
    ['box.weight / shelf.rating', 'lb', /plain number/],
    ['max(box.weight, shelf.span)', 'lb', /max/],
    ['largestKnown(box.weight, 1)', 'lb', /largestKnown/],
    ["choose(shelf.kind == 'oak', box.weight, shelf.span)", 'lb', /choose/],
    ['choose(box.weight, 1, 2)', '1', /yes or no/],
    ['box.weight < shelf.span', 'yes-no', /</],
    ["box.weight == 'oak'", 'yes-no', /==/],
    ['box.weight && shelf.braced', 'yes-no', /yes or no/],
    ['!box.weight', 'yes-no', /yes or no/],
    ['shelf.kind + 1', 'lb', /wants a number/],
    ['-shelf.kind', 'lb', /wants a number/],
    ['box.weight', 'yes-no', /yes-no/],
    ['box.weight > 0', 'lb', /lb/],
    ['lookup(sag, box.weight)', 'lb', /lookup/],
    ['lookup(sog, shelf.span)', 'lb', /no table “sog”/],
    ['count(box.weight)', '', /wants a list/],
    ['box.wait', 'lb', /no “box.wait”/],
    ['given(box.wait)', 'yes-no', /no “box.wait”/],
    ['needs(box.weight, box.wait)', 'lb', /no “box.wait”/],
    ['sum(boxes.color)', 'lb', /no “boxes.color”/],
    ['sum(boxes.weight * boxes.place)', 'lb', /moment/],
  ])('%s in %s', (text, unit, message) => {
    expect(() => check(text, unit)).toThrow(FormulaError);
    expect(() => check(text, unit)).toThrow(message);
  });
});
