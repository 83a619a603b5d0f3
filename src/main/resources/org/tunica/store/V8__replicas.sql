-- What several servers over one database share while they run. The trail does not tell of it and no backup holds it: a
-- session opens the door to whoever has its row, a token that was used is worthless within the hour, and a part of a
-- replay is computed again.
create table seen_tokens (
  issuer   text   not null,
  id       text   not null,
  until_ms bigint not null,
  primary key (issuer, id)
);

create index seen_tokens_until on seen_tokens (until_ms);

-- Columns as the session library names them; nobody's name stands in a session that nobody signed in to.
create table sessions (
  primary_id            text    not null primary key,
  session_id            text    not null,
  creation_time         bigint  not null,
  last_access_time      bigint  not null,
  max_inactive_interval integer not null,
  expiry_time           bigint  not null,
  principal_name        text
);

create unique index sessions_id on sessions (session_id);
create index sessions_expiry on sessions (expiry_time);

create table sessions_attributes (
  session_primary_id text  not null references sessions (primary_id) on delete cascade,
  attribute_name     text  not null,
  attribute_bytes    bytea not null,
  primary key (session_primary_id, attribute_name)
);

-- Parts of replays: whose each is and until when, then what came of it.
create table replay_parts (
  replay   text   not null,
  part     bigint not null,
  cases    text   not null,
  owner    text   not null,
  until_ms bigint not null,
  result   text   not null,
  primary key (replay, part, cases)
);

create index replay_parts_until on replay_parts (until_ms);
