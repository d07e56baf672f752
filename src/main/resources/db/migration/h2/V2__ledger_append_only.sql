-- Entries are never changed or removed.
create trigger ledger_entry_append_only before update, delete on ledger_entry
    for each row call 'brightseam.ledger.shell.AppendOnly';

-- Truncating fires no trigger in H2; it is refused for a table that another one may refer to.
create table ledger_entry_kept (
    position bigint primary key references ledger_entry (position)
);
