-- Entries are never changed or removed.
create function ledger_append_only() returns trigger language plpgsql as $$
begin
    raise exception 'the ledger is append-only: % refused', tg_op;
end
$$;

create trigger ledger_entry_append_only before update or delete or truncate on ledger_entry
    for each statement execute function ledger_append_only();
