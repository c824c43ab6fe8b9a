// The published types are those of another server framework; this is the part that plain Node uses.
declare module 'compression' {
  import type { IncomingMessage, ServerResponse } from 'node:http';

  export default function compression(): (
    request: IncomingMessage,
    response: ServerResponse,
    next: () => void,
  ) => void;
}
