-- Every save of a case is a version of its own; what was made from one names it.
create table cases (
  case_ref     text   not null,
  version      bigint not null,
  body         text   not null,
  seal         text   not null,
  audit_number bigint not null,
  primary key (case_ref, version)
);

create unique index cases_audit on cases (audit_number);

create table documents (
  case_ref        text   not null,
  kind            text   not null,
  number          bigint not null,
  case_version    bigint not null,
  release_version text   not null,
  release_digest  text   not null,
  seed            bigint not null,
  body            text   not null,
  seal            text   not null,
  audit_number    bigint not null,
  primary key (case_ref, kind, number),
  foreign key (case_ref, case_version) references cases (case_ref, version)
);

create unique index documents_audit on documents (audit_number);
