import type { ComponentType } from 'preact';
import { useMemo } from 'preact/hooks';
import { textFor, type UnitSystem } from '../../quantity/unit-system.ts';
import { OPEN_CONTROLS } from '../later/open-controls.ts';
import { valueWords } from '../later/state-words.ts';
import type { DrawnControls, Givens, PictureContext, SimModel, SimSpec } from '../sim-spec.ts';
import { words } from './words.en.ts';

interface RanProps<G extends Givens, M extends SimModel<G>> {
  readonly sim: SimSpec<G, M>;
  readonly model: M;
  readonly Picture: ComponentType<PictureContext & { readonly model: M }>;
  readonly drawn: DrawnControls<G> | undefined;
  readonly units: UnitSystem;
}

const AFTER_RUN: PictureContext = { stage: 'compare', revealed: true, live: () => false };

/** The picture of a simulation at the end of its run, for the paper of somebody who has not run it. Drawn at build, in one unit system. */
export function Ran<G extends Givens, M extends SimModel<G>>(props: RanProps<G, M>) {
  const { sim, model, Picture, drawn = {}, units } = props;
  const { controls, open = OPEN_CONTROLS, predict } = sim;
  useMemo(() => {
    model.apply(predict.start);
    model.apply(predict.end);
  }, [model]);
  // What the run sets. A control that is drawn has a number for its state, which is no word; and `named` is what the learner says of a
  // car, which on paper nobody has said.
  const set = { ...predict.start, ...predict.end };
  const givens = controls
    .filter(({ key }) => key in set && !(key in drawn) && key !== 'named')
    .slice(0, open)
    .map((control) => {
      const { key, label } = control;
      const value = valueWords(control, model.givens[key].peek(), units);
      return words.given({ label: textFor(label, units), value });
    });
  return (
    <>
      <h3>{sim.title}</h3>
      <div class="sim-picture">
        <Picture model={model} {...AFTER_RUN} />
        <p class="live-text">{sim.says(model, units)}</p>
      </div>
      <p>
        {words.ran} {textFor(predict.outcome(model).words, units)}{' '}
        {givens.length > 0 && words.runWith(givens.join('; '))}
      </p>
    </>
  );
}
