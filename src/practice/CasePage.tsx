import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { MOST_SEED } from '../cases/made-key.ts';
import { Later } from '../simulation/Later.tsx';
import { useReady } from '../ui/use-units.ts';
import { readAddress } from './case-address.ts';
import { loadCase, type Loaded } from './load-case.ts';
import { words } from './words.en.ts';

const loadBay = () => import('./Bay.tsx').then(({ Bay }) => Bay);

export interface CasePageProps {
  /** In front of a room, which is to see no answer unasked. */
  readonly onWall?: boolean;
}

/** The page's island: reads which car the link names and brings it in; all else is fetched with the car. */
export function CasePage({ onWall = false }: CasePageProps) {
  const loaded = useSignal<Loaded | null>(null);
  const ready = useReady();
  useEffect(() => {
    void loadCase(readAddress(location.search)).then((found) => (loaded.value = found));
  }, []);
  const { page } = words;
  const now = loaded.value;
  return (
    <div class="case" id="case" data-ready={ready && now !== null}>
      {ready && now === null && <p role="status">{page.loading}</p>}
      {now?.kind === 'case' && (
        <Later load={loadBay} props={{ bench: now.bench, search: now.search, onWall }} />
      )}
      {now?.kind === 'none' && <Trouble text={page.none} />}
      {now?.kind === 'unknown' && <Trouble text={page.unknown({ id: now.id })} />}
      {now?.kind === 'bad-made' && <Trouble text={page.badMade({ most: String(MOST_SEED) })} />}
      {now?.kind === 'failed' && (
        <>
          <Trouble text={page.failed} />
          <button type="button" class="quiet" onClick={() => location.reload()}>
            {page.reload}
          </button>
        </>
      )}
    </div>
  );
}

const Trouble = ({ text }: { readonly text: string }) => (
  <>
    <p role="alert">{text}</p>
    <p>
      <a href="/practise/cases/">{words.page.toList}</a>
    </p>
  </>
);
