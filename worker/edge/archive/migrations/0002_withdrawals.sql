-- Since when a pack is withdrawn; empty while it stands.
ALTER TABLE packs ADD COLUMN withdrawnAt TEXT;
