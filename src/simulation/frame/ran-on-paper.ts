import { h, type ComponentType } from 'preact';
import { render } from 'preact-render-to-string';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { onPaper } from '../../ui/on-paper.ts';

/** Places in the picture, and what names them; the living picture stands on the same page with the same ones. */
const PLACES =
  /(\s(?:id|for|aria-labelledby|aria-describedby)="|(?:href|xlink:href)="#|url\(#)([^")]+)/gu;

type Sheet = UnitSystem | 'both';

/** A simulation at the end of its run, as markup for one unit system or, where nothing of it is measured, for both. */
export function ranOnPaper<P extends object>(
  View: ComponentType<P>,
  props: P,
): readonly { readonly on: Sheet; readonly html: string }[] {
  const [us, si] = [drawn(View, props, 'us'), drawn(View, props, 'si')];
  const sheets =
    us === si
      ? [{ on: 'both' as const, html: us }]
      : [
          { on: 'us' as const, html: us },
          { on: 'si' as const, html: si },
        ];
  return sheets.map(({ on, html }) => ({ on, html: withOwnPlaces(html, on) }));
}

function drawn<P extends object>(View: ComponentType<P>, props: P, units: UnitSystem): string {
  onPaper.units = units;
  try {
    return render(h(View, props));
  } finally {
    onPaper.units = null;
  }
}

const withOwnPlaces = (html: string, sheet: Sheet): string =>
  html.replace(PLACES, (_, before: string, ids: string) => {
    const own = ids.split(' ').map((id) => `${id}-ran-${sheet}`);
    return before + own.join(' ');
  });
