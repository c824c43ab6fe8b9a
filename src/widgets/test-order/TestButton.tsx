import type { BAY_TESTS } from '../../cases/bay-tests.ts';
import type { TestOrderModel } from './model.ts';
import { underTest } from './print.ts';
import { words } from './words.en.ts';

interface Props {
  readonly id: string;
  readonly one: (typeof BAY_TESTS)[number];
  readonly model: TestOrderModel;
}

/** A test to take next; pressed again, it is taken back. */
export function TestButton({ id, one, model }: Props) {
  return (
    <button
      type="button"
      id={id}
      class="share-ask"
      aria-pressed={model.givens[one.key].value > 0}
      onClick={() => model.toggle(one.key)}
    >
      <strong>{words.tests[one.key]}</strong>
      <span>{underTest(model, one)}</span>
    </button>
  );
}
