-- Proposed changes of rules, handed in and taken back. Nothing here is ever changed: a change that was mended is handed in again.
create table change_steps (
  number       text   not null,
  step         bigint not null,
  kind         text   not null,
  author       text   not null,
  digest       text   not null,
  rules        text   not null,
  body         text   not null,
  files        text   not null,
  reason       text   not null,
  seal         text   not null,
  audit_number bigint not null,
  primary key (number, step)
);

create unique index change_steps_audit on change_steps (audit_number);

-- What a card spoke of: release, technique, rules; nothing of the case and nothing of the patient.
create table cards (
  card            text   not null primary key,
  service         text   not null,
  release_version text   not null,
  release_digest  text   not null,
  technique       text   not null,
  standing        text   not null,
  rules           text   not null,
  seal            text   not null,
  audit_number    bigint not null
);

create unique index cards_audit on cards (audit_number);

-- Whether people who looked at it later find right what was done with a card. The last word counts, none is lost.
create table feedback_judgements (
  card          text   not null,
  outcome       text   not null,
  outcome_at_ms bigint not null,
  number        bigint not null,
  judgement     text   not null,
  judge         text   not null,
  reason        text   not null,
  seal          text   not null,
  audit_number  bigint not null,
  primary key (card, outcome, outcome_at_ms, number),
  foreign key (card, outcome, outcome_at_ms) references feedback (card, outcome, outcome_at_ms)
);

create unique index feedback_judgements_audit on feedback_judgements (audit_number);
