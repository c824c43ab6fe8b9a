import type { AskFirstModel } from './model.ts';
import { printCount } from './print.ts';
import { words } from './words.en.ts';

/** Which car is at the counter, and the way to another that nobody knows. */
export function Car({ model, id }: { readonly model: AskFirstModel; readonly id: string }) {
  const { car } = words;
  const { hidden, givens } = model;
  const number = printCount(givens.car.value);
  const told = givens.named.value === 'none' ? car.hidden : car.shown;
  return (
    <div class="ask-car">
      <span>{hidden.value ? told({ number }) : car.chosen}</span>
      <button type="button" id={id} class="quiet" onClick={() => model.deal()}>
        {car.another}
      </button>
    </div>
  );
}
