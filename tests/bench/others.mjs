// The same decision as general-purpose programs have it, each in its own way of saying it.
import { DuckDBInstance } from '@duckdb/node-api';
import { Engine } from 'json-rules-engine';
import Publicodes from 'publicodes';
import { checks, near, ofTrailer, ofVehicle, pairNumbers } from './decision.mjs';

/** Every vehicle against every trailer as a cross join, on so many threads: a count of each level. */
export async function duckdb(vehicles, trailers, threads) {
  const instance = await DuckDBInstance.create(':memory:', { threads: `${threads}` });
  const connection = await instance.connect();
  const fill = async (table, rows, letter) => {
    const names = Object.keys(rows[0]);
    await connection.run(
      `CREATE TABLE ${table} (${letter}_id INTEGER, ${names.map((name) => `${letter}_${name} DOUBLE`).join(', ')})`,
    );
    const appender = await connection.createAppender(table);
    rows.forEach((row, i) => {
      appender.appendInteger(i);
      for (const name of names) appender.appendDouble(row[name]);
      appender.endRow();
    });
    appender.closeSync();
  };
  await fill('vehicles', vehicles.map(ofVehicle), 'v');
  await fill('trailers', trailers.map(ofTrailer), 't');
  const numbers = Object.entries(pairNumbers).map(([name, is]) => `${is} AS p_${name}`);
  const over = (all) => all.map(([a, b]) => `${a} > ${b} + ${near}`).join(' OR ');
  const pairs = `SELECT *, ${numbers.join(', ')} FROM vehicles CROSS JOIN trailers`;
  const judged = `SELECT v_id, t_id, CASE WHEN t_alone = 2 OR ${over(checks.stop)} THEN 2
      WHEN t_alone = 1 OR ${over(checks.care)} THEN 1 ELSE 0 END AS level FROM (${pairs})`;
  return {
    counts: async () => {
      const sql = `SELECT level, count(*)::DOUBLE FROM (${judged}) GROUP BY level ORDER BY level`;
      const rows = (await connection.runAndReadAll(sql)).getRows();
      const counts = [0, 0, 0];
      for (const [level, count] of rows) counts[Number(level)] = count;
      return counts;
    },
    levels: async () => {
      const sql = `SELECT level FROM (${judged}) ORDER BY v_id, t_id`;
      return (await connection.runAndReadAll(sql)).getRows().map(([level]) => Number(level));
    },
    close: () => {
      connection.closeSync();
      instance.closeSync();
    },
  };
}

/** The numbers of one pair, ready to be looked at. */
function numbersOf(v, t) {
  const rear = v.rearAlone + t.tongue * (1 + v.lever);
  const front = v.frontAlone - t.tongue * v.lever;
  return {
    ...Object.fromEntries(Object.entries(v).map(([name, value]) => [`v_${name}`, value + near])),
    ...Object.fromEntries(Object.entries(t).map(([name, value]) => [`t_${name}`, value])),
    ...{ p_payload: v.aboard + t.tongue, p_gross: v.curb + v.aboard + t.tongue },
    ...{ p_combined: v.curb + v.aboard + t.loaded, p_bothShare: v.bothShare + t.dry * 0.05 + near },
    ...{ p_bothEmpty: v.curb + t.dry, p_front: front, p_rear: rear },
    ...{ p_tireFront: front / 2, p_tireRear: rear / 2, p_heavyPayload: v.aboard + t.heavy },
  };
}

/** json-rules-engine as it is: a rule for each check, on numbers that are ready. */
export function stock(vehicles, trailers) {
  const rule = (level) => ({
    conditions: {
      any: [
        ...checks[level].map(([fact, other]) => ({
          ...{ fact, operator: 'greaterThan', value: { fact: other } },
        })),
        { fact: 't_alone', operator: 'equal', value: level === 'stop' ? 2 : 1 },
      ],
    },
    event: { type: level },
  });
  const engine = new Engine([rule('stop'), rule('care')]);
  const [all, columns] = [vehicles.map(ofVehicle), trailers.map(ofTrailer)];
  return async (row, column) => {
    const { events } = await engine.run(numbersOf(all[row], columns[column]));
    const types = events.map(({ type }) => type);
    return types.includes('stop') ? 2 : types.includes('care') ? 1 : 0;
  };
}

/** publicodes: the formulas and the checks as rules of its own, a situation for each pair. */
export function publicodes(vehicles, trailers) {
  const named = (text) =>
    text.replace(/\b([vtp])_(\w+)/g, (_, side, name) => `${side} ${name.toLowerCase()}`);
  const [all, columns] = [vehicles.map(ofVehicle), trailers.map(ofTrailer)];
  const given = (v, t) => ({
    ...Object.fromEntries(Object.entries(v).map(([name, value]) => [named(`v_${name}`), value])),
    ...Object.fromEntries(Object.entries(t).map(([name, value]) => [named(`t_${name}`), value])),
  });
  const sides = given(all[0], columns[0]);
  const any = (level) => ({
    'une de ces conditions': [
      ...checks[level].map(([a, b]) => `${named(a)} > ${named(b)} + ${near}`),
      `t alone = ${level === 'stop' ? 2 : 1}`,
    ],
  });
  const rules = {
    ...Object.fromEntries(
      Object.entries(sides).map(([name, value]) => [name, { 'par défaut': value }]),
    ),
    ...Object.fromEntries(
      Object.entries(pairNumbers).map(([name, is]) => [named(`p_${name}`), named(is)]),
    ),
    stop: any('stop'),
    care: any('care'),
  };
  const engine = new Publicodes(rules, {
    logger: { log() {}, warn() {}, error() {} },
    strict: { noOrphanRule: false, checkPossibleValues: false },
  });
  return (row, column) => {
    engine.setSituation(given(all[row], columns[column]));
    if (engine.evaluate('stop').nodeValue === true) return 2;
    return engine.evaluate('care').nodeValue === true ? 1 : 0;
  };
}
