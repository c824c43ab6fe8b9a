import { readFileSync } from 'node:fs';
import { hypothesesOf } from './diagnosis/cells.ts';
import { weigh, type TakenReading } from './diagnosis/posterior.ts';
import { findingsOf, fitOf } from './diagnosis/findings.ts';
import { rankTests, ARRIVES } from './diagnosis/next-test.ts';
import { TESTS, WARMTHS, type Test } from './diagnosis/tests.ts';
const table = (JSON.parse(readFileSync('/tmp/work/table.json', 'utf8')) as any[]).map((rows) => rows.map((row: any[]) => row.map((c) => ({ ...c, moves: Float64Array.from(c.moves) }))));
import { CLASSES } from './diagnosis/hypotheses.ts'; import { NUMERIC } from './diagnosis/tests.ts';
const [iS, iH] = ['turbineSensor', 'healthy'].map((n) => CLASSES.findIndex((c) => c.name === n)); NUMERIC.forEach((t, k) => { if (t.kind === 'takeoffSlip') table[iS!][0][k] = table[iH!][0][k]; });
const hs = hypothesesOf(table);
const find = (r: any): Test | undefined => TESTS.find((t) => t.kind === r.test && (t.at.range === undefined || t.at.range === r.range) && (t.at.circuit === undefined || t.at.circuit === r.circuit) && (t.at.rpm === undefined || t.at.rpm === r.engine_rpm) && (t.at.warmth === undefined || (r.temperature_C >= WARMTHS[t.at.warmth].from && r.temperature_C <= WARMTHS[t.at.warmth].to)));
for (const ex of JSON.parse(readFileSync('/work/shared/diagnosis-examples.json', 'utf8'))) {
  if (ex.answer.error) { console.log(ex.name, 'ERROR', ex.answer.path); continue; }
  const rs: TakenReading[] = ex.request.readings.map((r: any) => ({ test: find(r)!, value: r.value, temperatureC: r.temperature_C }));
  const t0 = performance.now();
  const post = weigh(hs, rs, ex.request.priors);
  const f = findingsOf(post); const fit = fitOf(post);
  const next = rankTests(post, { ...ARRIVES, ...ex.request.state });
  const t1 = performance.now();
  let worst = 0, who = '';
  for (const a of ex.answer.faults) { const b = f.find((x) => x.fault === a.fault)!; const d = Math.abs(a.probability - b.probability); if (d > worst) { worst = d; who = `${a.fault} ${a.probability} vs ${b.probability.toFixed(4)}`; } for (let i = 0; i < 3; i++) if (a.severity && b.severity && Math.abs(a.severity[i] - b.severity[i]!) > 0.06) console.log('   sev', a.fault, a.severity, b.severity); }
  let wb = 0, wbw = '';
  for (const a of ex.answer.next) { const b = next.find((n) => find(a) === n.test); if (!b) { console.log('   missing next', JSON.stringify(a)); continue; } if (b.minutes !== a.minutes) console.log('   minutes', JSON.stringify(a), b.minutes); const d = Math.abs(a.bits - b.bits) / Math.max(0.05, 0.1 * a.bits); if (d > 0.4) console.log('      ', b.test.id, a.bits, b.bits.toFixed(3)); if (d > wb) { wb = d; wbw = `${JSON.stringify(a)} vs ${b.bits.toFixed(3)}`; } }
  console.log(ex.name, '| worst p', worst.toFixed(4), who, '| bits', wb.toFixed(2), wb > 1 ? wbw : '', '| fit', JSON.stringify(ex.answer.fit), JSON.stringify(fit), '| ms', (t1 - t0).toFixed(0), 'n', next.length, ex.answer.next.length);
}
for (const ex of JSON.parse(readFileSync('/work/shared/diagnosis-examples.json', 'utf8'))) if (ex.name.startsWith('f') || ex.name.startsWith('b')) { const rs = ex.request.readings.map((r: any) => ({ test: find(r)!, value: r.value, temperatureC: r.temperature_C })); console.log(findingsOf(weigh(hs, rs, ex.request.priors)).slice(0, 9).map((f) => [f.fault, f.probability.toFixed(4), f.severity]).join(' | ')); }
