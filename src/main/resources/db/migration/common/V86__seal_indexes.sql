-- Descending, so that the last of either is found at once; H2 reads an index in its own direction only.
create unique index ledger_seal_last on ledger_seal (size desc);
create unique index ledger_tile_last on ledger_tile (level, tile_index desc);
