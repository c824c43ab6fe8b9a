import { useUnits } from '../../ui/use-units.ts';
import { books, BOOKS } from './books.ts';
import type { HoldingModel } from './model.ts';
import { bookNumber } from './words.ts';

/** Three worked examples from two textbooks, each beside what the engine makes of the same sizes. */
export function Books({ model }: { readonly model: HoldingModel }) {
  const system = useUnits();
  const chosen = model.givens.example.value;
  return (
    <figure class="holding-books">
      <figcaption>
        <strong>Against the books:</strong> dry clutches without a return spring, reckoned with the
        same formula as ours.
      </figcaption>
      <div class="table-scroll" role="region" tabIndex={0} aria-label="Against the books">
        <table>
          <thead>
            <tr>
              <th scope="col">Textbook example</th>
              <th scope="col">The book</th>
              <th scope="col">This model</th>
            </tr>
          </thead>
          <tbody>
            {BOOKS.map((book) => (
              <tr key={book} aria-current={chosen === book ? 'true' : undefined}>
                <th scope="row">
                  {books[book].full}. <span class="holding-how">{books[book].how}</span>
                </th>
                <td>{bookNumber(book, 'book', system)}</td>
                <td>{bookNumber(book, 'model', system)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </figure>
  );
}
