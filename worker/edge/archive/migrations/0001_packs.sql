-- Every sealed pack of every workshop, for lists. Rebuildable from the ledgers; nothing else depends on it.
CREATE TABLE packs (
  workshop TEXT NOT NULL,
  pack TEXT NOT NULL,
  registration TEXT NOT NULL,
  issuedAt TEXT NOT NULL,
  supersededBy TEXT,
  summary TEXT NOT NULL,
  PRIMARY KEY (workshop, pack)
) WITHOUT ROWID;

CREATE INDEX packsByTime ON packs (workshop, issuedAt DESC, pack DESC);
