import { textFor } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { books, BOOKS } from './books.ts';
import type { HoldingModel } from './model.ts';
import { bookNumber } from './words.ts';

/**
 * Three worked examples from two textbooks, each beside what the engine makes of the same sizes.
 * The example heads its own row of two numbers: beside them, a phone would leave it one word wide.
 */
export function Books({ model }: { readonly model: HoldingModel }) {
  const system = useUnits();
  const chosen = model.givens.example.value;
  return (
    <figure class="holding-books">
      <figcaption>
        <strong>Against the books:</strong> dry clutches without a return spring, reckoned with the
        same formula as ours.
      </figcaption>
      <table aria-label="Against the books">
        <thead>
          <tr>
            <th scope="col">The book</th>
            <th scope="col">This model</th>
          </tr>
        </thead>
        {BOOKS.map((book) => (
          <tbody key={book} aria-current={chosen === book ? 'true' : undefined}>
            <tr>
              <th scope="rowgroup" colSpan={2}>
                {books[book].full}.{' '}
                <span class="holding-how">{textFor(books[book].how, system)}</span>
              </th>
            </tr>
            <tr>
              <td>{bookNumber(book, 'book', system)}</td>
              <td>{bookNumber(book, 'model', system)}</td>
            </tr>
          </tbody>
        ))}
      </table>
    </figure>
  );
}
