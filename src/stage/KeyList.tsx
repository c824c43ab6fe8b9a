import { words } from './words.en.ts';

const { keyList } = words;

export const KeyList = () => (
  <div class="stage-keys">
    <h2>{keyList.title}</h2>
    <dl>
      {keyList.rows.map(([key, does]) => (
        <div key={key}>
          <dt>{key}</dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
    <p>{keyList.inside}</p>
  </div>
);
