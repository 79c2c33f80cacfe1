import { describe, expect, it } from 'vitest';
import { acceptTeacherInvite, hasTeachers, issueTeacherInvite } from '../../db/index.ts';
import { backends } from '../support/stores.ts';

describe.each(backends)('on $name', (backend) => {
  it('a fresh database has no teacher until an invitation is accepted', async () => {
    const store = await backend.open();
    const now = new Date('2026-09-14T08:00:00Z');
    expect(await hasTeachers(store)).toBe(false);
    const code = await issueTeacherInvite(store, now);
    await acceptTeacherInvite(store, { code, chatId: 7, now });
    expect(await hasTeachers(store)).toBe(true);
    await store.close();
  });
});
