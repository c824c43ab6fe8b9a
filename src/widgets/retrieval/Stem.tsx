import type { Asked } from '../../quiz/asked.ts';
import { ChartPicture } from './ChartPicture.tsx';
import { words } from './player/words.en.ts';
import { WordsText } from './WordsText.tsx';

/** What is asked: its words, and the chart that they are about. */
export const Stem = ({ asked: { stem, chart } }: { readonly asked: Asked }) => (
  <>
    <p class="retrieval-stem">
      <WordsText words={stem} />
    </p>
    {chart !== undefined && <ChartPicture chart={chart} asTable={words.chartAsTable} />}
  </>
);
