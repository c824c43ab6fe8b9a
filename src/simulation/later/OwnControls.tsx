import { useMemo } from 'preact/hooks';
import { CopyLink } from '../../ui/CopyLink.tsx';
import { parseLink, printLink, type LinkValues } from '../../ui/link-state.ts';
import { More } from '../../ui/More.tsx';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { Reset } from '../../ui/Reset.tsx';
import { useAskedToRun } from './asked-to-run.ts';
import { Controls } from './Controls.tsx';
import { currentValues } from '../current-values.ts';
import { linkSchema } from './link-schema.ts';
import { OPEN_CONTROLS } from './open-controls.ts';
import type { DrawnControls, Givens, SimModel, SimSpec } from '../sim-spec.ts';
import type { StageState } from '../stages.ts';
import { useArrival } from '../use-arrival.ts';
import { Sides } from './Sides.tsx';
import { wallLink } from './wall-link.ts';
import { words } from './words.en.ts';

interface OwnControlsProps<G extends Givens, M extends SimModel<G>> {
  readonly sim: SimSpec<G, M>;
  readonly model: M;
  /** What a link falls back to. */
  readonly defaults: LinkValues;
  /** The link that led here, or nothing. */
  readonly search: string;
  readonly state: StageState;
  readonly system: UnitSystem;
  /** False when a link led here. */
  readonly byHand: boolean;
  readonly drawn?: DrawnControls<G> | undefined;
}

/** Everything open: the first controls at hand, the rest behind a fold, a reset, a link to this state, the way onto the wall. */
export function OwnControls<G extends Givens, M extends SimModel<G>>(
  props: OwnControlsProps<G, M>,
) {
  const { sim, model, defaults, search, state, system, byHand, drawn } = props;
  const schema = useMemo(() => linkSchema(sim, defaults, system), [sim, defaults, system]);
  // What had to be changed in the link; told again when the units change, in the new ones.
  const notes = useMemo(() => parseLink(schema, search).notes, [schema, search]);
  useAskedToRun(sim, model, schema);
  const head = useArrival<HTMLHeadingElement>(byHand);
  const { id, controls, open = OPEN_CONTROLS } = sim;
  const rest = controls.slice(open);
  // What a task or a prediction has set is not hidden from the one who may have to set it back. A link, as on the wall, shows what
  // its writer saw.
  const isSet = useMemo(
    () => byHand && rest.some(({ key }) => model.givens[key].peek() !== defaults[key]),
    [defaults],
  );
  const shared = { sim: id, model, drawn };
  const searchIn = (search: string): string => printLink(schema, currentValues(sim, model), search);
  /** The state of the moment that the link is taken hold of, to be followed here or in a window on the projector. */
  const aim = ({ currentTarget }: { readonly currentTarget: HTMLAnchorElement }): void => {
    currentTarget.href = wallLink(searchIn(''));
  };
  return (
    <div class="sim-stage">
      <h4 class="stage-head" ref={head} tabIndex={-1}>
        {words.ownControls}
      </h4>
      {notes.length > 0 && (
        <div class="sim-notes" role="status">
          {notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
        </div>
      )}
      <Controls {...shared} controls={controls.slice(0, open)} />
      {rest.length > 0 && (
        <More label={words.moreControls} open={isSet}>
          <Controls {...shared} controls={rest} />
        </More>
      )}
      <div class="sim-go">
        <Reset onReset={() => model.reset()} />
        <a
          class="way"
          href={wallLink(searchIn(''))}
          onPointerDown={aim}
          onFocus={aim}
          onClick={aim}
        >
          {words.onWall}
        </a>
        <CopyLink id={id} anchor={id} search={() => searchIn(location.search)} />
      </div>
      {state.before && (
        <More label={words.lastTime}>
          <Sides
            options={sim.predict.options}
            outcomeWords={state.before[system]}
            {...{ state, system }}
          />
        </More>
      )}
    </div>
  );
}
