// How the headers of loggers name units: with brackets and without, run together, in short.
import { describe, expect, it } from 'vitest';
import { findLayout, guessColumns, type Role } from '../../src/log/index.ts';

/** What a column of this name is taken for beside a plain time. */
function taken(name: string): readonly (string | undefined)[] {
  const layout = findLayout(`clock;${name}\n0;1\n1;2\n2;3\n`, { separator: ';' });
  if (layout === undefined) throw new Error('no layout');
  const [found] = Object.entries(guessColumns(layout.names, layout.units));
  return [found?.[0], found?.[1].unit];
}

/** None where nothing can be made of it. */
type Taken = readonly [name: string, role?: Role | undefined, unit?: string];
const HEADERS: readonly Taken[] = [
  ['TFT degF', 'temperature', '°F'],
  ['TFT deg F', 'temperature', '°F'],
  ['TFT deg. F', 'temperature', '°F'],
  ['TFT_F', 'temperature', '°F'],
  ['TFT_degF', 'temperature', '°F'],
  ['TFTdegF', 'temperature', '°F'],
  ['TFT F', 'temperature', '°F'],
  ['TFT, F', 'temperature', '°F'],
  ['TFT/°F', 'temperature', '°F'],
  ['TFT °F', 'temperature', '°F'],
  ['TFT°F', 'temperature', '°F'],
  ['TFT Â°F', 'temperature', '°F'],
  ['TFT (\ufffdF)', 'temperature', '°F'],
  ['TFT F°', 'temperature', '°F'],
  ['TFT (F)', 'temperature', '°F'],
  ['TFT [°F]', 'temperature', '°F'],
  ['TFT {degrees F}', 'temperature', '°F'],
  ['ATF Temp F', 'temperature', '°F'],
  ['ATF TMP F', undefined],
  ['TransTempF', 'temperature', '°F'],
  ['trans_fluid_temp_fahrenheit', 'temperature', '°F'],
  ['Transmission fluid temperature - deg F', 'temperature', '°F'],
  ['Trans. Fluid Temp. (Deg. F)', 'temperature', '°F'],
  ['TFT_C', 'temperature', '°C'],
  ['TFT degC', 'temperature', '°C'],
  ['ATF Temp deg C', 'temperature', '°C'],
  ['Oil temp Celsius', 'temperature', '°C'],
  ['Fluid temp', 'temperature', '°C'],
  // A voltage of the sensor is no temperature, no pressure and no opening.
  ['TFT V', undefined],
  ['TFT sensor volts', undefined],
  ['Line pressure sensor (V)', undefined],
  ['TPS V', undefined],
  ['Line pressure psi', 'linePressure', 'psi'],
  ['LINE_PSI', 'linePressure', 'psi'],
  ['Line Press PSIG', 'linePressure', 'psi'],
  ['LinePressure_kPa', 'linePressure', 'kPa'],
  ['Line pressure/kPa', 'linePressure', 'kPa'],
  ['Line press. bar', 'linePressure', 'bar'],
  ['Line pressure', 'linePressure', 'kPa'],
  ['Line pressure MPa', undefined],
  ['Line pressure kg/cm²', undefined],
  // A letter behind a name that is no unit.
  ['Clutch pressure C', 'clutchPressure', 'kPa'],
  ['Vehicle speed mph', 'roadSpeed', 'mph'],
  ['VehicleSpeedMPH', 'roadSpeed', 'mph'],
  ['VSS_kph', 'roadSpeed', 'km/h'],
  ['vehicle_speed_km_h', 'roadSpeed', 'km/h'],
  ['Road speed km/h', 'roadSpeed', 'km/h'],
  ['Speed/km/h', 'roadSpeed', 'km/h'],
  ['Turbine rpm', 'turbine', 'rpm'],
  ['Input/turbine speed (rpm)', 'turbine', 'rpm'],
  ['TSS 1/min', 'turbine', 'rpm'],
  ['OutputSpeed_min-1', 'output', 'rpm'],
  ['Throttle %', 'throttle', '%'],
  ['Throttle%', 'throttle', '%'],
  ['TPS_pct', 'throttle', '%'],
  ['Pedal percent', 'throttle', '%'],
  ['Time', 'time', 's'],
  ['Time s', 'time', 's'],
  ['Time_sec', 'time', 's'],
  ['time_ms', 'time', 'ms'],
  ['Time [ms]', 'time', 'ms'],
];

describe('a header', () => {
  it.each(HEADERS.map(([name, ...is]) => ({ name, is: [...is, undefined].slice(0, 2) })))(
    '$name is $is',
    ({ name, is }) => expect(taken(name)).toEqual(is),
  );
});
