-- The chain of audit rows and, apart from it, its head. Text for times would sort alike everywhere; numbers do too and are shorter.
create table audit (
  number       bigint not null primary key,
  at_ms        bigint not null,
  actor        text   not null,
  act          text   not null,
  subject_kind text   not null,
  subject_id   text   not null,
  content      text   not null,
  previous     text   not null,
  hash         text   not null
);

create index audit_subject on audit (subject_kind, subject_id, number);

create table audit_head (
  id     bigint not null primary key,
  number bigint not null,
  hash   text   not null
);

insert into audit_head (id, number, hash)
values (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');
