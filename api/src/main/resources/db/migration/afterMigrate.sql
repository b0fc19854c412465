-- At every start: the role that the service works under, and what it may do. Roles are no part of a dump, so a restored database may
-- lack it. It owns nothing, and is given only the tables that row-level security is forced on: one that forgets its policy can't be used.
do $$
declare
    kept regclass;
begin
    begin
        if not exists (select from pg_roles where rolname = 'axlewright_service') then
            create role axlewright_service nologin;
        end if;
    exception when duplicate_object or unique_violation then
        null; -- another service of this server was faster
    end;
    begin
        if current_user <> 'axlewright_service' then
            execute format('grant axlewright_service to %I', current_user); -- so that it can take it on
        end if;
    exception when insufficient_privilege then
        null; -- somebody else gives it out; the service sees at once whether it can take it on
    end;
    if not has_schema_privilege('axlewright_service', current_schema(), 'usage') then
        execute format('grant usage on schema %I to axlewright_service', current_schema());
    end if;
    if not has_function_privilege('axlewright_service', 'use_token(bytea)', 'execute') then
        grant execute on function use_token(bytea) to axlewright_service;
    end if;
    if not has_function_privilege('axlewright_service', 'purge(integer)', 'execute') then
        grant execute on function purge(integer) to axlewright_service;
    end if;
    for kept in
        select oid::regclass from pg_class
        where relnamespace = cast(current_schema() as regnamespace) and relkind = 'r'
            and relrowsecurity and relforcerowsecurity
            and not has_table_privilege('axlewright_service', oid, 'delete')
    loop
        execute format('grant select, insert, update, delete on %s to axlewright_service', kept);
    end loop;
end $$;
