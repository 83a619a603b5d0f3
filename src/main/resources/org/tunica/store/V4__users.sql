create table users (
  name            text   not null primary key,
  version         bigint not null,
  state           text   not null,
  roles           text   not null,
  password_hash   text   not null,
  failed_sign_ins bigint not null,
  locked_until_ms bigint not null,
  seal            text   not null,
  audit_number    bigint not null
);

create unique index users_audit on users (audit_number);

create table user_keys (
  user_name    text   not null references users (name),
  key_id       text   not null,
  purpose      text   not null,
  public_key   text   not null,
  state        text   not null,
  seal         text   not null,
  audit_number bigint not null,
  primary key (user_name, key_id)
);

create unique index user_keys_audit on user_keys (audit_number);
