export type { ActBefore, ActKind, ActToUndo, StoredAct } from './acts/act-kinds.ts';
export * from './acts/list-acts.ts';
export * from './acts/undo-act.ts';
export * from './adjustments/adjustments.ts';
export { BackupError } from './backup/backup-error.ts';
export { type Erased, erased, listErasures, writeErasures } from './backup/erasures.ts';
export { type BackupHeader, countRows } from './backup/header.ts';
export { checkBackup } from './backup/read-backup.ts';
export { type Restored, type RestoreWanted, restoreBackup } from './backup/restore-backup.ts';
export { type OnProgress, writeBackup } from './backup/write-backup.ts';
export * from './books/add-book.ts';
export {
  BOOK_LIMITS,
  type Book,
  type BookSettings,
} from './books/book-settings.ts';
export { changeBook } from './books/change-book.ts';
export * from './books/list-books.ts';
export * from './books/move-book.ts';
export * from './books/next-pages.ts';
export * from './books/page-progress.ts';
export { putAwayBook } from './books/put-away-book.ts';
export { type ClassPageSet, type PageReached, setClassPage, setPage } from './books/set-page.ts';
export { type KnownBot, knowBot, readClassBot } from './bots/know-bot.ts';
export { moveToBot } from './bots/move-to-bot.ts';
export * from './calendar/zone.ts';
export * from './children/add-children.ts';
export { archiveChild, bringBackChild } from './children/archive-child.ts';
export * from './children/class-size.ts';
export * from './children/list-archived.ts';
export * from './children/list-children.ts';
export { moveChild } from './children/move-child.ts';
export { getChild } from './children/own-child.ts';
export * from './children/rename-child.ts';
export { addRoster } from './children/undo-adding.ts';
export { archiveClass } from './classes/archive-class.ts';
export {
  type AddedBreaks,
  addBreak,
  addBreaks,
  type ClassBreak,
  listBreaks,
  removeBreak,
} from './classes/breaks.ts';
export * from './classes/check-class.ts';
export { type ClassExport, type ClassFile, classFile } from './classes/class-file.ts';
export type { ClassGrade } from './classes/class-grade.ts';
export * from './classes/class-limits.ts';
export * from './classes/create-class.ts';
export { exportClass } from './classes/export-class.ts';
export * from './classes/get-class.ts';
export * from './classes/holiday-place.ts';
export { type ImportedClass, importClass } from './classes/import-class.ts';
export {
  type ClassToLook,
  claimLook,
  endLook,
  listClassesToLook,
  nextLook,
  readLooked,
} from './classes/look-again.ts';
export * from './classes/read-class-news.ts';
export * from './classes/school-class.ts';
export * from './classes/sibling-age.ts';
export * from './classes/update-class.ts';
export * from './connection/index.ts';
export {
  type DeadLetter,
  dropDeadLetter,
  replayDeadLetter,
} from './dead-letters/end-dead-letter.ts';
export { crashedBy } from './dead-letters/has-crashed.ts';
export {
  type DeadMessage,
  type DeadUpdate,
  listDeadLetters,
} from './dead-letters/list-dead-letters.ts';
export * from './digests/digest-days.ts';
export * from './digests/owe-digest.ts';
export * from './digests/read-child-past.ts';
export * from './digests/read-own-month.ts';
export * from './digests/read-week.ts';
export * from './errors.ts';
export * from './evenings/close-part.ts';
export { type DrillWanted, previewDrill } from './evenings/compose-drill.ts';
export * from './evenings/count-practised.ts';
export * from './evenings/decline-evening.ts';
export * from './evenings/evening-view.ts';
export * from './evenings/get-evening.ts';
export * from './evenings/history.ts';
export * from './evenings/list-due-children.ts';
export * from './evenings/list-turns.ts';
export * from './evenings/list-unmarked-drills.ts';
export * from './evenings/mark-draft.ts';
export * from './evenings/one-by-one.ts';
export * from './evenings/plan-evening.ts';
export * from './evenings/record-pages.ts';
export * from './evenings/remind-later.ts';
export * from './evenings/start-evening.ts';
export * from './evenings/stop-evening.ts';
export * from './expectations/expectations.ts';
export * from './greetings/change-greeting.ts';
export * from './greetings/greeting.ts';
export * from './greetings/greeting-to-send.ts';
export * from './greetings/owe-notice.ts';
export * from './greetings/purge-greetings.ts';
export { removeGreeting } from './greetings/remove-greeting.ts';
export * from './greetings/set-greeting.ts';
export { CodesPaused } from './guesses/codes-paused.ts';
export { GUESS_LIMITS } from './guesses/guess-limits.ts';
export { purgeCodeMisses } from './guesses/limit-guesses.ts';
export * from './helpers/claim-picture.ts';
export { addDataUsed, listDataUsed, type MonthOfData, readDataUsed } from './helpers/data-used.ts';
export * from './helpers/display.ts';
export * from './helpers/find-helper.ts';
export * from './helpers/leave.ts';
export { type BotChat, markReachable, markUnreachable } from './helpers/reachability.ts';
export {
  type FamilyScope,
  RELATIONS,
  type Relation,
  readTie,
  setRelation,
  type Tie,
} from './helpers/relation.ts';
export * from './helpers/set-evening-time.ts';
export { getWay, setWay, WAYS, type Way } from './helpers/way.ts';
export * from './inbox/claim-updates.ts';
export * from './inbox/finish-update.ts';
export * from './inbox/next-try.ts';
export * from './inbox/return-updates.ts';
export { MOST_WAITING } from './inbox/share-out.ts';
export { type IncomingUpdate, type Stored, storeUpdates } from './inbox/store-updates.ts';
export * from './languages/choose-language.ts';
export * from './languages/read-language.ts';
export * from './ledger/count-outstanding.ts';
export * from './ledger/find-follower.ts';
export * from './ledger/forget-copy.ts';
export * from './ledger/list-copies.ts';
export * from './ledger/move-copy.ts';
export * from './ledger/note-seen.ts';
export { type LedgerKind, type Owed, oweHelpers, oweTeachers } from './ledger/owe.ts';
export * from './ledger/read-delivery.ts';
export * from './ledger/settle.ts';
export * from './ledger/wake-waiting.ts';
export * from './media/files.ts';
export * from './memory/current-marks.ts';
export * from './memory/read-memory.ts';
export * from './memory/rebuild-all.ts';
export * from './memory/refresh-memory.ts';
export * from './meter.ts';
export * from './nudges/list-due-reminders.ts';
export * from './nudges/list-nudge-candidates.ts';
export * from './nudges/owe-again.ts';
export * from './pace/class-pace.ts';
export {
  bringBackDaily,
  type ChildPace,
  type PaceWord,
  pauseDrills,
  readFamilyPaces,
  setDrillDay,
  setEveryDay,
  startDrillsAgain,
} from './pace/family-pace.ts';
export { reviewPaces } from './pace/review-paces.ts';
export { acceptProposal } from './plans/accept-proposal.ts';
export { activatePlan } from './plans/activate-plan.ts';
export { dropDraft, loadDraft } from './plans/load-draft.ts';
export * from './plans/plan-in-force-at.ts';
export {
  type ActivePlan,
  type ClassPlans,
  getActivePlan,
  getPlans,
  type PlanSource,
  type StoredPlan,
  saveDraftPlan,
} from './plans/week-plans.ts';
export * from './ports.ts';
export * from './problem-of.ts';
export { forgetChatSlots } from './rate/chat-slot.ts';
export { claimStore, REHEARSAL_BOT } from './rate/claim-store.ts';
export {
  BURST,
  type Haste,
  pauseSending,
  SENDS_A_SECOND,
  type Turn,
  takeSendSlot,
} from './rate/send-slot.ts';
export { createTurnstile, type Pace, type Turnstile } from './rate/turnstile.ts';
export * from './request.ts';
export * from './retention/keep-for.ts';
export * from './retention/purge-records.ts';
export * from './retention/summarise-marks.ts';
export * from './retention/upkeep.ts';
export * from './rights/erase-child.ts';
export * from './rights/held-data.ts';
export * from './rights/list-erasable.ts';
export { type ChildRecord, readChildRecord } from './rights/read-child-record.ts';
export { readHeldData } from './rights/read-held-data.ts';
export * from './rights/wish-erasure.ts';
export {
  removeSchemeWeek,
  repeatSchemeWeek,
  saveSchemeWeek,
  type WeekWanted,
} from './schemes/change-scheme.ts';
export * from './schemes/follow-term.ts';
export * from './schemes/read-scheme.ts';
export {
  moveScheme,
  type NewScheme,
  retireScheme,
  startScheme,
} from './schemes/start-scheme.ts';
export * from './slips/accept-slip.ts';
export * from './slips/children-given-slips.ts';
export * from './slips/count-slips.ts';
export * from './slips/issue-slips.ts';
export { type OpenSlip, readJoinedSlip, readSlip } from './slips/read-slip.ts';
export {
  readSharing,
  SHARE_LIMITS,
  type SharedSlip,
  type ShareRefusal,
  type Sharing,
  shareSlip,
} from './slips/share-slip.ts';
export * from './teachers/find-teacher.ts';
export {
  cancelInvite,
  inviteColleague,
  listOpenInvites,
  type OpenInvite,
} from './teachers/invite-colleague.ts';
export * from './teachers/invite-teacher.ts';
export { leaveClass, removeTeacher } from './teachers/leave-class.ts';
export { type ClassTeacher, listTeachers, type TeacherRole } from './teachers/list-teachers.ts';
export { leadScope, listTeacherAccounts, type TeacherAccount } from './teachers/operator-view.ts';
export { isMigrated } from './watch/is-migrated.ts';
export { type Queue, type Queues, readQueues } from './watch/read-queues.ts';
