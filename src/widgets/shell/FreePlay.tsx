import { CopyLink } from '../../ui/CopyLink.tsx';
import { printLink } from '../../ui/link-state.ts';
import { More } from '../../ui/More.tsx';
import { Reset } from '../../ui/Reset.tsx';
import { Controls } from './Controls.tsx';
import { currentValues } from './link-schema.ts';
import type { ControlSpec, Givens, SimModel } from './sim-spec.ts';
import type { LinkSchema } from '../../ui/link-state.ts';

export const OPEN_CONTROLS = 3;

interface FreePlayProps<G extends Givens> {
  readonly sim: string;
  readonly controls: readonly ControlSpec<G>[];
  readonly model: SimModel<G>;
  readonly schema: LinkSchema;
  /** What had to be changed in the link that led here. */
  readonly notes: readonly string[];
}

/** Everything open: three controls at hand, the rest behind a fold, a reset, a link to this state. */
export function FreePlay<G extends Givens>({
  sim,
  controls,
  model,
  schema,
  notes,
}: FreePlayProps<G>) {
  const rest = controls.slice(OPEN_CONTROLS);
  return (
    <div class="sim-stage">
      {notes.length > 0 && (
        <ul class="sim-notes" role="status">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <Controls sim={sim} model={model} controls={controls.slice(0, OPEN_CONTROLS)} />
      {rest.length > 0 && (
        <More label="More controls">
          <Controls sim={sim} model={model} controls={rest} />
        </More>
      )}
      <div class="sim-go">
        <Reset onReset={() => model.reset()} />
        <CopyLink
          id={sim}
          anchor={sim}
          search={() => printLink(schema, currentValues(schema, model), location.search)}
        />
      </div>
    </div>
  );
}
