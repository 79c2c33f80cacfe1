import { expect, it } from 'vitest';
import {
  closePart,
  declineEvening,
  listNudgeCandidates,
  oweAgain,
  remindLater,
  type Store,
  startEvening,
} from '../../db/index.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { evening, MONDAY, TUESDAY } from '../support/term.ts';

/** What a nudge is decided on. */
export function nudgeSuite(opened: () => Store) {
  it('every evening of the day is looked at with what was marked, put off, nudged or asked for', async () => {
    const classroom = await aClass(opened());
    const { classId } = classroom.scope;
    const named = (nickname: string) => aFamily(opened(), classroom, { nickname });
    const now = evening(MONDAY, 5);
    const [quiet, marked, declined, nudged] = [
      await anEvening(opened(), classroom, await aFamily(opened(), classroom)),
      await anEvening(opened(), classroom, await named('Otto')),
      await anEvening(opened(), classroom, await named('Fern')),
      await anEvening(opened(), classroom, await named('Juniper')),
    ];
    await anEvening(opened(), classroom, await named('Robin'), { on: TUESDAY });
    await closePart(opened(), marked.scope, { part: 0, verdict: { kind: 'all_right' }, now });
    await declineEvening(opened(), declined.scope, now);
    const { id: eveningId, childId } = nudged.view;
    const expiresAt = evening(MONDAY, 210);
    const message = { eveningId, childId, classId, day: MONDAY, expiresAt, now };
    await oweAgain(opened(), { ...message, kind: 'nudge' });
    const nothing = { marked: false, declined: false, alreadyNudged: false, reminded: false };
    const expected = [
      { ...nothing, eveningId: quiet.view.id },
      { ...nothing, eveningId: marked.view.id, marked: true },
      { ...nothing, eveningId: declined.view.id, declined: true },
      { ...nothing, eveningId: nudged.view.id, alreadyNudged: true },
    ];
    const candidates = await listNudgeCandidates(opened(), { classId, day: MONDAY, now });
    expect(candidates).toHaveLength(4);
    expect(candidates).toEqual(
      expect.arrayContaining(
        expected.map((facts) =>
          expect.objectContaining({ ...facts, waiting: true, reachedAt: evening(MONDAY) }),
        ),
      ),
    );
  });

  it('a reminder counts while it is ahead and nobody has started, and once it is owed', async () => {
    const classroom = await aClass(opened());
    const { view, scope } = await anEvening(
      opened(),
      classroom,
      await aFamily(opened(), classroom),
    );
    const { classId } = classroom.scope;
    const reminded = async (minutes: number) => {
      const now = evening(MONDAY, minutes);
      const [candidate] = await listNudgeCandidates(opened(), { classId, day: MONDAY, now });
      return candidate?.reminded;
    };
    const now = evening(MONDAY, 10);
    expect(await reminded(10)).toBe(false);
    await remindLater(opened(), scope, { at: evening(MONDAY, 40), now });
    expect(await reminded(39)).toBe(true);
    // Its time has come and it is not owed yet: it still comes for an hour, and then the nudge takes its place.
    expect(await reminded(99)).toBe(true);
    expect(await reminded(100)).toBe(false);
    await startEvening(opened(), scope, now);
    expect(await reminded(39)).toBe(false);
    const { id: eveningId, childId } = view;
    const expiresAt = evening(MONDAY, 210);
    const message = { eveningId, childId, classId, day: MONDAY, expiresAt, now };
    await oweAgain(opened(), { ...message, kind: 'reminder' });
    expect(await reminded(41)).toBe(true);
  });
}
