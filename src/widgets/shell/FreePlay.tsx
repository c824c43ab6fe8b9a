import { CopyLink } from '../../ui/CopyLink.tsx';
import { printLink, type LinkSchema } from '../../ui/link-state.ts';
import { More } from '../../ui/More.tsx';
import { Reset } from '../../ui/Reset.tsx';
import { Controls } from './Controls.tsx';
import { currentValues } from './link-schema.ts';
import type { DrawnControls, Givens, SimModel, SimSpec } from './sim-spec.ts';

export const OPEN_CONTROLS = 3;

interface FreePlayProps<G extends Givens, M extends SimModel<G>> {
  readonly sim: SimSpec<G, M>;
  readonly model: M;
  readonly schema: LinkSchema;
  /** What had to be changed in the link that led here. */
  readonly notes: readonly string[];
  readonly drawn?: DrawnControls<G> | undefined;
}

/** Everything open: three controls at hand, the rest behind a fold, a reset, a link to this state. */
export function FreePlay<G extends Givens, M extends SimModel<G>>(props: FreePlayProps<G, M>) {
  const { sim, model, schema, notes, drawn } = props;
  const { id, controls } = sim;
  const rest = controls.slice(OPEN_CONTROLS);
  return (
    <div class="sim-stage">
      {notes.length > 0 && (
        <div class="sim-notes" role="status">
          {notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
        </div>
      )}
      <Controls sim={id} model={model} controls={controls.slice(0, OPEN_CONTROLS)} drawn={drawn} />
      {rest.length > 0 && (
        <More label="More controls">
          <Controls sim={id} model={model} controls={rest} drawn={drawn} />
        </More>
      )}
      <div class="sim-go">
        <Reset onReset={() => model.reset()} />
        <CopyLink
          id={id}
          anchor={id}
          search={() => printLink(schema, currentValues(sim, model), location.search)}
        />
      </div>
    </div>
  );
}
