import { useEffect, useLayoutEffect, useState } from 'preact/hooks';
import type { ComponentType } from 'preact';
import { carOfTheWeek, weekOf } from '../cases/car-of-the-week.ts';
import type { CaseScene } from '../meeting/meeting.ts';
import { searchOf } from '../practice/case-address.ts';
import type { CasePageProps } from '../practice/CasePage.tsx';
import { dayOf } from '../quiz/schedule/day.ts';
import { putAddress } from './address.ts';
import { CarParts } from './CarParts.tsx';
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
  const [Page, setPage] = useState<ComponentType<CasePageProps> | 'failed' | null>(null);
  useLayoutEffect(() => {
    putAddress(search);
    return () => putAddress('');
  }, []);
  useEffect(() => {
    import('../practice/CasePage.tsx').then(
      ({ CasePage }) => setPage(() => CasePage),
      () => setPage('failed'),
    );
  }, []);
  if (Page === null) return <p role="status">{words.car.loading}</p>;
  if (Page === 'failed') return <p role="alert">{words.car.failed}</p>;
  return (
    <CarParts>
      <Page onWall />
    </CarParts>
  );
}
