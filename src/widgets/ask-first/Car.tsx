import type { AskFirstModel } from './model.ts';
import { printCount } from './print.ts';
import { words } from './words.en.ts';

/** Which car is at the counter, and the way to another that nobody knows. */
export function Car({ model, id }: { readonly model: AskFirstModel; readonly id: string }) {
  const { car } = words;
  const number = printCount(model.givens.car.value);
  return (
    <div class="ask-car">
      <span>{model.hidden.value ? car.hidden({ number }) : car.chosen}</span>
      <button type="button" id={id} class="quiet" onClick={() => model.deal()}>
        {car.another}
      </button>
    </div>
  );
}
