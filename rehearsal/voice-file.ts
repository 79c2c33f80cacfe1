/** How an MP3 file begins: with tags, or with a frame's eleven set bits (from memory). */
function isMp3([first = 0, second = 0, third = 0]: Uint8Array): boolean {
  const isTagged = String.fromCharCode(first, second, third) === 'ID3';
  return isTagged || (first === 0xff && (second & 0xe0) === 0xe0);
}

/**
 * Whether the service can show a file as a voice message: Ogg, MP3 or M4A (SPEC sendVoice), told by how it begins.
 *
 * @example
 * isVoice(ogg()); // => true
 */
export function isVoice(bytes: Uint8Array): boolean {
  const start = Buffer.from(bytes.subarray(0, 12)).toString('latin1');
  return start.startsWith('OggS') || start.slice(4, 11) === 'ftypM4A' || isMp3(bytes);
}
