import type { ReadonlySignal } from '@preact/signals';
import { useLayoutEffect, useMemo } from 'preact/hooks';
import type { PlannerModel } from '../planner/model.ts';
import { chosenBy } from './chosen-here.ts';
import { follow } from './chosen.ts';
import { TransmissionChoice } from './TransmissionChoice.tsx';

interface OnTransmissionProps {
  /** The planner that is to reason about what is chosen. */
  readonly model: Pick<PlannerModel, 'table' | 'tableIs' | 'basis' | 'unreadable'>;
  readonly which: ReadonlySignal<string>;
  readonly choose: (which: string) => void;
  /** The table of the training transmission, which the page has. */
  readonly training: string;
}

/** The choice of a transmission, and the planner of the page on what is chosen. */
export function OnTransmission({ model, which, choose, training }: OnTransmissionProps) {
  const chosen = useMemo(() => chosenBy(which, training), []);
  useLayoutEffect(() => {
    const unfollow = follow(model, chosen);
    return () => {
      unfollow();
      chosen.end();
    };
  }, []);
  return <TransmissionChoice chosen={chosen} choose={choose} />;
}
