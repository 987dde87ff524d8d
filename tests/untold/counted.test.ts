import { type Asked, answerNow, formOf, type Topic } from '@tarebook/rules/engine';
import { gasSupply } from '@tarebook/rules/gas-supply';
import { houseBattery } from '@tarebook/rules/house-battery';
import { offGridStay } from '@tarebook/rules/off-grid-stay';
import { sparesKit } from '@tarebook/rules/spares-kit';
import { sway } from '@tarebook/rules/sway';
import { describe, expect, test } from 'vitest';

/** What is counted for want of a word on it is said as that, and nothing is done because of it. */
const asOf = '2026-11-01';

const spoken = (topic: Topic, facts: Asked['facts'], asking?: string): string =>
  formOf('spoken', topic, { facts, asOf }, { asking });

describe('a tongue that is heavy only for the empty trailer', () => {
  const told = { 'trailer.measuredTongueWeight': '660 lb', 'trailer.dryWeight': '4,200 lb' };

  test('moves no load before the loaded trailer is known', () => {
    const said = spoken(sway, told);
    expect(said).toMatch(/^Of the empty trailer 15\.7 percent would rest on the ball/);
    expect(said).not.toMatch(/move load/i);
    expect(said).toMatch(/with all packed, 10 to 15 percent of it rests on the ball/);
  });

  test('is heavy where it is that for the trailer at its maximum, too', () => {
    const said = spoken(sway, { ...told, 'trailer.gvwr': '4,300 lb' });
    expect(said).toMatch(/move load back toward the axles/);
  });

  test('is heavy where the load was told', () => {
    const cargo = [{ label: 'Packed', weight: '20 lb' }];
    expect(spoken(sway, { ...told, 'trailer.cargo': cargo })).toMatch(/move load back/i);
  });
});

test('a stay of which nobody said how long lasts, if it is no longer than what is counted', () => {
  const facts = {
    'water.freshTank': '40 gal',
    'water.daily': '5 gal/d',
    'water.grayTank': '40 gal',
  };
  expect(answerNow(offGridStay, { facts, asOf }).outcome).toBe('lasts-the-stay-if');
  expect(spoken(offGridStay, facts, 'days')).toMatch(/if you stay no longer than 2 days/);
  const stay = { ...facts, 'stay.days': '4 d' };
  expect(answerNow(offGridStay, { facts: stay, asOf }).outcome).toBe('lasts-the-stay');
});

test('where a verdict stands and what was asked has no answer, what decides is asked first', () => {
  const kit = { 'kit.place': 'vehicle', 'trip.days': '14 d' };
  expect(spoken(sparesKit, kit, 'weight')).toMatch(/^For that, the door label’s payload must be/);
});

test('a charger is not said to be above a bank of which nobody told how it is cabled', () => {
  const said = spoken(houseBattery, { 'charger.volts': '15 V' }, 'charger');
  expect(said).not.toMatch(/comes up to more/);
});

test('a charger below the bank fills nothing', () => {
  const facts = { 'bank.series': '2', 'charger.volts': '15 V' };
  expect(answerNow(houseBattery, { facts, asOf }).outcome).toBe('will-not-do');
  expect(
    answerNow(houseBattery, { facts: { ...facts, 'bank.series': '1' }, asOf }).outcome,
  ).not.toBe('will-not-do');
});

test('a cylinder of which only the size was told is not said to have gas aboard', () => {
  const said = spoken(gasSupply, { 'cylinder.fill': '20 lb' }, 'left');
  expect(said).toMatch(
    /^Full there are 20 pounds of propane aboard; how much is left only a scale/,
  );
  expect(spoken(gasSupply, { 'cylinder.fill': '20 lb', 'cylinder.filled': 'yes' }, 'left')).toMatch(
    /^There are 20 pounds of propane aboard\./,
  );
});
