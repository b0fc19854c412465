-- json, not jsonb: the document comes back as it was sent, every digit of every number included.
create table setups (
    id         uuid primary key, -- version 7, made by the service: servers before PostgreSQL 18 make none
    name       text        not null,
    document   json        not null,
    revision   bigint      not null default 1,
    created_at timestamptz not null default now(),
    updated_at timestamptz not null default now()
);
