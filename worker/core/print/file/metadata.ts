import { textString } from '../draw/pdf-text.ts';
import type { PrintMetadata } from '../print-job.ts';

const PRODUCER = 'Slipmark';

// Characters that XML cannot contain (XML 1.0, 2.2) are also left out of the information dictionary, as both must
// agree. A lone half of a surrogate pair is not text.
const NO_XML = /[^\t\n\r\x20-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

function stated(text: string): string {
  return text.toWellFormed().replace(/\s/g, ' ').replace(NO_XML, '');
}

function xml(text: string): string {
  return stated(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

const ISSUED = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.\d+)?)?(Z|([+-]\d\d):(\d\d))$/;

function issuedParts(issuedAt: string): RegExpExecArray {
  const parts = ISSUED.exec(issuedAt);
  if (!parts) throw new Error(`Cannot print: issuedAt must be ISO 8601 with offset: current value is "${issuedAt}"`);
  return parts;
}

/** Returns the date in the form of ISO 32000-1, 7.9.4, in its own offset. */
export function pdfDate(issuedAt: string): string {
  const [, year, month, day, hour, minute, second = '00', , offsetHour = '+00', offsetMinute = '00'] =
    issuedParts(issuedAt);
  return `(D:${year}${month}${day}${hour}${minute}${second}${offsetHour}'${offsetMinute}')`;
}

// XMP requires seconds, and the same instant as the information dictionary.
function xmpDate(issuedAt: string): string {
  const [, year, month, day, hour, minute, second = '00', zone, offsetHour = '+00', offsetMinute = '00'] =
    issuedParts(issuedAt);
  return `${year}-${month}-${day}T${hour}:${minute}:${second}${zone === 'Z' ? '+00:00' : `${offsetHour}:${offsetMinute}`}`;
}

/** Returns the document information dictionary. */
export function informationDictionary(metadata: PrintMetadata): string {
  const { title, author, subject, issuedAt } = metadata;
  const texts = { Title: title, Author: author, Subject: subject, Creator: PRODUCER, Producer: PRODUCER };
  const entries = Object.entries(texts).map(([key, value]) => `/${key}${textString(stated(value))}`);
  return `<<${entries.join('')}/CreationDate${pdfDate(issuedAt)}/ModDate${pdfDate(issuedAt)}>>`;
}

// PDF/A-3 allows properties of other schemas only with a description of them (ISO 19005-3, 6.6.2.3).
const EXTENSION_SCHEMA = `<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
<pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
<pdfaProperty:name>part</pdfaProperty:name>
<pdfaProperty:valueType>Integer</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category>
<pdfaProperty:description>Part of ISO 14289 that the file follows</pdfaProperty:description>
</rdf:li></rdf:Seq></pdfaSchema:property>
</rdf:li></rdf:Bag></pdfaExtension:schemas>
</rdf:Description>`;

const CLAIM_NAMESPACES =
  ' xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"';

const CLAIMS = `<pdfaid:part>3</pdfaid:part>
<pdfaid:conformance>A</pdfaid:conformance>
<pdfuaid:part>1</pdfuaid:part>
`;

/** Returns the XMP packet: the same facts as the information dictionary, and the claims to PDF/A-3a and PDF/UA-1 if made. */
export function xmpPacket(metadata: PrintMetadata, claims: boolean): string {
  const { title, subject, author, language, issuedAt } = metadata;
  const date = xmpDate(issuedAt);
  const alternative = (text: string): string => `<rdf:Alt><rdf:li xml:lang="x-default">${xml(text)}</rdf:li></rdf:Alt>`;
  return `<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"${claims ? CLAIM_NAMESPACES : ''}>
<dc:format>application/pdf</dc:format>
<dc:title>${alternative(title)}</dc:title>
<dc:description>${alternative(subject)}</dc:description>
<dc:creator><rdf:Seq><rdf:li>${xml(author)}</rdf:li></rdf:Seq></dc:creator>
<dc:language><rdf:Bag><rdf:li>${xml(language)}</rdf:li></rdf:Bag></dc:language>
<xmp:CreatorTool>${PRODUCER}</xmp:CreatorTool>
<xmp:CreateDate>${date}</xmp:CreateDate>
<xmp:ModifyDate>${date}</xmp:ModifyDate>
<xmp:MetadataDate>${date}</xmp:MetadataDate>
<pdf:Producer>${PRODUCER}</pdf:Producer>
${claims ? CLAIMS : ''}</rdf:Description>
${claims ? EXTENSION_SCHEMA : ''}
</rdf:RDF></x:xmpmeta>
<?xpacket end="r"?>`;
}
