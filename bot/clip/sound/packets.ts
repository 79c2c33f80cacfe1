/** Samples a second of every clip's sound. */
export const SAMPLE_RATE = 16_000;

/** Samples in one packet. Source: ISO/IEC 14496-3, 4.5.1.1. */
export const PACKET_SAMPLES = 1024;

/** AAC-LC (object type 2), 16 kHz (frequency index 8), one channel. Source: ISO/IEC 14496-3, 1.6.2.1. */
export const AUDIO_SPECIFIC_CONFIG: Uint8Array = Uint8Array.of(0x14, 0x08);

/** A packet of silence: one channel with nothing coded in it. */
export const SILENCE: Uint8Array = Uint8Array.of(0x01, 0x18, 0x20, 0x07);

/**
 * A soft tick of three packets: a tone of 500 Hz that dies away in 90 ms. It was made once for this project with FFmpeg's
 * AAC encoder, so that no sound encoder is needed at run time.
 */
export const TICK: readonly Uint8Array[] = [
  'AN6Vmtyxl933fburu8nGv6fbjj8ccb83/9P/4p/6+3nXGr/p//Sz/9/m9ceaAAAO2fAAABz7U4gAAwQOqQ/G+sDuegHD0D2GwPZsDZsgftnD7QDbFAE63sixx+CVOHwSxw/KZfsjwfqjb+qNv6oy/ZET+AjP+5Gf4A2EG8ENnQLbK1GVQ4CvF7I/D5c+Xy51Xlz0vWnxetPY9ufv/YPxfYHYetPxfsHpfYHpfVFjg+U/f+kfL+wdV7cs8X7j0v2Cxw/uPB+qOq9ua3y58v7B1Xtzwf2DqvbmjyBihOg/IwJnB9owMf2j7XzR8XzZ+L+IJnBgBLPD+49j6o2/rTg=',
  'ASDvC87zvO/H/D/vx56mtaq7uXJLkgT7h/4bDvvCMj/wDmHx8Zgn3hhHx8Ae/uB8fDaff3A+PgD394R8fDY9/eEfHw2Pf3hHx8GGf3IfHw2M/vCMnwYZ/eEZPhsZ/chw',
  'AO4vCsByCrM37/b09vv9da1clrnwIXxECQSEhISjm3MIEMXByeDxMSx55555555jzzzzzzHnnnnnnnnnnnnnnuA=',
].map((base64) => new Uint8Array(Buffer.from(base64, 'base64')));
