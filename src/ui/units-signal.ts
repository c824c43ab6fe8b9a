import { signal, type ReadonlySignal } from '@preact/signals';
import type { UnitSystem } from '../quantity/unit-system.ts';

/**
 * The unit system that the page shows. The attribute `data-units` on <html> is the truth, set
 * before paint by src/storage/boot.js and changed by the switch in the header, which knows nothing
 * of signals; this mirrors it, so that pages without an island carry no framework.
 */
const shown = signal<UnitSystem>('us');

function readAttribute(): UnitSystem {
  return document.documentElement.dataset.units === 'si' ? 'si' : 'us';
}

if (typeof document !== 'undefined') {
  shown.value = readAttribute();
  new MutationObserver(() => {
    shown.value = readAttribute();
  }).observe(document.documentElement, { attributeFilter: ['data-units'] });
}

export const units: ReadonlySignal<UnitSystem> = shown;
