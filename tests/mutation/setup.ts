import { configureGlobal } from 'fast-check';

// One input that fails is enough; the smallest one is not looked for.
configureGlobal({ endOnFailure: true });
