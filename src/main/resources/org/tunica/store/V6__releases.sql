-- Releases of rules and knowledge. Nothing here is ever changed: what became of a release are its steps, one after the other.
create table releases (
  version      text   not null primary key,
  digest       text   not null,
  files        text   not null,
  seal         text   not null,
  audit_number bigint not null
);

create unique index releases_audit on releases (audit_number);

create table release_steps (
  version      text   not null references releases (version),
  number       bigint not null,
  kind         text   not null,
  from_ms      bigint not null,
  review_by    text   not null,
  reason       text   not null,
  seal         text   not null,
  audit_number bigint not null,
  primary key (version, number)
);

create unique index release_steps_audit on release_steps (audit_number);

create table release_signatures (
  version      text   not null references releases (version),
  number       bigint not null,
  body         text   not null,
  seal         text   not null,
  audit_number bigint not null,
  primary key (version, number)
);

create unique index release_signatures_audit on release_signatures (audit_number);

-- Why a key was ended; a key that was only laid aside may later turn out to be in other hands.
create table key_withdrawals (
  user_name    text   not null,
  key_id       text   not null,
  reason       text   not null,
  seal         text   not null,
  audit_number bigint not null,
  primary key (user_name, key_id),
  foreign key (user_name, key_id) references user_keys (user_name, key_id)
);

create unique index key_withdrawals_audit on key_withdrawals (audit_number);

-- What a release that runs silently beside the one in force would have said otherwise; nothing of the case itself.
create table shadow_runs (
  shadow       text   not null,
  number       bigint not null,
  in_force     text   not null,
  body         text   not null,
  seal         text   not null,
  audit_number bigint not null,
  primary key (shadow, number)
);

create unique index shadow_runs_audit on shadow_runs (audit_number);
