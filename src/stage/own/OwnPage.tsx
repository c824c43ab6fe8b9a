import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { readOwnLink, type LinkRead } from '../../meeting/own-link.ts';
import { meetingStore } from '../../storage/meetings/meeting-store.ts';
import { LONGEST } from '../../storage/meetings/own-meeting.ts';
import { Fresh } from '../../ui/kept/Fresh.tsx';
import { KeptFiles } from '../../ui/kept/KeptFiles.tsx';
import { Undo } from '../../ui/kept/Undo.tsx';
import { useOpened } from '../../ui/kept/use-opened.ts';
import { words as kept } from '../../ui/kept/words.en.ts';
import { useReady } from '../../ui/use-units.ts';
import { Editor } from './Editor.tsx';
import { makeMeetings, type MeetingsModel } from './model.ts';
import type { OfSite } from './of-site.ts';
import { words } from './words.en.ts';

interface OwnPageProps {
  readonly base: string;
  readonly site: OfSite;
}

/** Meetings of one's own: the list, or one of them being put together. */
export function OwnPage({ base, site }: OwnPageProps) {
  const meetings = useMemo(() => makeMeetings({ store: meetingStore() }), []);
  const { at, frame, open, close } = useOpened(meetings, 'meeting-new');
  const came = useSignal<LinkRead>({ ok: false, fault: 'none' });
  const onStage = useSignal(false);
  const ready = useReady();
  useEffect(() => {
    const read = readOwnLink(location.hash);
    came.value = read;
    // A reload in the midst of a meeting comes back to it.
    const own = new URLSearchParams(location.search).get('own');
    if (own !== null && location.hash.startsWith('#stage-')) {
      onStage.value = true;
      at.value = own;
    }
  }, []);
  const fault = meetings.fault.value;
  const shown = meetings.loaded.value ? meetings.meeting(at.value) : undefined;
  const link = came.value;
  const forget = (): void => {
    came.value = { ok: false, fault: 'none' };
    history.replaceState(null, '', location.pathname);
    at.value = '';
  };
  return (
    <div class="own-page" ref={frame} data-ready={ready && meetings.loaded.value}>
      {fault && <p role="alert">{kept.fault[fault]}</p>}
      {!link.ok && link.fault !== 'none' && <p role="alert">{words.came.faults[link.fault]}</p>}
      {link.ok && (
        <section class="own-came">
          <h2>{words.came.title(link.plan.title)}</h2>
          <p>
            {words.came.about({
              scenes: words.scenes(String(link.plan.scenes.length)),
              minutes: String(link.plan.minutes),
            })}
          </p>
          <p>
            <button
              type="button"
              class="act"
              onClick={() => {
                forget();
                open(meetings.add(link.plan));
              }}
            >
              {words.came.keep}
            </button>{' '}
            <button type="button" class="quiet" onClick={forget}>
              {words.came.drop}
            </button>
          </p>
        </section>
      )}
      {shown ? (
        <Editor
          key={shown.id}
          {...{ base, site, meetings, close }}
          meeting={shown}
          startNow={onStage.value}
        />
      ) : (
        <List meetings={meetings} open={open} locale={site.locale} />
      )}
    </div>
  );
}

interface ListProps {
  readonly meetings: MeetingsModel;
  readonly open: (meeting: { readonly id: string }) => void;
  readonly locale: string;
}

function List({ meetings, open, locale }: ListProps) {
  const listed = meetings.listed.value;
  // Not by ui/dates.ts: what it brings along would be cut out of the pieces that every page with a simulation loads.
  const when = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });
  return (
    <>
      <Fresh
        id="meeting"
        most={LONGEST.title}
        said={{
          fresh: words.fresh,
          label: words.name,
          how: words.nameHow,
          missing: words.nameMissing,
          start: words.begin,
        }}
        start={(title) => open(meetings.add({ title, minutes: 10, scenes: [] }))}
      />
      <section class="kept-listed" aria-labelledby="meeting-list-title">
        <h2 id="meeting-list-title" tabIndex={-1}>
          {words.listed}
        </h2>
        <Undo
          gone={meetings.gone.value}
          nameOf={({ plan }) => plan.value.title}
          bringBack={meetings.bringBack}
          heading="meeting-list-title"
        />
        {!meetings.loaded.value ? (
          <p class="muted">{words.loading}</p>
        ) : listed.length === 0 ? (
          <p class="muted">{words.none}</p>
        ) : (
          <ul>
            {listed.map((meeting) => (
              <li key={meeting.id}>
                <a
                  href={`#${meeting.id}`}
                  onClick={(event) => {
                    event.preventDefault();
                    open(meeting);
                  }}
                >
                  {meeting.plan.value.title}
                </a>{' '}
                <span class="muted">
                  {words.scenes(String(meeting.plan.value.scenes.length))},{' '}
                  {words.changed(when.format(meeting.plan.at))}
                </span>{' '}
                <button
                  type="button"
                  class="quiet"
                  aria-label={words.remove(meeting.plan.value.title)}
                  onClick={() => meetings.remove(meeting)}
                >
                  {words.removeShort}
                </button>
              </li>
            ))}
          </ul>
        )}
      </section>
      <KeptFiles id="meeting" kept={meetings} said={words} />
    </>
  );
}
