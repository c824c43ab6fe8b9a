// Every wrong change that Stryker would make to the files named in the input, as JSON.
import { readFileSync } from 'node:fs';
import { Instrumenter } from '@stryker-mutator/instrumenter';

const silent = { debug() {}, info() {}, isDebugEnabled: () => false };
const files = JSON.parse(readFileSync(0, 'utf8')).map((name) => ({
  name,
  mutate: true,
  content: readFileSync(name, 'utf8'),
}));
const { mutants } = await new Instrumenter(silent).instrument(files, {
  plugins: null,
  excludedMutations: [],
  ignorers: [],
});
console.log(JSON.stringify(mutants));
