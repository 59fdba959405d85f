const TABLE = new Uint32Array(256);
for (let byte = 0; byte < 256; byte++) {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  TABLE[byte] = rest;
}

/**
 * The checksum that ZIP keeps of every entry, as an unsigned 32-bit number.
 * @param before the checksum of what came before these bytes; 0 for nothing
 * @source PKWARE, .ZIP File Format Specification (APPNOTE) 6.3, section 4.4.7: polynomial 0xEDB88320, reflected
 */
export function crc32(bytes: Uint8Array, before = 0): number {
  let crc = ~before;
  for (let i = 0; i < bytes.length; i++) crc = TABLE[(crc ^ bytes[i]!) & 255]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}
