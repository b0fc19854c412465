-- What a setup was, what is deleted for now, what a setup is found to have, and what was answered to whom may ask twice.
alter table setups
    add column deleted_at  timestamptz,
    add column findings    text[] not null default '{}', -- codes of the assessment's findings
    add column assessed_by text, -- version of the engine that found them
    add unique (workspace_id, id);
drop index setups_of_workspace; -- the key does the same

-- Every revision but the one in setups.
create table revisions (
    workspace_id uuid        not null default cast(current_setting('axlewright.workspace') as uuid),
    setup_id     uuid        not null,
    revision     bigint      not null,
    name         text        not null,
    document     json        not null,
    saved_at     timestamptz not null,
    primary key (setup_id, revision),
    foreign key (workspace_id, setup_id) references setups (workspace_id, id) on delete cascade
);
create index revisions_of_workspace on revisions (workspace_id, setup_id);

-- Answers to requests with an Idempotency-Key; line 0 is the request itself, the others are those of an import.
create table remembered_answers (
    workspace_id uuid        not null default cast(current_setting('axlewright.workspace') as uuid) references workspaces,
    key          text        not null,
    line         bigint      not null,
    fingerprint  bytea       not null check (octet_length(fingerprint) = 32), -- SHA-256 of the request
    status       smallint    not null,
    headers      json        not null,
    answered_at  timestamptz not null default now(),
    primary key (workspace_id, key, line)
);
create index remembered_answers_by_age on remembered_answers (workspace_id, answered_at);

alter table revisions enable row level security;
alter table revisions force row level security;
create policy workspace on revisions
    using (workspace_id = cast(nullif(current_setting('axlewright.workspace', true), '') as uuid))
    with check (workspace_id = cast(nullif(current_setting('axlewright.workspace', true), '') as uuid));

alter table remembered_answers enable row level security;
alter table remembered_answers force row level security;
create policy workspace on remembered_answers
    using (workspace_id = cast(nullif(current_setting('axlewright.workspace', true), '') as uuid))
    with check (workspace_id = cast(nullif(current_setting('axlewright.workspace', true), '') as uuid));

-- Removes for good what is past its time, at most so many rows of each kind in a workspace, and tells how many it removed. It goes through
-- the workspaces itself, so that the service's role need not know which there are.
create function purge(most integer) returns bigint
    language plpgsql volatile security definer
    set search_path = "${flyway:defaultSchema}", pg_temp
as $$
declare
    due     uuid;
    removed bigint := 0;
    batch   bigint;
begin
    for due in select id from workspaces loop
        perform set_config('axlewright.workspace', cast(due as text), true);
        delete from setups where workspace_id = due and id in (
            select id from setups
            where workspace_id = due and deleted_at < now() - interval '30 days' limit most);
        get diagnostics batch = row_count;
        removed := removed + batch;
        delete from remembered_answers where workspace_id = due and (key, line) in (
            select key, line from remembered_answers
            where workspace_id = due and answered_at < now() - interval '24 hours' limit most);
        get diagnostics batch = row_count;
        removed := removed + batch;
    end loop;
    perform set_config('axlewright.workspace', '', true);
    return removed;
end $$;
revoke all on function purge(integer) from public;
