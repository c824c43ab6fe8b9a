import { encode } from 'uqr';
import { words } from './words.en.ts';

/** Below this a phone at the last row reads every square of it [characters]. */
const MOST = 1000;

const LOCAL = new Set(['localhost', '127.0.0.1', '[::1]', '']);

interface CodeProps {
  readonly address: string | undefined;
  /** It leads to the lesson of the question, which is not what stands on the wall. */
  readonly lesson: boolean;
}

/** A code with the address of what stands on the wall, drawn as squares of one path. */
export function Code({ address, lesson }: CodeProps) {
  if (address === undefined || address.length > MOST) {
    return (
      <div class="stage-code">
        <h2>{words.code}</h2>
        <p>{address === undefined ? words.qr.none : words.qr.tooLong}</p>
      </div>
    );
  }
  const { protocol, hostname } = new URL(address);
  const local = protocol === 'file:' || LOCAL.has(hostname);
  return (
    <div class="stage-code">
      <h2>{words.qr.title}</h2>
      <Squares address={address} />
      <p>{lesson ? words.qr.lesson : words.qr.what}</p>
      {local && <p role="status">{words.qr.local}</p>}
      <p class="stage-address">{address}</p>
    </div>
  );
}

function Squares({ address }: { readonly address: string }) {
  const { data, size } = encode(address, { ecc: 'L', border: 4 });
  const path = data
    .flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])))
    .join('');
  return (
    <svg
      class="stage-squares"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={words.qr.picture(address)}
      shape-rendering="crispEdges"
    >
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}
