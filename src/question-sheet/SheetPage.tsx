import { useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { units } from '../ui/units-signal.ts';
import { useReady } from '../ui/use-units.ts';
import type { Area } from './choice.ts';
import { Form } from './Form.tsx';
import type { Made } from './Made.tsx';
import { sheetModel, type SheetModel } from './model.ts';
import { words } from './words.en.ts';

interface SheetPageProps {
  readonly areas: readonly Area[];
  /** The folder that the site stands in. */
  readonly base: string;
}

/** Comes with the script that draws. */
let Shows: typeof Made | undefined;

export function SheetPage({ areas, base }: SheetPageProps) {
  const ready = useReady();
  // Address and units exist in the browser alone.
  const model = useMemo(() => (ready ? inBrowser(areas, base) : undefined), [ready]);
  useEffect(() => {
    if (model?.linked) void model.make();
  }, [model]);
  if (model === undefined) return <p role="status">{words.reading}</p>;
  return (
    <div class="sheet-maker" data-ready="true">
      <Form model={model} />
      <Below model={model} />
    </div>
  );
}

const inBrowser = (areas: readonly Area[], base: string): SheetModel =>
  sheetModel({
    areas,
    search: location.search,
    units: units.peek(),
    base,
    loadDrawer: async () => {
      const { draw, Made: loaded } = await import('./drawer.ts');
      Shows = loaded;
      return draw;
    },
    write: (search) => history.replaceState(history.state, '', search),
    drawSeed: () => String(1000 + Math.floor(Math.random() * 9000)),
  });

function Below({ model }: { readonly model: SheetModel }) {
  const head = useRef<HTMLHeadingElement>(null);
  const made = model.made.value;
  useLayoutEffect(() => {
    if (made === undefined) return;
    head.current?.focus({ preventScroll: true });
    head.current?.scrollIntoView({ block: 'start' });
  }, [made]);
  if (made === undefined || Shows === undefined) return <p class="print-only">{words.nothing}</p>;
  return <Shows model={model} made={made} head={head} />;
}
