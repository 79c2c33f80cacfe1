CREATE TABLE "bot" (
	"id" bigint PRIMARY KEY NOT NULL,
	"username" text NOT NULL
);
--> statement-breakpoint
CREATE TABLE "chat_rate" (
	"bot_id" bigint NOT NULL,
	"chat_id" bigint NOT NULL,
	"next_at" timestamp with time zone NOT NULL,
	CONSTRAINT "chat_rate_chat_id_bot_id_pk" PRIMARY KEY("chat_id","bot_id")
);
--> statement-breakpoint
CREATE TABLE "code_miss" (
	"id" uuid PRIMARY KEY NOT NULL,
	"chat_id" bigint NOT NULL,
	"at" timestamp with time zone NOT NULL
);
--> statement-breakpoint
CREATE TABLE "data_used" (
	"helper_id" uuid NOT NULL,
	"month" text NOT NULL,
	"bytes" bigint NOT NULL,
	CONSTRAINT "data_used_helper_id_month_pk" PRIMARY KEY("helper_id","month")
);
--> statement-breakpoint
CREATE TABLE "expectation" (
	"chat_id" bigint PRIMARY KEY NOT NULL,
	"kind" text NOT NULL,
	"data" jsonb NOT NULL,
	"created_at" timestamp with time zone NOT NULL
);
--> statement-breakpoint
CREATE TABLE "inbox" (
	"bot_id" bigint NOT NULL,
	"update_id" bigint NOT NULL,
	"actor_id" bigint,
	"payload" jsonb,
	"status" text NOT NULL,
	"tries" integer DEFAULT 0 NOT NULL,
	"shed" boolean DEFAULT false NOT NULL,
	"received_at" timestamp with time zone NOT NULL,
	"not_before" timestamp with time zone NOT NULL,
	"claimed_at" timestamp with time zone,
	"handled_at" timestamp with time zone,
	CONSTRAINT "inbox_bot_id_update_id_pk" PRIMARY KEY("bot_id","update_id"),
	CONSTRAINT "inbox_status" CHECK ("inbox"."status" in ('pending', 'handling', 'done', 'failed'))
);
--> statement-breakpoint
CREATE TABLE "ledger" (
	"id" uuid PRIMARY KEY NOT NULL,
	"kind" text NOT NULL,
	"subject_id" uuid NOT NULL,
	"day" date NOT NULL,
	"class_id" uuid NOT NULL,
	"bot_id" bigint NOT NULL,
	"evening_id" uuid,
	"recipient_kind" text NOT NULL,
	"recipient_id" uuid NOT NULL,
	"status" text NOT NULL,
	"message_id" integer,
	"tries" integer DEFAULT 0 NOT NULL,
	"not_before" timestamp with time zone NOT NULL,
	"expires_at" timestamp with time zone NOT NULL,
	"enqueued_at" timestamp with time zone NOT NULL,
	"attempted_at" timestamp with time zone,
	"settled_at" timestamp with time zone,
	"problem" text,
	CONSTRAINT "ledger_once" UNIQUE("subject_id","day","kind","recipient_id"),
	CONSTRAINT "ledger_status" CHECK ("ledger"."status" in ('planned', 'attempting', 'sent', 'failed', 'unknown'))
);
--> statement-breakpoint
CREATE TABLE "media" (
	"hash" text NOT NULL,
	"bot_id" bigint NOT NULL,
	"file_id" text NOT NULL,
	"unique_id" text NOT NULL,
	"bytes" integer NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	CONSTRAINT "media_hash_bot_id_pk" PRIMARY KEY("hash","bot_id")
);
--> statement-breakpoint
CREATE TABLE "rate" (
	"bot_id" bigint PRIMARY KEY NOT NULL,
	"next_at" timestamp with time zone NOT NULL,
	"paused_until" timestamp with time zone
);
--> statement-breakpoint
CREATE TABLE "unreachable" (
	"bot_id" bigint NOT NULL,
	"chat_id" bigint NOT NULL,
	"since" timestamp with time zone NOT NULL,
	CONSTRAINT "unreachable_chat_id_bot_id_pk" PRIMARY KEY("chat_id","bot_id")
);
--> statement-breakpoint
CREATE TABLE "upkeep" (
	"kind" text PRIMARY KEY NOT NULL,
	"done_at" timestamp with time zone NOT NULL
);
--> statement-breakpoint
CREATE TABLE "fact_memory" (
	"child_id" uuid NOT NULL,
	"fact" text NOT NULL,
	"asked" integer NOT NULL,
	"right" integer NOT NULL,
	"streak" integer NOT NULL,
	"last_day" date,
	"last_right" boolean NOT NULL,
	"model" text NOT NULL,
	"state" double precision[] NOT NULL,
	CONSTRAINT "fact_memory_child_id_fact_pk" PRIMARY KEY("child_id","fact")
);
--> statement-breakpoint
CREATE TABLE "mark" (
	"id" uuid PRIMARY KEY NOT NULL,
	"evening_id" uuid NOT NULL,
	"child_id" uuid NOT NULL,
	"part" integer NOT NULL,
	"card" integer NOT NULL,
	"fact" text NOT NULL,
	"right" boolean NOT NULL,
	"way" text NOT NULL,
	"revision" integer NOT NULL,
	"helper_id" uuid NOT NULL,
	"marked_at" timestamp with time zone NOT NULL,
	CONSTRAINT "mark_once" UNIQUE("evening_id","part","card","revision")
);
--> statement-breakpoint
CREATE TABLE "marking" (
	"evening_id" uuid NOT NULL,
	"part" integer NOT NULL,
	"missed" jsonb NOT NULL,
	"card" integer,
	"shown" boolean DEFAULT false NOT NULL,
	CONSTRAINT "marking_evening_id_part_pk" PRIMARY KEY("evening_id","part")
);
--> statement-breakpoint
CREATE TABLE "memory_base" (
	"child_id" uuid NOT NULL,
	"fact" text NOT NULL,
	"asked" integer NOT NULL,
	"right" integer NOT NULL,
	"streak" integer NOT NULL,
	"last_day" date,
	"last_right" boolean NOT NULL,
	"model" text NOT NULL,
	"state" double precision[] NOT NULL,
	CONSTRAINT "memory_base_child_id_fact_pk" PRIMARY KEY("child_id","fact")
);
--> statement-breakpoint
CREATE TABLE "page_log" (
	"id" uuid PRIMARY KEY NOT NULL,
	"evening_id" uuid NOT NULL,
	"child_id" uuid NOT NULL,
	"book_id" uuid NOT NULL,
	"pages" integer NOT NULL,
	"revision" integer NOT NULL,
	"logged_at" timestamp with time zone NOT NULL,
	CONSTRAINT "page_log_once" UNIQUE("evening_id","revision")
);
--> statement-breakpoint
CREATE TABLE "page_place" (
	"id" uuid PRIMARY KEY NOT NULL,
	"child_id" uuid NOT NULL,
	"book_id" uuid NOT NULL,
	"page" integer NOT NULL,
	"said_at" timestamp with time zone NOT NULL,
	"taken_back_at" timestamp with time zone
);
--> statement-breakpoint
CREATE TABLE "part_score" (
	"evening_id" uuid NOT NULL,
	"part" integer NOT NULL,
	"child_id" uuid NOT NULL,
	"strand" text NOT NULL,
	"rung" text NOT NULL,
	"blueprint" text NOT NULL,
	"right" integer NOT NULL,
	"asked" integer NOT NULL,
	"revision" integer NOT NULL,
	"marked_at" timestamp with time zone NOT NULL,
	CONSTRAINT "part_score_evening_id_part_pk" PRIMARY KEY("evening_id","part")
);
--> statement-breakpoint
CREATE TABLE "run_result" (
	"id" uuid PRIMARY KEY NOT NULL,
	"evening_id" uuid NOT NULL,
	"child_id" uuid NOT NULL,
	"part" integer NOT NULL,
	"rung" text NOT NULL,
	"start" integer NOT NULL,
	"step" integer NOT NULL,
	"length" integer NOT NULL,
	"said" integer NOT NULL,
	"revision" integer NOT NULL,
	"helper_id" uuid NOT NULL,
	"marked_at" timestamp with time zone NOT NULL,
	CONSTRAINT "run_result_once" UNIQUE("evening_id","part","revision")
);
--> statement-breakpoint
CREATE TABLE "act" (
	"id" uuid PRIMARY KEY NOT NULL,
	"class_id" uuid NOT NULL,
	"teacher_id" uuid NOT NULL,
	"kind" text NOT NULL,
	"before" jsonb NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	"undone_at" timestamp with time zone
);
--> statement-breakpoint
CREATE TABLE "adjustment" (
	"child_id" uuid PRIMARY KEY NOT NULL,
	"steps" integer DEFAULT 0 NOT NULL,
	"fewer" boolean DEFAULT false NOT NULL,
	"untimed" boolean DEFAULT false NOT NULL,
	"since" timestamp with time zone NOT NULL
);
--> statement-breakpoint
CREATE TABLE "child" (
	"id" uuid PRIMARY KEY NOT NULL,
	"class_id" uuid NOT NULL,
	"number" integer NOT NULL,
	"nickname" text NOT NULL,
	"evening_time" text,
	"time_since" timestamp with time zone,
	"created_at" timestamp with time zone NOT NULL,
	"archived_at" timestamp with time zone,
	"erasing_since" timestamp with time zone,
	"erasing_by" uuid,
	CONSTRAINT "child_number_in_class" UNIQUE("class_id","number"),
	CONSTRAINT "child_with_class" UNIQUE("id","class_id")
);
--> statement-breakpoint
CREATE TABLE "break" (
	"id" uuid PRIMARY KEY NOT NULL,
	"class_id" uuid NOT NULL,
	"first_day" date NOT NULL,
	"last_day" date NOT NULL,
	"title" text NOT NULL,
	"created_at" timestamp with time zone NOT NULL
);
--> statement-breakpoint
CREATE TABLE "class_teacher" (
	"class_id" uuid NOT NULL,
	"teacher_id" uuid NOT NULL,
	"role" text DEFAULT 'lead' NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	CONSTRAINT "class_teacher_class_id_teacher_id_pk" PRIMARY KEY("class_id","teacher_id")
);
--> statement-breakpoint
CREATE TABLE "consent" (
	"id" uuid PRIMARY KEY NOT NULL,
	"helper_id" uuid NOT NULL,
	"child_id" uuid NOT NULL,
	"text_version" text NOT NULL,
	"language" text NOT NULL,
	"evidence" jsonb NOT NULL,
	"agreed_at" timestamp with time zone NOT NULL,
	"withdrawn_at" timestamp with time zone
);
--> statement-breakpoint
CREATE TABLE "erasure" (
	"id" uuid PRIMARY KEY NOT NULL,
	"subject_kind" text NOT NULL,
	"subject_id" uuid NOT NULL,
	"erased_at" timestamp with time zone NOT NULL
);
--> statement-breakpoint
CREATE TABLE "helper" (
	"id" uuid PRIMARY KEY NOT NULL,
	"chat_id" bigint NOT NULL,
	"language" text DEFAULT 'en' NOT NULL,
	"way" text DEFAULT 'clip' NOT NULL,
	"bigger" boolean DEFAULT false NOT NULL,
	"no_timing" boolean DEFAULT false NOT NULL,
	"quiet" boolean DEFAULT false NOT NULL,
	"clock_aid" boolean DEFAULT false NOT NULL,
	"monthly" boolean DEFAULT true NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	CONSTRAINT "helper_chat_id_unique" UNIQUE("chat_id")
);
--> statement-breakpoint
CREATE TABLE "helper_child" (
	"helper_id" uuid NOT NULL,
	"child_id" uuid NOT NULL,
	"joined_at" timestamp with time zone NOT NULL,
	"left_at" timestamp with time zone,
	"relation" text,
	"picture_month" text,
	CONSTRAINT "helper_child_helper_id_child_id_pk" PRIMARY KEY("helper_id","child_id")
);
--> statement-breakpoint
CREATE TABLE "pace" (
	"id" uuid PRIMARY KEY NOT NULL,
	"child_id" uuid NOT NULL,
	"step" integer NOT NULL,
	"day" date NOT NULL,
	"at" timestamp with time zone NOT NULL,
	"said_at" timestamp with time zone,
	"rate" text NOT NULL,
	"rate_from" date,
	"announced_on" date,
	"announced_from" date,
	"kept" boolean NOT NULL,
	"heard" date,
	"paused_until" date,
	"days" jsonb,
	CONSTRAINT "pace_once" UNIQUE("child_id","step")
);
--> statement-breakpoint
CREATE TABLE "class" (
	"id" uuid PRIMARY KEY NOT NULL,
	"bot_id" bigint DEFAULT 0 NOT NULL,
	"title" text NOT NULL,
	"zone" text NOT NULL,
	"weekdays" jsonb NOT NULL,
	"evening_time" text NOT NULL,
	"nudge_time" text NOT NULL,
	"digest_weekday" integer NOT NULL,
	"digest_time" text NOT NULL,
	"language" text DEFAULT 'en' NOT NULL,
	"curriculum" text DEFAULT 'own' NOT NULL,
	"grade" text,
	"country" text,
	"times_since" timestamp with time zone NOT NULL,
	"digest_since" timestamp with time zone NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	"archived_at" timestamp with time zone,
	"sibling_age" integer DEFAULT 12 NOT NULL,
	"pace_day" date,
	"top_number" integer DEFAULT 0 NOT NULL,
	"look_at" timestamp with time zone DEFAULT '1970-01-01T00:00:00.000Z' NOT NULL,
	"looked_at" timestamp with time zone DEFAULT '1970-01-01T00:00:00.000Z' NOT NULL
);
--> statement-breakpoint
CREATE TABLE "slip" (
	"id" uuid PRIMARY KEY NOT NULL,
	"child_id" uuid NOT NULL,
	"class_id" uuid NOT NULL,
	"code_hash" text NOT NULL,
	"uses_left" integer NOT NULL,
	"expires_at" timestamp with time zone NOT NULL,
	"revoked_at" timestamp with time zone,
	"created_at" timestamp with time zone NOT NULL,
	"shared_by" uuid,
	"used_at" timestamp with time zone,
	CONSTRAINT "slip_code_hash_unique" UNIQUE("code_hash")
);
--> statement-breakpoint
CREATE TABLE "teacher" (
	"id" uuid PRIMARY KEY NOT NULL,
	"chat_id" bigint NOT NULL,
	"language" text DEFAULT 'en' NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	CONSTRAINT "teacher_chat_id_unique" UNIQUE("chat_id")
);
--> statement-breakpoint
CREATE TABLE "teacher_invite" (
	"id" uuid PRIMARY KEY NOT NULL,
	"code_hash" text NOT NULL,
	"class_id" uuid,
	"issued_by" uuid,
	"role" text,
	"revoked_at" timestamp with time zone,
	"expires_at" timestamp with time zone NOT NULL,
	"used_by" uuid,
	"used_at" timestamp with time zone,
	"created_at" timestamp with time zone NOT NULL,
	CONSTRAINT "teacher_invite_code_hash_unique" UNIQUE("code_hash")
);
--> statement-breakpoint
CREATE TABLE "book" (
	"id" uuid PRIMARY KEY NOT NULL,
	"class_id" uuid NOT NULL,
	"child_id" uuid,
	"place" integer DEFAULT 1 NOT NULL,
	"title" text NOT NULL,
	"first_page" integer NOT NULL,
	"last_page" integer NOT NULL,
	"pages_a_day" integer NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	"retired_at" timestamp with time zone
);
--> statement-breakpoint
CREATE TABLE "evening" (
	"id" uuid PRIMARY KEY NOT NULL,
	"child_id" uuid NOT NULL,
	"class_id" uuid NOT NULL,
	"day" date NOT NULL,
	"plan_id" uuid NOT NULL,
	"seed" text NOT NULL,
	"drill" jsonb NOT NULL,
	"book_id" uuid,
	"page_from" integer,
	"page_to" integer,
	"created_at" timestamp with time zone NOT NULL,
	"started_at" timestamp with time zone,
	"declined_at" timestamp with time zone,
	"stopped_at" timestamp with time zone,
	"remind_at" timestamp with time zone,
	"summarised_at" timestamp with time zone,
	CONSTRAINT "evening_once_a_day" UNIQUE("child_id","day")
);
--> statement-breakpoint
CREATE TABLE "note" (
	"id" uuid PRIMARY KEY NOT NULL,
	"class_id" uuid NOT NULL,
	"teacher_id" uuid NOT NULL,
	"kind" text NOT NULL,
	"body" text NOT NULL,
	"bot_id" bigint,
	"evenings" text DEFAULT 'first' NOT NULL,
	"first_day" date NOT NULL,
	"last_day" date NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	"removed_at" timestamp with time zone
);
--> statement-breakpoint
CREATE TABLE "scheme" (
	"id" uuid PRIMARY KEY NOT NULL,
	"class_id" uuid NOT NULL,
	"first_day" date NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	"changed_at" timestamp with time zone NOT NULL,
	"retired_at" timestamp with time zone
);
--> statement-breakpoint
CREATE TABLE "scheme_week" (
	"scheme_id" uuid NOT NULL,
	"week" integer NOT NULL,
	"plan" jsonb NOT NULL,
	CONSTRAINT "scheme_week_scheme_id_week_pk" PRIMARY KEY("scheme_id","week")
);
--> statement-breakpoint
CREATE TABLE "week_plan" (
	"id" uuid PRIMARY KEY NOT NULL,
	"class_id" uuid NOT NULL,
	"status" text NOT NULL,
	"plan" jsonb NOT NULL,
	"source" text DEFAULT 'teacher' NOT NULL,
	"created_at" timestamp with time zone NOT NULL,
	"activated_at" timestamp with time zone,
	CONSTRAINT "week_plan_status" CHECK ("week_plan"."status" in ('draft', 'active', 'past'))
);
--> statement-breakpoint
ALTER TABLE "data_used" ADD CONSTRAINT "data_used_helper_id_helper_id_fk" FOREIGN KEY ("helper_id") REFERENCES "public"."helper"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "ledger" ADD CONSTRAINT "ledger_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "ledger" ADD CONSTRAINT "ledger_evening_id_evening_id_fk" FOREIGN KEY ("evening_id") REFERENCES "public"."evening"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "fact_memory" ADD CONSTRAINT "fact_memory_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "mark" ADD CONSTRAINT "mark_evening_id_evening_id_fk" FOREIGN KEY ("evening_id") REFERENCES "public"."evening"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "mark" ADD CONSTRAINT "mark_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "mark" ADD CONSTRAINT "mark_helper_id_helper_id_fk" FOREIGN KEY ("helper_id") REFERENCES "public"."helper"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "marking" ADD CONSTRAINT "marking_evening_id_evening_id_fk" FOREIGN KEY ("evening_id") REFERENCES "public"."evening"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "memory_base" ADD CONSTRAINT "memory_base_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "page_log" ADD CONSTRAINT "page_log_evening_id_evening_id_fk" FOREIGN KEY ("evening_id") REFERENCES "public"."evening"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "page_log" ADD CONSTRAINT "page_log_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "page_log" ADD CONSTRAINT "page_log_book_id_book_id_fk" FOREIGN KEY ("book_id") REFERENCES "public"."book"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "page_place" ADD CONSTRAINT "page_place_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "page_place" ADD CONSTRAINT "page_place_book_id_book_id_fk" FOREIGN KEY ("book_id") REFERENCES "public"."book"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "part_score" ADD CONSTRAINT "part_score_evening_id_evening_id_fk" FOREIGN KEY ("evening_id") REFERENCES "public"."evening"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "part_score" ADD CONSTRAINT "part_score_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "run_result" ADD CONSTRAINT "run_result_evening_id_evening_id_fk" FOREIGN KEY ("evening_id") REFERENCES "public"."evening"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "run_result" ADD CONSTRAINT "run_result_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "run_result" ADD CONSTRAINT "run_result_helper_id_helper_id_fk" FOREIGN KEY ("helper_id") REFERENCES "public"."helper"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "act" ADD CONSTRAINT "act_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "act" ADD CONSTRAINT "act_teacher_id_teacher_id_fk" FOREIGN KEY ("teacher_id") REFERENCES "public"."teacher"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "adjustment" ADD CONSTRAINT "adjustment_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "child" ADD CONSTRAINT "child_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "break" ADD CONSTRAINT "break_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "class_teacher" ADD CONSTRAINT "class_teacher_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "class_teacher" ADD CONSTRAINT "class_teacher_teacher_id_teacher_id_fk" FOREIGN KEY ("teacher_id") REFERENCES "public"."teacher"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "consent" ADD CONSTRAINT "consent_helper_id_helper_id_fk" FOREIGN KEY ("helper_id") REFERENCES "public"."helper"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "consent" ADD CONSTRAINT "consent_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "helper_child" ADD CONSTRAINT "helper_child_helper_id_helper_id_fk" FOREIGN KEY ("helper_id") REFERENCES "public"."helper"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "helper_child" ADD CONSTRAINT "helper_child_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "pace" ADD CONSTRAINT "pace_child_id_child_id_fk" FOREIGN KEY ("child_id") REFERENCES "public"."child"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "slip" ADD CONSTRAINT "slip_shared_by_helper_id_fk" FOREIGN KEY ("shared_by") REFERENCES "public"."helper"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "slip" ADD CONSTRAINT "slip_child_id_class_id_child_id_class_id_fk" FOREIGN KEY ("child_id","class_id") REFERENCES "public"."child"("id","class_id") ON DELETE no action ON UPDATE cascade;--> statement-breakpoint
ALTER TABLE "teacher_invite" ADD CONSTRAINT "teacher_invite_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "teacher_invite" ADD CONSTRAINT "teacher_invite_issued_by_teacher_id_fk" FOREIGN KEY ("issued_by") REFERENCES "public"."teacher"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "teacher_invite" ADD CONSTRAINT "teacher_invite_used_by_teacher_id_fk" FOREIGN KEY ("used_by") REFERENCES "public"."teacher"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "book" ADD CONSTRAINT "book_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "book" ADD CONSTRAINT "book_child_id_class_id_child_id_class_id_fk" FOREIGN KEY ("child_id","class_id") REFERENCES "public"."child"("id","class_id") ON DELETE no action ON UPDATE cascade;--> statement-breakpoint
ALTER TABLE "evening" ADD CONSTRAINT "evening_plan_id_week_plan_id_fk" FOREIGN KEY ("plan_id") REFERENCES "public"."week_plan"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "evening" ADD CONSTRAINT "evening_book_id_book_id_fk" FOREIGN KEY ("book_id") REFERENCES "public"."book"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "evening" ADD CONSTRAINT "evening_child_id_class_id_child_id_class_id_fk" FOREIGN KEY ("child_id","class_id") REFERENCES "public"."child"("id","class_id") ON DELETE no action ON UPDATE cascade;--> statement-breakpoint
ALTER TABLE "note" ADD CONSTRAINT "note_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "note" ADD CONSTRAINT "note_teacher_id_teacher_id_fk" FOREIGN KEY ("teacher_id") REFERENCES "public"."teacher"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "scheme" ADD CONSTRAINT "scheme_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "scheme_week" ADD CONSTRAINT "scheme_week_scheme_id_scheme_id_fk" FOREIGN KEY ("scheme_id") REFERENCES "public"."scheme"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "week_plan" ADD CONSTRAINT "week_plan_class_id_class_id_fk" FOREIGN KEY ("class_id") REFERENCES "public"."class"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
CREATE INDEX "chat_rate_passed" ON "chat_rate" USING btree ("bot_id","next_at");--> statement-breakpoint
CREATE INDEX "code_miss_by_chat" ON "code_miss" USING btree ("chat_id","at");--> statement-breakpoint
CREATE INDEX "code_miss_by_time" ON "code_miss" USING btree ("at");--> statement-breakpoint
CREATE INDEX "data_used_old" ON "data_used" USING btree ("month");--> statement-breakpoint
CREATE INDEX "expectation_old" ON "expectation" USING btree ("created_at");--> statement-breakpoint
CREATE INDEX "inbox_open" ON "inbox" USING btree ("update_id") WHERE "inbox"."status" in ('pending', 'handling');--> statement-breakpoint
CREATE INDEX "inbox_handled" ON "inbox" USING btree ("handled_at");--> statement-breakpoint
CREATE INDEX "inbox_waiting" ON "inbox" USING btree ("bot_id","actor_id") WHERE "inbox"."status" in ('pending', 'handling');--> statement-breakpoint
CREATE INDEX "inbox_shed" ON "inbox" USING btree ("bot_id","actor_id","received_at") WHERE "inbox"."shed";--> statement-breakpoint
CREATE INDEX "ledger_waiting" ON "ledger" USING btree ("not_before") WHERE "ledger"."status" = 'planned';--> statement-breakpoint
CREATE INDEX "ledger_attempting" ON "ledger" USING btree ("attempted_at") WHERE "ledger"."status" = 'attempting';--> statement-breakpoint
CREATE INDEX "ledger_by_evening" ON "ledger" USING btree ("evening_id");--> statement-breakpoint
CREATE INDEX "ledger_by_recipient" ON "ledger" USING btree ("recipient_id","day");--> statement-breakpoint
CREATE INDEX "ledger_old" ON "ledger" USING btree ("expires_at");--> statement-breakpoint
CREATE INDEX "media_old" ON "media" USING btree ("created_at");--> statement-breakpoint
CREATE INDEX "mark_by_child" ON "mark" USING btree ("child_id","fact");--> statement-breakpoint
CREATE INDEX "mark_by_helper" ON "mark" USING btree ("helper_id");--> statement-breakpoint
CREATE INDEX "page_log_by_child" ON "page_log" USING btree ("child_id","book_id");--> statement-breakpoint
CREATE INDEX "page_place_by_child" ON "page_place" USING btree ("child_id","book_id");--> statement-breakpoint
CREATE INDEX "part_score_by_blueprint" ON "part_score" USING btree ("child_id","blueprint");--> statement-breakpoint
CREATE INDEX "run_result_by_child" ON "run_result" USING btree ("child_id","rung");--> statement-breakpoint
CREATE INDEX "run_result_by_helper" ON "run_result" USING btree ("helper_id");--> statement-breakpoint
CREATE INDEX "act_by_teacher" ON "act" USING btree ("teacher_id","created_at");--> statement-breakpoint
CREATE INDEX "act_old" ON "act" USING btree ("created_at");--> statement-breakpoint
CREATE UNIQUE INDEX "child_nickname_in_class" ON "child" USING btree ("class_id",lower("nickname")) WHERE "child"."archived_at" is null;--> statement-breakpoint
CREATE INDEX "child_archived" ON "child" USING btree ("archived_at") WHERE "child"."archived_at" is not null;--> statement-breakpoint
CREATE INDEX "child_erasing" ON "child" USING btree ("erasing_since") WHERE "child"."erasing_since" is not null;--> statement-breakpoint
CREATE INDEX "break_by_class" ON "break" USING btree ("class_id","last_day");--> statement-breakpoint
CREATE INDEX "class_teacher_by_teacher" ON "class_teacher" USING btree ("teacher_id");--> statement-breakpoint
CREATE INDEX "consent_by_helper" ON "consent" USING btree ("helper_id","child_id");--> statement-breakpoint
CREATE INDEX "erasure_old" ON "erasure" USING btree ("erased_at");--> statement-breakpoint
CREATE INDEX "helper_child_by_child" ON "helper_child" USING btree ("child_id");--> statement-breakpoint
CREATE INDEX "helper_child_left" ON "helper_child" USING btree ("left_at") WHERE "helper_child"."left_at" is not null;--> statement-breakpoint
CREATE INDEX "class_to_look" ON "class" USING btree ("look_at") WHERE "class"."archived_at" is null;--> statement-breakpoint
CREATE INDEX "class_looked" ON "class" USING btree ("looked_at") WHERE "class"."archived_at" is null;--> statement-breakpoint
CREATE INDEX "class_archived" ON "class" USING btree ("archived_at") WHERE "class"."archived_at" is not null;--> statement-breakpoint
CREATE INDEX "slip_by_child" ON "slip" USING btree ("child_id");--> statement-breakpoint
CREATE INDEX "slip_old" ON "slip" USING btree ("expires_at");--> statement-breakpoint
CREATE INDEX "slip_revoked" ON "slip" USING btree ("revoked_at") WHERE "slip"."revoked_at" is not null;--> statement-breakpoint
CREATE INDEX "slip_by_sharer" ON "slip" USING btree ("shared_by") WHERE "slip"."shared_by" is not null;--> statement-breakpoint
CREATE INDEX "book_by_class" ON "book" USING btree ("class_id") WHERE "book"."retired_at" is null;--> statement-breakpoint
CREATE INDEX "evening_by_class_day" ON "evening" USING btree ("class_id","day");--> statement-breakpoint
CREATE INDEX "evening_to_remind" ON "evening" USING btree ("remind_at") WHERE "evening"."remind_at" is not null;--> statement-breakpoint
CREATE INDEX "evening_to_summarise" ON "evening" USING btree ("day","child_id") WHERE "evening"."summarised_at" is null;--> statement-breakpoint
CREATE INDEX "note_by_class" ON "note" USING btree ("class_id","last_day");--> statement-breakpoint
CREATE UNIQUE INDEX "note_one_in_use" ON "note" USING btree ("class_id") WHERE "note"."removed_at" is null;--> statement-breakpoint
CREATE INDEX "note_over" ON "note" USING btree ("last_day") WHERE "note"."body" <> '';--> statement-breakpoint
CREATE INDEX "note_removed" ON "note" USING btree ("removed_at") WHERE "note"."body" <> '';--> statement-breakpoint
CREATE UNIQUE INDEX "scheme_one_in_use" ON "scheme" USING btree ("class_id") WHERE "scheme"."retired_at" is null;--> statement-breakpoint
CREATE UNIQUE INDEX "week_plan_one_active" ON "week_plan" USING btree ("class_id") WHERE "week_plan"."status" = 'active';--> statement-breakpoint
CREATE UNIQUE INDEX "week_plan_one_draft" ON "week_plan" USING btree ("class_id") WHERE "week_plan"."status" = 'draft';