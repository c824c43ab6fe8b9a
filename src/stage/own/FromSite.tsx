import { useEffect, useState } from 'preact/hooks';
import { readStateLink, type StateLink } from '../../meeting/state-link.ts';
import { readAddress } from '../../practice/case-address.ts';
import { stateWords, type NamedState } from '../../simulation/state-words.ts';
import { useUnits } from '../../ui/use-units.ts';
import { viewOf } from '../simulations.ts';
import { words } from './words.en.ts';

const { editor } = words;

interface FromSiteProps {
  /** The folder that the site stands in. */
  readonly base: string;
  readonly path: string;
}

const addressOf = ({ base, path }: FromSiteProps): string => base + path.replace(/^\//, '');

/**
 * A simulation at a state, by its title and what it is set to. What came with a link or a file may hold any address; one of no known
 * form is shown and leads nowhere.
 */
export function SimulationAt({ base, path }: FromSiteProps) {
  const link = readStateLink(path);
  return link ? <StateOf address={addressOf({ base, path })} link={link} /> : <code>{path}</code>;
}

function StateOf({ address, link }: { readonly address: string; readonly link: StateLink }) {
  const system = useUnits();
  const [sim, setSim] = useState<NamedState | undefined>();
  useEffect(() => {
    viewOf(link.id)?.().then(
      ({ View }) => setSim(View.sim),
      // Without it the link stands there, and leads on.
      () => undefined,
    );
  }, [link.id]);
  const set = sim ? stateWords(sim, link.state, system) : [];
  return (
    <>
      <a href={address}>{sim?.title ?? editor.kinds.simulation}</a>
      {set.length > 0 && `. ${set.map(({ label, value }) => `${label}: ${value}`).join('; ')}.`}
    </>
  );
}

/** A practice case by its title. */
export function CaseAt({ base, search }: { readonly base: string; readonly search: string }) {
  const [title, setTitle] = useState<string>(editor.kinds.case);
  useEffect(() => {
    const load = async (): Promise<void> => {
      const { loadCase } = await import('../../practice/load-case.ts');
      const loaded = await loadCase(readAddress(search));
      if (loaded.kind === 'case') setTitle(loaded.bench.title);
    };
    load().catch(() => undefined);
  }, [search]);
  return <a href={addressOf({ base, path: `practise/case/${search}` })}>{title}</a>;
}
