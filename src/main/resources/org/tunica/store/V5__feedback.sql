-- What a record system reported of a card. The same report may come twice.
create table feedback (
  card          text   not null,
  outcome       text   not null,
  outcome_at_ms bigint not null,
  service       text   not null,
  body          text   not null,
  seal          text   not null,
  audit_number  bigint not null,
  primary key (card, outcome, outcome_at_ms)
);

create unique index feedback_audit on feedback (audit_number);
