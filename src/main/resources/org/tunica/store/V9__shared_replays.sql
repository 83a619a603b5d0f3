-- Replays of changes that the servers over one database do together: what is asked, how far they are, what came of it. A
-- release takes its replay along, so no backup holds these rows.
create table replays (
  id              text   not null primary key,
  change_number   text   not null,
  against_digest  text   not null,
  draft_digest    text   not null,
  seed            bigint not null,
  invented_count  bigint not null,
  asked_by        text   not null,
  since_ms        bigint not null,
  done_count      bigint not null,
  result          text   not null,
  failure         text   not null
);
