/** Slip: turbine less ratio times output, in gearboxes and in belts. */
import { illustrativeSettings as limits } from '../engine/index.ts';
import { count, kPa, ratio, rpm } from '../numbers/entry.ts';
import { BOXES, GEARS, ratioOf } from './boxes.ts';
import { by, family, steps } from './family.ts';

export const slip = {
  'slip-in-gear': family(
    {
      box: BOXES,
      gear: GEARS,
      output: steps(220, 640, 20),
      slip: steps(80, 360, 10),
    },
    ({ box, gear, output, slip: extra }) => {
      const here = ratioOf(box, gear);
      const other = ratioOf(box, gear === 'first' ? 'third' : 'first');
      const turbine = Math.round(here * output + extra);
      return {
        numbers: {
          ratio: ratio(here, 'ratio of the gear'),
          turbine: rpm(turbine, 'turbine'),
          output: rpm(output, 'output'),
          slip: rpm(turbine - here * output, 'slip', {
            'forgot-ratio': by('forget the ratio', turbine - output),
            divided: by('divide the output by the ratio', turbine - output / here),
            'other-ratio': by('use the ratio of another gear', Math.abs(turbine - other * output)),
          }),
        },
      };
    },
  ),
  'belt-slip': family(
    { pulleys: [2, 3, 4], blade: steps(600, 980, 20), slip: steps(60, 180, 10) },
    ({ pulleys, blade, slip: extra }) => {
      const motor = pulleys * blade + extra;
      return {
        numbers: {
          pulleys: count(pulleys, 'pulleys'),
          motor: rpm(motor, 'motor'),
          blade: rpm(blade, 'blade'),
          drawn: rpm(pulleys * blade, 'what the blade asks of the motor'),
          slip: rpm(extra, 'slip at the motor', {
            'forgot-ratio': by('forget the pulleys', motor - blade),
            'at-the-blade': by('count at the blade instead of at the motor', extra / pulleys),
          }),
        },
      };
    },
  ),
  'slip-limit': family({ turbine: steps(3200, 6400, 200) }, ({ turbine }) => {
    const share = limits.ratioSlipShare * turbine;
    return {
      numbers: {
        turbine: rpm(turbine, 'turbine'),
        limit: rpm(Math.max(limits.ratioSlipRpm, share), 'limit of the ratio check', {
          'floor-only': by('use the floor at every speed', limits.ratioSlipRpm),
          added: by('add the two limits instead of taking the larger', limits.ratioSlipRpm + share),
          'engagement-limit': by(
            'take the limit of the engagement check',
            limits.engagementSlipRpm,
          ),
        }),
      },
    };
  }),
  'pressure-raised': family({ command: steps(400, 1000, 20) }, ({ command }) => ({
    numbers: {
      command: kPa(command, 'command before the raise'),
      raised: kPa(command * limits.pressureRaise, 'command after it', {
        'raise-alone': by('stop at what is added', command * (limits.pressureRaise - 1)),
        'by-130': by('add 130 % instead of going to 130 %', command * (1 + limits.pressureRaise)),
      }),
    },
  })),
  'false-reading': family(
    { box: BOXES, gear: GEARS, reads: steps(180, 420, 20) },
    ({ box, gear, reads }) => ({
      numbers: {
        reads: rpm(reads, 'what the sensor shows at rest'),
        slip: rpm(reads, 'slip as the controller works it out', {
          'true-slip': by('let the controller know better than its sensor', 0),
          'times-ratio': by('multiply by the ratio', reads * ratioOf(box, gear)),
        }),
      },
    }),
  ),
};
