/** The address of the stage: the scene behind the #, and before it what a simulation or a car on the wall reads its state from. */
let hash = '';
let search = '';
/** What the page itself has there, as the meeting of one's own that it shows. */
let own = '';

const put = (): void =>
  // What a simulation kept in this entry belongs to another scene.
  history.replaceState(
    null,
    '',
    `${location.pathname}${own}${own === '' ? search : search.replace('?', '&')}${hash}`,
  );

export function putPlace(place: string): void {
  hash = place;
  put();
}

export function putAddress(state: string): void {
  search = state;
  put();
}

export function putOwn(search: string): void {
  own = search;
  put();
}
