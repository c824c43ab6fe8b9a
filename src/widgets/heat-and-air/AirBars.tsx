import { format } from '../../quantity/print.ts';
import { percent } from '../../quantity/quantities.ts';
import { useUnits } from '../../ui/use-units.ts';
import { HEALTHY_AIR, type HeatAndAirModel } from './model.ts';
import { words } from './words.en.ts';

/** What the tester's gauge holds of its supply, in two places; the tick is a healthy one. */
export function AirBars({ model }: { readonly model: HeatAndAirModel }) {
  const system = useUnits();
  const { held } = words.air;
  return (
    <dl class="air-bars">
      {(['circuit', 'seal'] as const).map((place) => {
        const here = model.air.value[place];
        const healthy = HEALTHY_AIR[place];
        return (
          <div key={place}>
            <dt>{words.air[place]}</dt>
            <dd>
              <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
                <rect class="air-held" width={here} height={8} />
                <path class="air-tick" d={`M${healthy} 0V8`} />
              </svg>
              <span>
                {held({
                  held: format(here, percent, system),
                  healthy: format(healthy, percent, system),
                })}
              </span>
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
