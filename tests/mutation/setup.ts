import '../one-seed.ts';
import { configureGlobal, readConfigureGlobal } from 'fast-check';

// One input that fails is enough; the smallest one is not looked for.
configureGlobal({ ...readConfigureGlobal(), endOnFailure: true });
