import { isNumeric, type OutcomeTest, type TakenReading } from '../../diagnosis/index.ts';
import type { StopTrace } from '../../cases/trace.ts';
import { printed } from '../../planner/amounts.ts';
import { nameOf, shownIn } from '../../planner/reading-text.ts';
import { useUnits } from '../../ui/use-units.ts';
import { words } from '../words.en.ts';
import { Can } from './Can.tsx';
import { Dial, Swinging } from './Dial.tsx';
import { Level } from './Level.tsx';
import { Pan } from './Pan.tsx';
import { Trace } from './Trace.tsx';

interface PictureProps {
  readonly reading: TakenReading;
  readonly trace: (test: string) => StopTrace | undefined;
}
interface InstrumentProps extends PictureProps {
  /** What a sound car reads, for tests that read a number. */
  readonly sound: number | undefined;
}

/** A reading on what it is read from, and in figures beside it. */
export function Instrument({ reading, sound, trace }: InstrumentProps) {
  const system = useUnits();
  const { test } = reading;
  return (
    <div class="case-instrument">
      <div class="case-read">
        <p class="case-figure" role="status">
          <span class="visually-hidden">{nameOf(test, system)}: </span>
          {shownIn(reading, system)}
        </p>
        {isNumeric(test) && sound !== undefined && (
          <p class="muted">{words.instrument.sound({ value: printed(test, sound, system) })}</p>
        )}
      </div>
      <Picture reading={reading} trace={trace} />
    </div>
  );
}

function Picture({ reading, trace }: PictureProps) {
  const system = useUnits();
  const { test, value } = reading;
  const { instrument } = words;
  if (!isNumeric(test)) return <Seen test={test} value={String(value)} />;
  if (test.kind === 'stopTime') {
    const drawn = trace(test.id);
    return drawn === undefined ? null : <Trace id={test.id} trace={drawn} />;
  }
  if (typeof value !== 'number') return null;
  const shown = printed(test, value, system);
  switch (test.kind) {
    case 'linePressure':
    case 'clutchPressure':
      return <Dial title={instrument.gauge} of={test.kind} value={value} shown={shown} />;
    case 'airTest':
      return <Dial title={instrument.air} of={test.kind} value={value} shown={shown} />;
    case 'coolerFlow':
      return <Can liters={value} shown={shown} />;
    case 'engineOffTurbine':
    case 'takeoffSlip':
    case 'fluidCup':
      return null;
  }
}

function Seen({ test, value }: { readonly test: OutcomeTest; readonly value: string }) {
  switch (test.kind) {
    case 'fluidLevel':
      return <Level level={value as 'full'} />;
    case 'panFilter':
      return (
        <>
          <Pan pan={value as 'clean'} />
          <p>{words.instrument.pan[value as 'clean']}</p>
        </>
      );
    case 'gaugeFlutter':
      return <Swinging swings={value === 'flutters'} />;
    default:
      return null;
  }
}
