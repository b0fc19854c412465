-- Whom a setup belongs to. Row-level security holds workspaces apart under whatever the service asks: see docs/workspaces.md.
create table workspaces (
    id         uuid primary key, -- version 4: an id that nobody was told can't be guessed
    name       text        not null unique,
    created_at timestamptz not null default now()
);

-- The one that needs no token on the service's own machine. What was saved before belongs to it.
insert into workspaces (id, name) values ('00000000-0000-4000-8000-000000000000', 'local');

create table tokens (
    id           uuid primary key,
    workspace_id uuid        not null references workspaces,
    hash         bytea       not null unique check (octet_length(hash) = 32), -- SHA-256; the token itself is kept nowhere
    scope        text        not null check (scope in ('read', 'write')),
    created_at   timestamptz not null default now(),
    expires_at   timestamptz not null,
    revoked_at   timestamptz,
    last_used_at timestamptz
);
create index tokens_of_workspace on tokens (workspace_id);

-- No policy: only the owner sees these two. The service asks for one token at a time, by its hash.
alter table workspaces enable row level security;
alter table tokens enable row level security;

create function use_token(sent bytea)
    returns table (id uuid, workspace_id uuid, scope text, expires_at timestamptz, revoked_at timestamptz)
    language sql volatile security definer
    set search_path = "${flyway:defaultSchema}", pg_temp
as $$
    update tokens set last_used_at = now()
    where hash = sent and revoked_at is null and expires_at > now()
        and (last_used_at is null or last_used_at < now() - interval '1 minute');
    select id, workspace_id, scope, expires_at, revoked_at from tokens where hash = sent;
$$;
revoke all on function use_token(bytea) from public;

alter table setups add column workspace_id uuid references workspaces;
update setups set workspace_id = '00000000-0000-4000-8000-000000000000';
alter table setups
    alter column workspace_id set not null,
    alter column workspace_id set default cast(current_setting('axlewright.workspace') as uuid);
create index setups_of_workspace on setups (workspace_id, id);
create index setups_of_name on setups (workspace_id, name);

-- Forced: the owner of the table is held as well. The setting is empty, not absent, on a connection that has had one before.
alter table setups enable row level security;
alter table setups force row level security;
create policy workspace on setups
    using (workspace_id = cast(nullif(current_setting('axlewright.workspace', true), '') as uuid))
    with check (workspace_id = cast(nullif(current_setting('axlewright.workspace', true), '') as uuid));
