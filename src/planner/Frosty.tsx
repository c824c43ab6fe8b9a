import type { PlannerModel } from './model.ts';
import { words } from './words.en.ts';

/** Whether a frosty morning is at hand: only then are its tests proposed. */
export function Frosty({ model }: { readonly model: Pick<PlannerModel, 'coldMorning'> }) {
  return (
    <label class="next-check">
      <input
        type="checkbox"
        checked={model.coldMorning.value}
        onChange={(event) => (model.coldMorning.value = event.currentTarget.checked)}
      />
      {words.form.frost}
    </label>
  );
}
