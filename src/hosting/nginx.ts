import { parseHeaders } from '../build/headers.ts';

interface Where {
  /** The folder that the site stands in on the machine. */
  readonly root: string;
  readonly port: number;
  /** The folder of the host that the site stands in: "/" or "/shop/". */
  readonly base: string;
  /** Where the server keeps its own list of types. */
  readonly types?: string;
}

/** In double quotes nginx still reads these. */
const quoted = (text: string): string => {
  if (text.includes('$'))
    throw new Error(`A header with a $ in it cannot be told to nginx: ${text}`);
  return `"${text.replace(/[\\"]/g, '\\$&')}"`;
};

/**
 * A server block for nginx that sends a built site as public/_headers wants it.
 * @param headers text of that file, so that the two cannot drift apart
 */
export function nginxConfig(
  headers: string,
  { root, port, base, types = '/etc/nginx/mime.types' }: Where,
): string {
  const escaped = base.replaceAll('.', '\\.');
  const sent = parseHeaders(headers)
    .map(([name, value]) => `  add_header ${name} ${quoted(value)} always;`)
    .join('\n');
  return `# Made by "npm run container" from public/_headers.
map $uri $slips_when_hot_cache {
  # Their names change with what is in them.
  ~/_astro/ "public, max-age=31536000, immutable";
  default no-cache;
}

server {
  listen ${port};
  root ${root};
  index index.html;
  error_page 404 ${base}404.html;
  # Behind a proxy with another name and port, a slash is added without naming either.
  absolute_redirect off;
  server_tokens off;

  include ${types};
  types {
    application/manifest+json webmanifest;
    text/csv csv;
  }
  charset utf-8;
  charset_types text/html text/plain text/css text/csv text/javascript application/javascript;

  gzip on;
  gzip_vary on;
  gzip_min_length 1000;
  gzip_types text/plain text/css text/csv text/javascript application/javascript application/json application/manifest+json image/svg+xml;

  add_header Cache-Control $slips_when_hot_cache always;
${sent}

  # For hosts that read it, and for tools.
  location ~ ^${escaped}_[^/]*$ {
    return 404;
  }
  location ~ /\\. {
    return 404;
  }
}
`;
}
