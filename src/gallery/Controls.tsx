import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { length, pressure, temperature } from '../quantity/quantities.ts';
import { Choice } from '../ui/Choice.tsx';
import { More } from '../ui/More.tsx';
import { Readout } from '../ui/Readout.tsx';
import { Slider } from '../ui/Slider.tsx';
import { Toggle } from '../ui/Toggle.tsx';

const options = [
  { value: 'drive', words: 'Drive' },
  { value: 'reverse', words: 'Reverse' },
  { value: 'third', words: 'Third, at highway speed' },
];

/** Every control that simulations and tools share. */
export const Controls = (): JSX.Element => (
  <div class="sim-controls">
    <Slider
      id="gallery-temp"
      label="Fluid temperature"
      value={signal(95)}
      quantity={temperature}
      min={-30}
      max={140}
      step={1}
    />
    <Slider
      id="gallery-crack"
      label="Crack in the transfer seal"
      value={signal(0.25)}
      quantity={length}
      min={0}
      max={0.4}
      step={0.01}
      words={() => 'as thick as three hairs'}
    />
    <Choice id="gallery-radio" label="Range" value={signal('drive')} options={options} />
    <Choice
      id="gallery-select"
      label="Range, from a list"
      value={signal('third')}
      options={options}
      as="select"
    />
    <Toggle id="gallery-on" label="Feed" value={signal(true)} on="open" off="shut" />
    <dl class="readouts">
      <Readout label="Clutch pressure" value={232} quantity={pressure}>
        too little to hold
      </Readout>
    </dl>
    <More label="More controls">
      <Toggle id="gallery-off" label="Bleed" value={signal(false)} on="open" off="shut" />
    </More>
  </div>
);
