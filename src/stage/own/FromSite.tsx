import { useEffect, useState } from 'preact/hooks';
import { readStateLink, type StateLink } from '../../meeting/state-link.ts';
import { passageText } from '../../quiz/asked.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { NamedScene } from './name-scene.ts';
import type { OfSite } from './of-site.ts';
import { words } from './words.en.ts';

const { editor } = words;

interface SimulationAtProps {
  /** The folder that the site stands in. */
  readonly base: string;
  readonly path: string;
}

/**
 * A simulation at a state, by its title and what it is set to. What came with a link or a file may hold any address; one of no known
 * form is shown and leads nowhere.
 */
export function SimulationAt({ base, path }: SimulationAtProps) {
  const link = readStateLink(path);
  return link ? <StateOf base={base} link={link} /> : <code>{path}</code>;
}

function StateOf({ base, link }: { readonly base: string; readonly link: StateLink }) {
  const system = useUnits();
  const [named, setNamed] = useState<NamedScene | undefined>();
  useEffect(() => {
    const load = async (): Promise<void> => {
      const { nameState } = await import('./begin.ts');
      setNamed(await nameState(link));
    };
    // Without its words the link stands there, and leads on.
    load().catch(() => undefined);
  }, [link.href]);
  const set = passageText(named?.set ?? [], system);
  return (
    <>
      <a href={base + link.href.replace(/^\//, '')}>{named?.title ?? editor.kinds.simulation}</a>
      {set !== '' && `. ${set}.`}
    </>
  );
}

interface CaseAtProps {
  readonly base: string;
  readonly search: string;
  readonly cases: OfSite['cases'];
}

/** A practice case by its title, or by its number. */
export function CaseAt({ base, search, cases }: CaseAtProps) {
  const params = new URLSearchParams(search);
  const written = cases.find(({ id }) => id === params.get('case'));
  const number = params.get('number');
  return (
    <a href={`${base}practise/case/${search}`}>
      {written?.title ?? (number === null ? editor.kinds.case : editor.madeCar(number))}
    </a>
  );
}
