/** A host sends the page of a folder also to who leaves out the slash at its end. */
export function pageFor({ href, pathname }: URL): URL[] {
  if (/\/$|\.[a-z0-9]+$/.test(pathname)) return [];
  const page = new URL(href);
  page.pathname += '/index.html';
  page.search = '';
  page.hash = '';
  return [page];
}

/** The page for a miss, told as one: the store keeps it as a file like any other. */
export function deadLink(page: Response | undefined): Response {
  if (page === undefined) return Response.error();
  return new Response(page.body, { status: 404, headers: page.headers });
}
