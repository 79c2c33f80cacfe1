import { describe, expect, it } from 'vitest';
import { id } from '../../bot/callback/fields.ts';

/**
 * Source: RFC 9562, "Universally Unique IDentifiers (UUIDs)", section 4 (text form), appendix A.6 (example of version 7),
 * and section 5 of RFC 4648 (base64url). The values are from memory.
 */
describe('a uuid in a button', () => {
  it.each([
    ['the example of version 7', '017f22e2-79b0-7cc3-98c4-dc0c0c07398f', 'AX8i4nmwfMOYxNwMDAc5jw'],
    ['the nil uuid', '00000000-0000-0000-0000-000000000000', 'AAAAAAAAAAAAAAAAAAAAAA'],
    ['the max uuid', 'ffffffff-ffff-ffff-ffff-ffffffffffff', '_____________________w'],
  ])('comes back in its text form: %s', (_, uuid, written) => {
    expect(id.write(uuid)).toBe(written);
    expect(id.read(written)).toBe(uuid);
  });

  it('has one spelling only, although the last character has four bits to spare', () => {
    expect(id.read('AAAAAAAAAAAAAAAAAAAAAB')).toBeNull();
  });
});
