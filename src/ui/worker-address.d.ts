// What the bundler answers for a worker's address. astro/client knows `?worker&url`; plain tsc does not read it.
declare module '*?worker&url' {
  const address: string;
  export default address;
}
