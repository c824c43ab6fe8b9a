/** The head of a table, a column for each name. */
export const Heads = ({ of }: { readonly of: readonly string[] }) => (
  <thead>
    <tr>
      {of.map((one) => (
        <th key={one} scope="col">
          {one}
        </th>
      ))}
    </tr>
  </thead>
);
