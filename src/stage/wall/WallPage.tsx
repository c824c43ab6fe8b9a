import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Meeting } from '../../meeting/meeting.ts';
import { readWallLink, type WallLink } from '../../meeting/wall-link.ts';
import { useReady } from '../../ui/use-units.ts';
import type { StageProps } from '../Stage.tsx';
import type { NamedScene } from '../own/name-scene.ts';
import { words } from './words.en.ts';

interface WallPageProps {
  readonly base: string;
  readonly lessons: readonly { readonly id: string; readonly title: string }[];
  /** What a simulation calls its last stage, and the button there that leads here. */
  readonly said: { readonly controls: string; readonly button: string };
}

interface Ready {
  readonly link: WallLink;
  readonly meeting: Meeting;
  readonly Stage: ComponentType<StageProps>;
}

/** A meeting of one scene: what a lesson's simulation shows. Leaving it leads back there, with the state that it has by then. */
export function WallPage({ base, lessons, said }: WallPageProps) {
  const [shown, setShown] = useState<Ready | 'loading' | 'failed' | 'none'>('loading');
  const ready = useReady();
  useEffect(() => {
    const link = readWallLink(location.search);
    if (!link) {
      setShown('none');
      return;
    }
    const load = async (): Promise<void> => {
      const { Stage, nameState } = await import('../own/begin.ts');
      const named = await nameState(link);
      const lesson = lessons.find(({ id }) => link.page.includes(`/${id}/`));
      setShown({ link, Stage, meeting: meetingOf(link, lesson?.title ?? words.title, named) });
    };
    load().catch(() => setShown('failed'));
  }, []);
  if (typeof shown === 'string')
    return (
      <p role={shown === 'loading' ? 'status' : 'alert'} data-ready={ready}>
        {shown === 'none' ? words.none(said) : words[shown]}
      </p>
    );
  const { link, meeting, Stage } = shown;
  return (
    <Stage
      meeting={meeting}
      base={base}
      own={`?page=${link.page}`}
      onLeave={(_, search = `?${link.id}=${link.state}`) =>
        // In the place of the wall: Back from the lesson does not lead onto it again.
        location.replace(`${base}${link.page}${search}#${link.id}`)
      }
    />
  );
}

function meetingOf(link: WallLink, title: string, named: NamedScene | undefined): Meeting {
  const set = named?.set ?? [];
  return {
    id: `wall-${link.id}`,
    title,
    minutes: 10,
    clockHidden: true,
    scenes: [
      {
        kind: 'simulation',
        heading: named?.title ?? words.scene,
        lines: [],
        notes: set.length === 0 ? [] : [`${words.asItCame} `, ...set, '.'],
        state: link.href,
      },
    ],
  };
}
