// The model page prints some numbers of the model in its sentences and formulas. If the model changes, they must too.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  AIR_PER_MISSING,
  FADE_BEGINS_C,
  FADE_ENDS_C,
  FAULT_IDS,
  HARD_LIP_COLD,
  HARD_LIP_WARM,
  MOST_AIR,
  RING_IN_AIR,
  TESTER_HOLE,
  faultSpan,
  illustrativeSettings,
  training,
  trainingStory,
} from '../../src/engine/index.ts';
import { answer } from '../../src/solve/answer.ts';
import { requestSchemas } from '../../src/solve/request-schema.ts';

const page = readFileSync('content/en/pages/model.mdx', 'utf8');
const { commands, sump, clutches } = training;
const kPa = (pascals: number): string => String(Math.round(pascals / 1e3));
const mm = (metres: number): string => String(Number((metres * 1e3).toPrecision(6)));
const round = (value: number): string => String(Number(value.toPrecision(9)));

describe('the model page says what the model does', () => {
  const boost = commands.reverseFactor;
  const sentences: readonly string[] = [
    `is ${commands.margin} times what the controller thinks is needed, from ${kPa(commands.clutchLeast)} to ${kPa(commands.clutchMost)} kPa`,
    `taken times ${boost}, from ${kPa(commands.clutchLeast * boost)} to ${kPa(commands.clutchMost * boost)} kPa`,
    `Line is ${kPa(commands.lineLead)} kPa above the clutch command and never under ${kPa(commands.lineLeast)} kPa`,
    `line and clutch commands are ${boost} times those of Drive`,
    `raises the clutch command by ${round((illustrativeSettings.pressureRaise - 1) * 100)} %`,
    `${round(AIR_PER_MISSING / 1e3)}\\,(V_{missing} - V_{margin}),\\, 0,\\, ${MOST_AIR}`,
    `${round(sump.spare * 1e3)} + ${round(sump.fill * 1e3)}\\left(`,
    `- ${round(sump.pullDown * 1e6)}\\,\\frac{n}{1000}`,
    `${mm(HARD_LIP_COLD.gap)} - ${mm(HARD_LIP_COLD.gap - HARD_LIP_WARM.gap)}\\, \\mathrm{clamp}\\!\\left(\\frac{T}{${HARD_LIP_WARM.tempC}}`,
    `\\frac{T - ${FADE_BEGINS_C}}{${FADE_ENDS_C - FADE_BEGINS_C}}`,
    `with $f$ up to ${faultSpan('clutchControl').worst}`,
    `$C = 10^{${Math.log10(clutches.forward.compliance)}}$`,
    `selected at ${trainingStory.select} s, the brake let go at ${trainingStory.brakeOff.toFixed(1)} s; the throttle opens from there by ${trainingStory.throttleRate} a second up to ${trainingStory.throttleMost}; the trace ends at ${trainingStory.end} s`,
    `their gap is ${round(RING_IN_AIR.inAir * 1e6)} µm when sound`,
    `a tester hole of ${mm(2 * Math.sqrt(TESTER_HOLE / Math.PI))} mm`,
  ];
  test.each(sentences)('%s', (sentence) => {
    expect(page).toContain(sentence);
  });

  test('names the fifteen faults in its heading, and every key of a request', () => {
    expect(FAULT_IDS).toHaveLength(15);
    expect(page).toContain('title="Fifteen faults"');
    for (const [kind, schema] of Object.entries(requestSchemas)) {
      const row = page.split('\n').find((line) => line.startsWith(`| \`${kind}\``));
      for (const key of Object.keys(schema.shape).filter((one) => one !== 'kind'))
        expect(row, kind).toContain(`\`${key}\``);
    }
  });

  test('its example of a request is answered', () => {
    const [, example = ''] = /```json\n([^]*?)```/.exec(page) ?? [];
    expect(Object.keys(answer(JSON.parse(example)))).toContain('cooler_Lmin');
  });
});
