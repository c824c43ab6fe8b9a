/** imsmanifest.xml of SCORM 1.2: one organization, one item, one object that reports, and every file of it. */
import { escaped } from '../build/escape.ts';

export interface Course {
  readonly title: string;
  readonly launch: string;
  readonly files: readonly string[];
}

export const manifestOf = ({
  title,
  launch,
  files,
}: Course): string => `<?xml version="1.0" encoding="UTF-8"?>
<manifest identifier="slips-when-hot" version="1.1"
  xmlns="http://www.imsproject.org/xsd/imscp_rootv1p1p2"
  xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_rootv1p2"
  xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
  xsi:schemaLocation="http://www.imsproject.org/xsd/imscp_rootv1p1p2 imscp_rootv1p1p2.xsd http://www.adlnet.org/xsd/adlcp_rootv1p2 adlcp_rootv1p2.xsd">
  <metadata>
    <schema>ADL SCORM</schema>
    <schemaversion>1.2</schemaversion>
  </metadata>
  <organizations default="course">
    <organization identifier="course">
      <title>${escaped(title)}</title>
      <item identifier="whole-course" identifierref="site">
        <title>${escaped(title)}</title>
      </item>
    </organization>
  </organizations>
  <resources>
    <resource identifier="site" type="webcontent" adlcp:scormtype="sco" href="${escaped(launch)}">
${files.map((file) => `      <file href="${escaped(encodeURI(file))}"/>`).join('\n')}
    </resource>
  </resources>
</manifest>
`;
