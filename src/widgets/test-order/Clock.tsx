import { opens } from '../../cases/bay-tests.ts';
import type { TestOrderModel } from './model.ts';
import { printMinutes } from './print.ts';
import { words } from './words.en.ts';

/** A working day's half, as wide as the strip [min]. */
const STRIP = 240;
const GAP = 0.6;

/** What has been spent: a strip of the tests, as long as their minutes, open where the transmission was. */
export function Clock({ model }: { readonly model: TestOrderModel }) {
  let from = 0;
  const parts = model.way.value.map(({ took: { one, minutes } }) => {
    const part = { one, from, minutes };
    from += minutes;
    return part;
  });
  return (
    <>
      <figcaption>
        {parts.length === 0
          ? words.clock.none
          : words.clock.spent({
              minutes: printMinutes(from),
              reach: words.reaches[model.reach.value],
            })}
      </figcaption>
      <svg
        class="test-clock"
        viewBox={`0 0 ${STRIP} 6`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {parts.map(({ one, from: x, minutes }) => (
          <rect
            key={one.key}
            class={opens(one) ? 'test-opened' : undefined}
            x={x}
            width={Math.max(GAP, minutes - GAP)}
            height={6}
          />
        ))}
      </svg>
    </>
  );
}
