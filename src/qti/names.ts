/** Names that the standard lays down, and those of the files in a package. */
export const ASI = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';
export const PACKAGING = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1';
export const LOM = 'http://ltsc.ieee.org/xsd/LOM';
export const ITEM_TYPE = 'imsqti_item_xmlv3p0';
export const TEST_TYPE = 'imsqti_test_xmlv3p0';
export const MANIFEST = 'imsmanifest.xml';
/** Who wrote a package: only its own can be read back. */
export const TOOL = 'slips-when-hot';

export const RESPONSE = 'RESPONSE';
export const SCORE = 'SCORE';
export const FEEDBACK = 'FEEDBACK';

export const itemPath = (id: string): string => `items/${id}.xml`;
export const chartPath = (id: string): string => `charts/${id}.svg`;
export const testPath = (lesson: string): string => `${lesson}.xml`;

/** An id as an identifier, which in XML does not begin with a digit. No id of ours begins with the mark. */
export const named = (id: string): string => (/^\d/u.test(id) ? `_${id}` : id);
export const unnamed = (identifier: string): string => identifier.replace(/^_/u, '');
