import { formatNumber } from '../../quantity/print.ts';
import { pressure } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { commands } from './cars.ts';
import type { GaugeModel } from './model.ts';
import { COLUMNS, readingAt, type Place } from './places.ts';
import { whenOf } from './print.ts';
import { words } from './words.en.ts';

interface Props {
  readonly id: string;
  readonly place: Place;
  readonly model: GaugeModel;
}

/** A row of the sheet: four readings to take, each kept beside its command. Pressed again, it is wiped off. */
export function Row({ id, place, model }: Props) {
  const system = useUnits();
  const unit = pressure[system].symbol;
  const { read, taken, partners } = model;
  return (
    <fieldset class="gauge-row">
      <legend>{words.row({ place: words.places[place], unit })}</legend>
      <div>
        {COLUMNS.map((_column, column) => {
          const reading = readingAt(place, column);
          const on = taken.value.includes(reading);
          const partner = partners.value.includes(reading);
          const print = (kPa = 0) => formatNumber(kPa, pressure, system);
          return (
            <button
              key={column}
              type="button"
              id={`${id}-${column}`}
              class={partner ? 'gauge-partner' : undefined}
              aria-pressed={on}
              onClick={() => model.toggle(reading)}
            >
              <span>
                {whenOf(reading)}
                <span class="visually-hidden"> {words.rpm}</span>
              </span>
              <strong>{on ? print(read.value[reading]) : words.read}</strong>
              {on && <span>{words.of({ command: print(commands()[reading]) })}</span>}
              {partner && <span class="visually-hidden">{words.partner}</span>}
            </button>
          );
        })}
      </div>
    </fieldset>
  );
}
