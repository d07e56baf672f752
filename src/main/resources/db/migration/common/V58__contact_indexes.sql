-- Finds one thing's contacts among all of a traveller's without reading the others' rows.
drop index trace_contact_by_traveller;
create index trace_contact_by_traveller on trace_contact (traveller_id, step_id, pass, kind, label);

create index trace_traveller_by_suspect on trace_traveller (suspect);
