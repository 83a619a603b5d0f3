-- Cases without the person, one line each. Nothing leads from here to the cases above.
create table past_cases (
  id           text   not null primary key,
  state        text   not null,
  line         text   not null,
  seal         text   not null,
  audit_number bigint not null
);

create unique index past_cases_audit on past_cases (audit_number);
