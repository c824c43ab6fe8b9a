/** All questions as a QTI 3.0 package, for systems that are not this site. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { packageUnits, qtiPackage, type PackageUnits } from '../../lessons/qti-bank.ts';

interface Props {
  readonly units: PackageUnits;
}

export const getStaticPaths = (() =>
  (Object.keys(packageUnits) as PackageUnits[]).map((units) => ({
    params: { units },
    props: { units },
  }))) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = ({ props: { units } }) =>
  new Response(qtiPackage(units), { headers: { 'content-type': 'application/zip' } });
