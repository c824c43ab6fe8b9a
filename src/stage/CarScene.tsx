import { useEffect, useLayoutEffect, useState } from 'preact/hooks';
import type { ComponentType } from 'preact';
import { carOfTheWeek, weekOf } from '../cases/car-of-the-week.ts';
import type { CaseScene } from '../meeting/meeting.ts';
import { searchOf } from '../practice/case-address.ts';
import { dayOf } from '../quiz/schedule/day.ts';
import { putAddress } from './address.ts';
import { words } from './words.en.ts';

/** Where the shop is. */
function thisWeek(): number {
  const now = new Date();
  return weekOf(dayOf(now.getTime(), now.getTimezoneOffset()));
}

export const carSearch = ({ car }: CaseScene): string =>
  'week' in car ? searchOf({ kind: 'made', key: carOfTheWeek(thisWeek(), car.week) }) : car.search;

interface CarSceneProps {
  readonly scene: CaseScene;
  readonly opened: boolean;
}

/** A practice case: its customer first, then the whole of it, to be worked through together. */
export function CarScene({ scene, opened }: CarSceneProps) {
  if (opened) return <OpenedCar search={carSearch(scene)} />;
  return (
    <>
      {scene.complaint !== undefined && <blockquote>“{scene.complaint}”</blockquote>}
      {'week' in scene.car && <p>{words.car.week}</p>}
      <p class="stage-quiet">{words.car.open}</p>
    </>
  );
}

function OpenedCar({ search }: { readonly search: string }) {
  const [Car, setCar] = useState<ComponentType | 'failed' | null>(null);
  useLayoutEffect(() => {
    putAddress(search);
    return () => putAddress('');
  }, []);
  useEffect(() => {
    import('../practice/CasePage.tsx').then(
      ({ CasePage }) => setCar(() => CasePage),
      () => setCar('failed'),
    );
  }, []);
  if (Car === null) return <p role="status">{words.car.loading}</p>;
  if (Car === 'failed') return <p role="alert">{words.car.failed}</p>;
  return (
    <div class="stage-car" data-own-keys>
      <Car />
    </div>
  );
}
