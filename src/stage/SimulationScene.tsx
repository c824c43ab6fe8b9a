import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { SimulationScene as Scene } from '../meeting/meeting.ts';
import { putAddress } from './address.ts';
import { fetchSimulation, searchOf, type Fetched } from './simulations.ts';
import { words } from './words.en.ts';

interface SimulationSceneProps {
  readonly base: string;
  readonly scene: Scene;
  readonly running: boolean;
}

/** What lies in a fold that was opened may lie under the foot of the wall. */
const intoSight = ({ target }: Event): void => {
  if (target instanceof HTMLDetailsElement && target.open)
    target.scrollIntoView({ block: 'nearest' });
};

/** A simulation at the very state of the scene; the next press runs it to the other one. */
export function SimulationScene({ base, scene, running }: SimulationSceneProps) {
  const [got, setGot] = useState<Fetched | 'failed' | 'unknown' | null>(null);
  const box = useRef<HTMLDivElement>(null);
  const first = searchOf(running && scene.run !== undefined ? scene.run : scene.state);
  // A simulation reads its state from the address when it comes up, so that has to say it by then.
  useLayoutEffect(() => {
    putAddress(first?.search ?? '');
    return () => putAddress('');
  }, []);
  useEffect(() => {
    if (first === undefined) {
      setGot('unknown');
      return;
    }
    fetchSimulation(base, first.id).then(
      (fetched) => setGot(fetched ?? 'unknown'),
      () => setGot('failed'),
    );
  }, []);
  useEffect(() => {
    // It does not bubble.
    box.current?.addEventListener('toggle', intoSight, { capture: true });
  }, [got]);
  const shown = useRef(running);
  useEffect(() => {
    if (shown.current === running) return undefined;
    shown.current = running;
    const to = searchOf((running ? scene.run : undefined) ?? scene.state);
    const there = box.current;
    if (!to || !there) return undefined;
    // It came with the state of the scene. Named here it would be a file more, whose name every lesson carries.
    const asking = import('../simulation/later/index.ts').then(
      ({ askToRun }) => askToRun(there, to),
      () => undefined,
    );
    return () => void asking.then((stop) => stop?.());
  }, [running]);
  if (got === null) return <p role="status">{words.simulation.loading}</p>;
  if (got === 'failed') return <p role="alert">{words.simulation.failed}</p>;
  if (got === 'unknown') return <p role="alert">{words.simulation.unknown}</p>;
  const { View, props } = got;
  return (
    <div class="stage-simulation" ref={box} data-own-keys>
      <View {...props} />
    </div>
  );
}
