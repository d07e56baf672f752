-- Nobody reads it, and it made every event of a traveller rewrite the row.
alter table traveller_row drop column version;
