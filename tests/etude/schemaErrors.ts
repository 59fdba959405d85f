/** Complaints of the published MusicXML schema about whole scores. @source musicxml40: its schema, tag v4.0 */
import { readFileSync } from 'node:fs';
import { validateXML } from 'xmllint-wasm';
import { sharedFolder } from '../musicxml/corpus.ts';

/** The folder with the schema, or null where it is not at hand. */
export const SCHEMA_FOLDER = sharedFolder('schema');

/** Every complaint about some texts, each with its text's name. */
export async function schemaErrors(texts: { readonly [name: string]: string }): Promise<readonly string[]> {
  const file = (fileName: string) => ({ fileName, contents: readFileSync(SCHEMA_FOLDER + fileName, 'utf8') });
  const { errors } = await validateXML({
    xml: Object.entries(texts).map(([fileName, contents]) => ({ fileName, contents })),
    schema: [file('musicxml.xsd')],
    preload: [file('xml.xsd'), file('xlink.xsd')],
    initialMemoryPages: 1024,
    maxMemoryPages: 32768,
  });
  return errors.map(({ loc, message }) => `${loc?.fileName ?? ''}: ${message}`);
}
