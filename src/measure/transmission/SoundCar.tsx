import { useEffect, useMemo } from 'preact/hooks';
import type { ShopTest, Tap } from '../../car/shop-tests.ts';
import { CIRCUITS } from '../../engine/index.ts';
import type { SheetRead } from '../../own-sheet/read-sheet.ts';
import { RANGES, WARM_C, type Remark, type Sound, type Warm } from '../../own-sheet/sound-car.ts';
import { printer } from '../../quantity/print.ts';
import { fluidVolume, ratio } from '../../quantity/part-quantities.ts';
import { pressure, seconds, speed, temperature, torque } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { saidOf } from './sentences.ts';
import { makeSound } from './sound-model.ts';
import { words } from './sound-words.en.ts';

const WARMS: readonly Warm[] = ['cold', 'hot'];
/** In the order of src/car/shop-tests.ts, which works them out as soon as it is loaded. */
const SHOP_TESTS: readonly ShopTest[] = ['cold-idle', 'cold-load', 'hot-idle', 'hot-load'];
const TAPS: readonly Tap[] = ['line', ...CIRCUITS];
const warmOf = (test: ShopTest): Warm => (test.startsWith('cold') ? 'cold' : 'hot');

export function remarkText(remark: Remark, system: UnitSystem): string {
  const print = printer(system);
  const { remark: said } = words;
  switch (remark.kind) {
    case 'gears':
      return said.gears({ first: print(remark.first, ratio), third: print(remark.third, ratio) });
    case 'loadSpeed':
      return said.loadSpeed({
        idle: print(remark.idleRpm, speed),
        load: print(remark.loadRpm, speed),
      });
    case 'lineFalls':
      return said.lineFalls({
        idle: print(remark.idle, pressure),
        load: print(remark.load, pressure),
      });
    case 'spare':
      return said.spare({
        spare: print(remark.spareL, fluidVolume),
        fill: print(remark.fillL, fluidVolume),
      });
    case 'idleApart':
    case 'loadApart':
      return said[remark.kind]({
        own: print(remark.own, speed),
        tested: print(remark.tested, speed),
      });
    case 'short':
      return said.short({
        tap: words.taps[remark.tap],
        test: testName(remark.test, system),
        reads: print(remark.reads, pressure),
        wanted: print(remark.wanted, pressure),
      });
    case 'stall':
      return said.stall({
        range: words.ranges[remark.range],
        torque: print(remark.torque, torque),
        needs: print(remark.needs, pressure),
        most: print(remark.most, pressure),
      });
    case 'neverStops':
      return said.neverStops({
        range: words.ranges[remark.range],
        warm: said.warm[remark.warm],
      });
  }
}

const testName = (test: ShopTest, system: UnitSystem): string =>
  words.tests[test](printer(system)(WARM_C[warmOf(test)], temperature));

interface SoundProps {
  readonly read: SheetRead;
  readonly goTo: (path: string) => void;
}

/** What the engine makes of the sheet: the sound car's readings, and what does not go together. */
export function SoundCar({ read, goTo }: SoundProps) {
  const sound = useMemo(
    () =>
      makeSound(() =>
        import('../../own-sheet/start-worker.ts').then(({ startWorker }) => startWorker),
      ),
    [],
  );
  const { whole } = read;
  const numbers = JSON.stringify(whole);
  useEffect(() => {
    if (whole !== null) sound.ask(whole);
  }, [numbers]);
  useEffect(() => sound.stop, []);
  const state = sound.state.value;
  if (whole === null) return <Waiting read={read} goTo={goTo} />;
  return (
    <section class="sheet-sound" aria-labelledby="sheet-sound-title" data-state={state.kind}>
      <h3 id="sheet-sound-title">{words.title}</h3>
      <p class="next-yours">
        {words.from({ yours: String(read.yours), assumed: String(read.assumed) })}
      </p>
      <p class="muted">{words.how}</p>
      {state.kind === 'sound' ? (
        <Told sound={state.sound} />
      ) : (
        <p role="status">{words[state.kind]}</p>
      )}
    </section>
  );
}

/** Why nothing is worked out, and the way to the field that it waits for; the next one is named when that one is mended. */
function Waiting({ read, goTo }: SoundProps) {
  const [[path, trouble] = []] = read.troubles;
  if (path === undefined) return null;
  const { label } = saidOf(path);
  return (
    <section class="sheet-sound" aria-labelledby="sheet-sound-title" data-state="waiting">
      <h3 id="sheet-sound-title">{words.title}</h3>
      <p class="field-error">
        {trouble?.kind === 'typed' ? words.needsNumber(label) : words.needsLook(label)}{' '}
        {words.plannerWaits}
      </p>
      <p class="sheet-acts no-print">
        <button type="button" class="quiet" onClick={() => goTo(path)}>
          {words.goTo(label)}
        </button>
      </p>
    </section>
  );
}

function Told({ sound }: { readonly sound: Sound }) {
  const system = useUnits();
  const print = printer(system);
  const { taps, stops, holds, gives, remarks } = sound;
  const at = (warm: Warm): string => print(WARM_C[warm], temperature);
  return (
    <>
      <div role="status">
        {remarks.length === 0 ? (
          <p>{words.noRemarks}</p>
        ) : (
          <>
            <h4>{words.remarks}</h4>
            <ul class="sheet-remarks">
              {remarks.map((remark) => (
                <li key={JSON.stringify(remark)}>{remarkText(remark, system)}</li>
              ))}
            </ul>
          </>
        )}
      </div>
      <Table
        title={words.pressures}
        heads={[words.tap, ...SHOP_TESTS.map((test) => testName(test, system))]}
        rows={TAPS.map((tap) => [
          words.taps[tap],
          ...SHOP_TESTS.map((test) =>
            words.wanted({
              reads: print(taps[tap][test].reads, pressure),
              wanted: print(taps[tap][test].wanted, pressure),
            }),
          ),
        ])}
      />
      <Table
        title={words.times}
        heads={[words.range, ...WARMS.map(at)]}
        rows={RANGES.map((range) => [
          words.ranges[range],
          ...WARMS.map((warm) => {
            const time = stops[range][warm];
            return time === null ? words.never : print(time, seconds);
          }),
        ])}
      />
      <Table
        title={words.torques}
        heads={[words.clutch, ...WARMS.map(at)]}
        rows={CIRCUITS.map((circuit) => [
          words.taps[circuit],
          ...WARMS.map((warm) => print(holds[circuit][warm], torque)),
        ])}
      />
      <p>
        {words.gives({
          load: print(gives.load.torque, torque),
          loadRpm: print(gives.load.rpm, speed),
          stall: print(gives.stall.torque, torque),
          stallRpm: print(gives.stall.rpm, speed),
        })}
      </p>
    </>
  );
}

interface TableProps {
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

function Table({ title, heads, rows }: TableProps) {
  return (
    <div class="table-scroll" role="region" tabIndex={0} aria-label={title}>
      <table class="sheet-table">
        <caption>{title}</caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([head, ...cells]) => (
            <tr key={head}>
              <th scope="row">{head}</th>
              {cells.map((cell, i) => (
                <td key={heads[i + 1]} class="number">
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
